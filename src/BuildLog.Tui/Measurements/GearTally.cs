using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Measurements;

/// <summary>One gear's turns. What gearboxes have is not guessed: no list of them is complete enough.</summary>
public sealed class GearTally(string part, string gear) : RatioTally(part, CountedEnds.Gearbox)
{
    public override string Title => Spoken($"Count gear {gear}: {Part}");

    public override string HelpPage => "GearCount";

    protected override Parsed<TurnCount> CountOf(string reading) => TurnReading.ReadGear(reading).Then(read => Parsed.From(() => TurnCount.OfGear([read], NotReadYet)));

    protected override IEnumerable<string> Says(TurnCount count)
    {
        if (DrivenTurns < UsualTurns)
            yield return Spoken($"{UsualTurns - DrivenTurns} more output turns would do as a rule.");
    }
}
