using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Drivelines;

/// <summary>The numbers of one part, each with all the evidence there is; the strongest counts.</summary>
internal static class PartNumbers
{
    private const double ClearlyBetter = 0.8;

    public static string GearPrefix => Spoken("gear ");
    public static string Idle => Spoken("idle");
    public static string Redline => Spoken("redline");
    public static string Ratio => Spoken("ratio");
    public static string High => Spoken("high ratio");
    public static string Low => Spoken("low ratio");
    public static string HubReduction => Spoken("hub reduction");
    public static string Circumference => Spoken("rolling circumference");

    /// <summary>What a gear's ratio is called.</summary>
    public static string Gear(string name) => GearPrefix + name;

    /// <param name="component">The part.</param>
    /// <param name="sessions">Its sessions, the latest first.</param>
    public static IEnumerable<NumberKnown> Of(Component component, IReadOnlyList<Session> sessions)
    {
        var usual = component.Positions[0];
        return (component switch
        {
            EngineComponent engine => [Stated(Idle, engine.Idle), Stated(Redline, engine.Redline)],
            TransmissionComponent box => GearNumbers.Of(box, [.. sessions.OfType<GearCountSession>()]),
            OverdriveComponent overdrive => [OverdriveRatio(overdrive, [.. sessions.OfType<GearCountSession>().Where(count => count.Gear == OverdriveComponent.Engaged)])],
            TransferCaseComponent transfer => [Stated(High, transfer.High, RatioRange.Transfer), Stated(Low, transfer.Low, TransferCaseLow.Read, Spoken("transfer case low ratio"))],
            AxleComponent axle => AxleNumbers.Of(axle, sessions),
            WheelSetComponent set => [TyreNumbers.Of(set, [.. sessions.OfType<RollOutSession>()])],
            _ => Array.Empty<NumberKnown?>(),
        }).Concat(SpecNumbers.Of(component, sessions)).OfType<NumberKnown>().Select(number => number with { Position = usual, Unit = UnitOf(component, number) });
    }

    // What a dial wants is turns over the distance that it names.
    private static Unit UnitOf(Component component, NumberKnown number)
        => component is SpeedometerComponent { DialUnit: { } dial } && number.Number == Spec.TurnsWanted.InWords() ? dial : number.Unit;

    /// <summary>A turn count as evidence of the ratio it gives.</summary>
    public static (Known Known, Session? Session) Counted(Session session, TurnCount count) => (new(count.Ratio, Source.Measured, Spoken($"count of {session.Day.InWords}")), session);

    /// <summary>Measurements of one kind, the one that counts first: the latest, unless an earlier one agrees with it and is clearly better known.</summary>
    /// <param name="measured">The latest first.</param>
    public static IEnumerable<(Known Known, Session? Session)> BestKnownFirst(IEnumerable<(Known Known, Session? Session)> measured)
    {
        var all = measured.ToList();
        if (all.Count < 2) return all;

        var latest = all[0].Known.Value;
        var best = all.Where(one => one.Known.Value.AgreesWith(latest)).MinBy(one => one.Known.Value.StandardUncertainty);
        return best.Known.Value.StandardUncertainty < ClearlyBetter * latest.StandardUncertainty ? [best, .. all.Where(one => one.Session != best.Session)] : all;
    }

    /// <summary>The strongest of the evidence, which comes strongest first; null if there is none.</summary>
    public static NumberKnown? Strongest(string number, Unit unit, params IEnumerable<(Known Known, Session? Session)> evidence)
    {
        var all = evidence.ToList();
        return all.Count == 0 ? null : new(null, number, unit, all[0].Known, all[0].Session, [.. all.Skip(1).Select(entry => entry.Known)]);
    }

    /// <summary>A ratio that was quoted: as sure as its last digit.</summary>
    public static Known Quoted(Noted noted, RatioRange range, string name)
        => new(QuotedRatio.ReadMeasured(noted.Text, range, name).OrRefuse(), noted.Source, noted.InWords);

    private static NumberKnown? Stated(string number, Noted? noted, RatioRange range)
        => noted is null ? null : Strongest(number, Units.One, (Quoted(noted, range, $"{range.Part} {number}"), null));

    private static NumberKnown? Stated(string number, Noted? noted, Func<string, Parsed<QuotedRatio>> read, string name)
        => noted is null ? null : Strongest(number, Units.One, (new(read(noted.Text).OrRefuse().ToMeasured(name), noted.Source, noted.InWords), null));

    // Teeth counted, then turns counted with it engaged, then what is stated.
    private static NumberKnown? OverdriveRatio(OverdriveComponent unit, IReadOnlyList<GearCountSession> counts)
    {
        IEnumerable<(Known, Session?)> teeth = unit.Teeth is { } set ? [(new(OverdriveUnit.Of(set), Source.TeethCounted, set.ToString()), null)] : [];
        IEnumerable<(Known, Session?)> stated = Stated(Ratio, unit.OverdriveRatio, OverdriveUnit.Read, Spoken("overdrive ratio")) is { } said ? [(said.Used, null)] : [];
        return Strongest(Ratio, Units.One, [.. teeth, .. BestKnownFirst(counts.Select(count => Counted(count, count.Result()))), .. stated]);
    }

    private static NumberKnown? Stated(string number, Noted? engineSpeed)
        => engineSpeed is null
            ? null
            : Strongest(number, Units.RevolutionPerMinute, (new(CruiseGoal.ReadEngineSpeed(engineSpeed.Text).OrRefuse().ToMeasured(number), engineSpeed.Source, engineSpeed.InWords), null));
}
