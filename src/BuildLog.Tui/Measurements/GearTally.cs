using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Measurements;

/// <summary>The turns of one gear, or of an overdrive unit. What gearboxes have is not guessed: no list of them is complete enough.</summary>
public sealed class GearTally(string part, string gear) : RatioTally(part, CountedEnds.Gearbox)
{
    public override string Title => Spoken($"Count {CountedGear.InWords(gear)}: {Part}");

    public override string HelpPage => "GearCount";

    protected override Parsed<TurnCount> CountOf(string reading) => TurnReading.ReadGear(reading).Then(read => Parsed.From(() => TurnCount.OfGear([read], NotReadYet)));

    protected override IEnumerable<string> Says(TurnCount count)
    {
        if (DrivenTurns < UsualTurns)
            yield return Spoken($"{UsualTurns - DrivenTurns} more output turns would do as a rule.");
    }
}
