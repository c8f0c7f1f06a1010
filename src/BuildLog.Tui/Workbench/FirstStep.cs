using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>What stands at the right while there is no vehicle to show.</summary>
internal static class FirstStep
{
    public static IReadOnlyList<TextLine> EmptyShop { get; } =
    [
        TextLine.Of("An empty shop.", Tone.Strong),
        TextLine.Empty,
        "Begin with the vehicle on the bench: press n and give it a name.",
        TextLine.Empty,
        TextLine.Of("Then", Tone.Heading),
        "  f  fit what it has: engine, gearbox, axle, tyres",
        "  t  count propshaft turns: the axle ratio no tag tells any more",
        "  r  roll a tyre out: what one turn of the wheel really covers",
        "  g  set the cruise goal everything is judged against",
        "  s  print the build sheet",
        TextLine.Empty,
        TextLine.Of("To look around in an invented shop first: q, then  buildlog --demo", Tone.Quiet),
    ];

    public static IReadOnlyList<TextLine> NothingChosen { get; } = ["Choose a vehicle at the left with the arrow keys."];
}
