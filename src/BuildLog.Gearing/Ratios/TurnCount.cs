using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>An axle's ratio from counted turns.</summary>
/// <remarks>
/// <code>i = 2 p / (w_left + w_right)</code>
/// <para>p propshaft turns; w signed wheel turns. One wheel held: i = 2 p / w. Both alike: i = p / w. A hub reduction is inside the count.</para>
/// <para>
/// Errors: reading to r is rectangular ± r/2 on p, one shared error for all counts with the same W (they round alike); alignment a is
/// rectangular ± a on each wheel's stop, once a count, one shared error where both wheels turn alike. Repeats are a line through the origin.
/// </para>
/// <para>A gear is the case of both alike: i = input turns / output turns, with the output's stop for the wheel's.</para>
/// <para>Not for: |w_left + w_right| below half a turn. Source: kinematics of the bevel differential (p = i (w_l + w_r) / 2); JCGM 100:2008, 4.3.7.</para>
/// </remarks>
public sealed class TurnCount
{
    private TurnCount(IReadOnlyList<TurnReading> readings, Measured ratio, IReadOnlyList<SuspectReading> suspects, CountPrecision how)
        => (Readings, Ratio, Suspects, How) = (readings, ratio, suspects, how);

    /// <summary>The counts it was made of, as typed.</summary>
    public IReadOnlyList<TurnReading> Readings { get; }

    /// <summary>Propshaft turns per wheel turn.</summary>
    public Measured Ratio { get; }

    /// <summary>Counts that the others do not support; they stay in the ratio until their owner drops them.</summary>
    public IReadOnlyList<SuspectReading> Suspects { get; }

    /// <summary>How finely they were read.</summary>
    public CountPrecision How { get; }

    /// <summary>What was compared: wheel and propshaft, or output and input.</summary>
    public CountedEnds Ends => Readings[0].Ends;

    /// <summary>Two counts that disagree cannot say which of them is wrong.</summary>
    public bool NeedsThirdCount => Readings.Count == 2 && Suspects.Count > 0;

    /// <summary>The count of one gear.</summary>
    /// <param name="readings">At least one, from <see cref="TurnReading.ReadGear"/>.</param>
    /// <param name="how">How finely they were read.</param>
    /// <param name="name">What the count is called in a budget.</param>
    /// <exception cref="RefusedException">No reading, an impossible resolution, or a ratio that no gear has.</exception>
    public static TurnCount OfGear(IReadOnlyList<TurnReading> readings, CountPrecision how, string? name = null)
        => Of(readings, how, RatioRange.Gear, name ?? Spoken("turn count of the gear"));

    /// <param name="readings">At least one.</param>
    /// <param name="how">How finely they were read.</param>
    /// <param name="range">What the ratio can be.</param>
    /// <param name="name">What the count is called in a budget.</param>
    /// <exception cref="RefusedException">No reading, an impossible resolution, or a ratio that no such part has.</exception>
    public static TurnCount Of(IReadOnlyList<TurnReading> readings, CountPrecision how, RatioRange? range = null, string? name = null)
    {
        name ??= Spoken("turn count");
        range ??= RatioRange.Axle;
        if (readings.Count == 0) throw new RefusedException("turns", Spoken("No count was given."), (range == RatioRange.Gear ? CountedEnds.Gearbox : CountedEnds.Axle).Example);
        if (how.Refuse(readings[0].Ends) is { } refusal) throw new RefusedException(refusal);

        // The advice speaks of the fit, and the fit's inputs of the evidence: it is asked for when both are there.
        TurnCount? count = null;
        var evidence = new Evidence(name, factor => count!.Advice(factor, name));
        var points = Points(readings, how, evidence, roundAlike: true);
        var line = LineThroughOrigin.Fit([.. points.Select(point => (point.WheelSum, point.TwicePropshaft))], evidence);
        if (!range.Accepts(line.Slope.Value)) throw new RefusedException(Refuse(line.Slope.Value, range, readings[0]));

        var apart = Points(readings, how, evidence, roundAlike: false);
        return count = new(readings, line.Slope, SuspectReading.Among(readings, apart), how);
    }

    /// <summary>Standard uncertainty of a ratio counted once over <paramref name="wheelSum"/> = w_left + w_right turns.</summary>
    public static double UncertaintyOver(double wheelSum, double ratio, Wheels wheels, CountPrecision how)
        => Math.Sqrt(Math.Pow(how.ReadTo / Math.Sqrt(3), 2) + Math.Pow(ratio * StopUncertainty(wheels, how.Align), 2)) / wheelSum;

    /// <summary>Turns of one more count that would tell the two best candidates apart; null where nothing is left to tell.</summary>
    public int? TurnsToSettle(IReadOnlyList<RatioCandidate> candidates)
        => candidates is [var best, var second, ..] ? WheelTurnsToTell(best.Ratio, second.Ratio, Readings[0].Turned, How) : null;

    /// <summary>The smallest number of wheel turns over which two ratios differ by four standard uncertainties.</summary>
    /// <remarks>Four u apart: midway between them lies two u from each. Wheel turns are those of one wheel.</remarks>
    public static int WheelTurnsToTell(double one, double other, Wheels wheels, CountPrecision how)
    {
        var wheelSum = 4 * UncertaintyOver(1, one, wheels, how) / Math.Abs(one - other);
        var sharedOver = wheels == Wheels.OneHeld ? 1 : 2;
        return (int)Math.Max(1, Math.Ceiling((wheelSum / sharedOver) - 1e-9));
    }

    internal static double StopUncertainty(Wheels wheels, double align)
    {
        var oneWheel = align / Math.Sqrt(3);
        return wheels switch
        {
            Wheels.OneHeld => oneWheel,
            Wheels.Together => 2 * oneWheel,
            _ => Math.Sqrt(2) * oneWheel,
        };
    }

    // One stop is rectangular, alone or doubled; the sum of two is nearer to normal.
    private static Input Stop(string name, double u, Wheels turned, Evidence evidence)
        => turned == Wheels.Each ? new(name, u, evidence) : Input.Rectangular(name, u * Math.Sqrt(3), evidence);

    internal sealed record Point(Measured WheelSum, Measured TwicePropshaft, Evidence Evidence);

    // So far that one count alone is better than today's line by the factor; where counts scatter, at least that much further than today.
    private string Advice(double factor, string name)
    {
        var longest = Readings.MaxBy(reading => reading.WheelSum)!;
        var alone = UncertaintyOver(1, Ratio.Value, longest.Turned, How) / Ratio.StandardUncertainty;
        var turns = Math.Max(alone, longest.WheelSum) * factor / (longest.Turned == Wheels.OneHeld ? 1 : 2);
        return Spoken($"count {Math.Ceiling(turns - 1e-9):0} {Ends.Driven} turns in one go ({name})");
    }

    // A slip that would make it an axle after all is named.
    private static Refusal Refuse(double ratio, RatioRange range, TurnReading first)
    {
        var hint = first.Ends == CountedEnds.Axle
            ? string.Join(" ", [Spoken("Look at the readings and at which wheels turned."), .. RatioTraps.OfAxle(ratio, oneHeld: first.Turned == Wheels.OneHeld).Where(trap => trap.Otherwise is not null).Take(1).Select(trap => trap.InWords())])
            : Spoken("Look at the readings and at which end was turned.");
        var refusal = range.Refuse(ratio);
        return refusal with { Message = $"{refusal.Message} {hint}", Example = first.Ends.Example };
    }

    // For the ratio, counts over the same W share their rounding. Between each other they may still fall a step apart, so a suspect is judged without that.
    private static List<Point> Points(IReadOnlyList<TurnReading> readings, CountPrecision how, Evidence evidence, bool roundAlike)
    {
        var roundings = new Dictionary<double, Input>();
        return
        [
            .. readings.Select(reading =>
            {
                if (!roundings.TryGetValue(reading.WheelSum, out var rounding) || !roundAlike)
                    roundings[reading.WheelSum] = rounding = Input.Rectangular(Spoken($"{reading.Ends.Driving} turns of {reading.Text}, reading"), how.ReadTo / 2, evidence);

                var stop = Stop(Spoken($"{reading.Ends.Driven} stop of {reading.Text}"), StopUncertainty(reading.Turned, how.Align), reading.Turned, evidence);
                return new Point(Measured.From(reading.WheelSum, stop), Measured.From(reading.Propshaft, rounding) * 2, evidence);
            }),
        ];
    }
}
