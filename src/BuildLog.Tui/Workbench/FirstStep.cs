using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>What stands at the right while there is no vehicle to show.</summary>
internal static class FirstStep
{
    public static IReadOnlyList<TextLine> EmptyShop =>
    [
        TextLine.Of(Spoken("An empty shop."), Tone.Strong),
        TextLine.Empty,
        Spoken("Begin with the vehicle on the bench: press n and give it a name."),
        TextLine.Empty,
        TextLine.Of(Spoken("Then"), Tone.Heading),
        Spoken("  f  fit what it has: engine, gearbox, axle, tyres"),
        Spoken("  t  count propshaft turns: the axle ratio no tag tells any more"),
        Spoken("  r  roll a tyre out: what one turn of the wheel really covers"),
        Spoken("  g  set the cruise goal everything is judged against"),
        Spoken("  s  print the build sheet"),
        TextLine.Empty,
        TextLine.Of(Spoken("To look around in an invented shop first: q, then  buildlog --demo"), Tone.Quiet),
    ];

    public static IReadOnlyList<TextLine> NothingChosen => [Spoken("Choose a vehicle at the left with the arrow keys.")];
}
