using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>Sessions as rows: what was read, what it gives, and what its uncertainty is made of.</summary>
public static class MeasurementsWords
{
    public static MeasurementsModel Of(IReadOnlyList<Session> sessions, IReadOnlyList<Drive> drives, UnitSystem units)
        => new(
        [
            .. sessions.Select(session => (session.Date, Row: Row(session, sessions, units)))
                .Concat(drives.Select(drive => (drive.Test.Date, Row: Row(drive))))
                .OrderByDescending(dated => dated.Date)
                .Select(dated => dated.Row),
        ]);

    private static SessionRow Row(Drive drive)
    {
        var (test, driven) = (drive.Test, drive.Driven);
        var ratio = driven is not null && test.AxleRatio(driven) is { } followed && followed.Understood(out var axle) ? axle : null;
        string[] read = [test.Speed?.InWords ?? "", test.EngineSpeed?.InWords ?? "", test.Gear.Length > 0 ? Spoken($"gear {test.Gear}") : "", test.Temperatures];
        string[] noticed = [test.Vibration.Length > 0 ? Spoken($"shakes {test.Vibration}") : "", test.Noises, test.Defects, test.Fix];
        return new(
            test.Id,
            DayText.InShort(test.Day),
            Spoken("road test"),
            drive.Vehicle,
            ratio is null ? "" : Spoken($"axle {Rounded.WithInterval(ratio, Units.One)}"),
            [.. noticed.Where(text => text.Length > 0)],
            [.. read.Where(text => text.Length > 0)],
            test is { Speed: { } speed, EngineSpeed: { } engine } ? RoadTestForm.Says(driven, test.Gear, speed.Si, engine.Si) : [],
            ratio is null ? [] : [.. ratio.Budget().Select(line => new BudgetShare(line.Input.Name, line.Share))])
        {
            IsDrive = true,
        };
    }

    /// <summary>The session's result in words, for screen and sheet alike.</summary>
    public static SessionResult Result(Session session, UnitSystem units) => session switch
    {
        TurnCountSession count => Result(count),
        GearCountSession count => Result(count),
        RollOutSession roll => Result(roll, units),
        TeethSession teeth => Result(teeth),
        LoadedRadiusSession radius => Result(radius, units),
        BoltCircleSession circle => Result(circle, units),
        ShaftAnglesSession angles => Result(angles),
        WeighbridgeSession weighing => Result(weighing, units),
        SpeedometerRunSession run => Result(run, units),
        _ => throw new ArgumentException($"A {session.Method} has no words yet.", nameof(session)),
    };

    private static SessionRow Row(Session session, IReadOnlyList<Session> all, UnitSystem units)
    {
        var result = Result(session, units);
        return new(
            session.Id,
            DayText.InShort(session.Day),
            session.Method,
            session is GearCountSession { Gear: var gear } ? $"{session.Subject}, {CountedGear.InWords(gear)}" : session.Subject,
            result.InWords,
            [.. result.Conditions],
            session.ReadingsInWords,
            [.. result.Says, .. ContradictingSessions.Of(session, all, units)],
            [.. result.Value.Budget().Select(line => new BudgetShare(line.Input.Name, line.Share))]);
    }

    private static SessionResult Result(TurnCountSession session)
    {
        var count = session.Result();
        var hub = session.Hub.Length > 0 ? RatioRange.Hub.Read(session.Hub).OrRefuse().Value : (session.Component as AxleComponent)?.HubReduction?.Si ?? 1;
        return new(
            count.Ratio, Units.One, TurnCountWords.Full(count, count.Ratio / hub),
            [
                session.Wheels switch
                {
                    Wheels.OneHeld => Spoken("one wheel held, so twice the turns count"),
                    Wheels.Together => Spoken("both wheels turning alike"),
                    _ => Spoken("both wheels counted"),
                },
                Spoken($"read to {AsWritten.Numbers(session.ReadTo)} turn"), Spoken($"mark within {AsWritten.Numbers(session.Align)} turn"), .. Circumstances(session),
            ]);
    }

    private static SessionResult Result(GearCountSession session)
    {
        var count = session.Result();
        return new(
            count.Ratio, Units.One, [.. TurnCountWords.Doubts(count)],
            [CountedGear.InWords(session.Gear), Spoken($"read to {AsWritten.Numbers(session.ReadTo)} turn"), Spoken($"mark within {AsWritten.Numbers(session.Align)} turn"), .. Circumstances(session)]);
    }

    private static SessionResult Result(RollOutSession session, UnitSystem units)
    {
        var roll = session.Result();
        string[] pressure = session.Pressure.Length > 0 ? [Spoken($"pressure {units.InWords(session.Pressure, Kind.Pressure)}")] : [];
        return new(
            roll.RollingCircumference, units.Length, roll.How.Loaded ? [.. RollOutWords.Doubts(roll)] : RollOutWords.Live(roll, units),
            [
                session.Loaded ? Spoken("carrying the vehicle") : Spoken($"rolled loose, {Rounded.Value(roll.Measured, units.Length)} a turn, less under load"),
                Spoken($"tape good to {units.InWords(session.Tape, Kind.Length, Units.Millimetre)}"),
                .. pressure,
                .. Circumstances(session),
            ]);
    }

    private static SessionResult Result(TeethSession session)
    {
        var teeth = session.Result();
        return new(teeth.ToMeasured(), Units.One, session.Component is AxleComponent axle ? [TeethForm.Says(axle, teeth)] : [], [Spoken($"counted {session.Readings.Count} times"), .. Circumstances(session)]);
    }

    private static SessionResult Result(LoadedRadiusSession session, UnitSystem units)
    {
        var radius = session.Result();
        return new(
            radius, units.Shown(Units.Millimetre), LoadedRadiusForm.Says((session.Component as WheelSetComponent)?.Size, radius, units),
            [Spoken($"tool good to {units.InWords(session.Tape, Kind.Length, Units.Millimetre)}"), .. Circumstances(session)]);
    }

    private static SessionResult Result(BoltCircleSession session, UnitSystem units)
    {
        var circle = session.Result();
        return new(
            circle, units.Shown(Units.Millimetre), BoltCircleForm.Says(session.Studs, circle),
            [Spoken($"{session.Studs} studs, {BoltCircleForm.InWords(session.Between)}"), Spoken($"tool good to {units.InWords(session.Tape, Kind.Length, Units.Millimetre)}"), .. Circumstances(session)]);
    }

    private static SessionResult Result(ShaftAnglesSession session)
    {
        var (front, rear) = session.Result();
        return new(front.Compound, Units.Degree, PropshaftAnglesForm.Says(front, rear), [.. Circumstances(session)]) { Of = Spoken("front joint") };
    }

    private static SessionResult Result(WeighbridgeSession session, UnitSystem units)
    {
        var weighing = session.Result();
        var (mass, of) = weighing.Whole is { } whole ? (whole, "") : weighing.Front is { } front ? (front, Spoken("front")) : (weighing.Rear!, Spoken("rear"));
        return new(mass, units.Mass, WeighbridgeForm.Says(weighing, units), [Spoken($"plate reads to {units.InWords(session.Step, Kind.Mass)}"), .. Circumstances(session)]) { Of = of };
    }

    private static SessionResult Result(SpeedometerRunSession session, UnitSystem units)
    {
        var run = session.Result();
        return new(run.Share, Units.One, SpeedometerRunForm.Says(run), [Spoken($"true distance good to {units.InWords(session.Tape, Kind.Length)}"), Spoken($"odometer read to {units.InWords(session.Step, Kind.Length)}"), .. Circumstances(session)]) { Of = Spoken("of the truth") };
    }

    private static IEnumerable<string> Circumstances(Session session)
    {
        if (session.Helper.Length > 0) yield return Spoken($"with {session.Helper}");
        if (session.Conditions.Length > 0) yield return session.Conditions;
        if (session.Notes.Length > 0) yield return session.Notes;
    }
}

/// <summary>What a session came to.</summary>
/// <param name="Value">The number, or the first of several.</param>
/// <param name="Says">What follows from it, and the other numbers.</param>
/// <param name="Conditions">How it was measured; one short clause each.</param>
public sealed record SessionResult(Measured Value, Unit Unit, IReadOnlyList<string> Says, IReadOnlyList<string> Conditions)
{
    /// <summary>Of what, where the method does not say it.</summary>
    public string Of { get; init; } = "";

    public string InWords => $"{Rounded.WithInterval(Value, Unit)} {Of}".TrimEnd();
}
