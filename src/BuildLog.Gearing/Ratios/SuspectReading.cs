using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Ratios;

/// <summary>A count that the others do not support, and the slip that would explain it.</summary>
/// <param name="Index">Its place among the readings, from 0.</param>
/// <param name="HalfTurns">How many half propshaft turns too many (positive) or too few were counted; 0 if no such slip explains it.</param>
/// <param name="Says">The slip in words.</param>
/// <remarks>
/// From three counts on: the one furthest from the line through the others, if further than four standard errors; then the rest are looked
/// at again. Two counts that disagree are both named. A suspect stays in the fit until its owner drops it.
/// <para>One step of reading is no slip: a shaft that stands midway between two marks is read to either, however well the rest agrees.</para>
/// <para>Not for: several slips in few counts; they hide each other, and only the widened interval shows them.</para>
/// </remarks>
public sealed record SuspectReading(int Index, int HalfTurns, string Says)
{
    internal static IReadOnlyList<SuspectReading> Among(IReadOnlyList<TurnReading> readings, IReadOnlyList<TurnCount.Point> points)
    {
        var left = Enumerable.Range(0, points.Count).ToList();
        var suspects = new List<SuspectReading>();
        if (points.Count == 2)
        {
            // Which of two is wrong cannot be said, so both are.
            if (left.Any(k => Misfit(k, left, points).IsSlip))
                suspects.AddRange(left.Select(k => Name(k, left, readings, points)));
            return suspects;
        }

        while (left.Count >= 3)
        {
            var worst = left.MaxBy(k => Misfit(k, left, points) is var gap ? (gap.Errors, Math.Abs(gap.Turns)) : default);
            if (!Misfit(worst, left, points).IsSlip) break;
            suspects.Add(Name(worst, left, readings, points));
            left.Remove(worst);
        }

        return [.. suspects.OrderBy(suspect => suspect.Index)];
    }

    // How far reading k lies from the line through the others.
    private static Gap Misfit(int k, List<int> among, IReadOnlyList<TurnCount.Point> points)
    {
        var others = among.Where(other => other != k).Select(other => (points[other].WheelSum, points[other].TwicePropshaft)).ToList();
        var slope = LineThroughOrigin.Fit(others, points[k].Evidence).Slope;
        var gap = points[k].TwicePropshaft - (slope * points[k].WheelSum);
        return new(gap.Value / 2, gap.StandardUncertainty / 2);
    }

    /// <param name="Turns">Propshaft turns too many.</param>
    /// <param name="Error">The standard error of that.</param>
    private readonly record struct Gap(double Turns, double Error)
    {
        private const double Negligible = 1e-9;

        public double Errors => Error > 0 ? Math.Abs(Turns) / Error : Math.Abs(Turns) < Negligible ? 0 : double.PositiveInfinity;

        public bool IsSlip => Errors > LineThroughOrigin.Excluding;
    }

    private static SuspectReading Name(int k, List<int> among, IReadOnlyList<TurnReading> readings, IReadOnlyList<TurnCount.Point> points)
    {
        var (turns, error) = Misfit(k, among, points);
        var halves = (int)Math.Clamp(Math.Round(turns * 2), -1000, 1000);
        var explained = halves != 0 && Math.Abs(turns - (halves / 2.0)) <= LineThroughOrigin.Excluding * error;
        return new(k, explained ? halves : 0, explained
            ? $"{InWords(Math.Abs(halves), readings[k].Ends.Driving)} {(halves > 0 ? Spoken("too many") : Spoken("short"))}"
            : Spoken($"{Math.Abs(turns):0.##} {readings[k].Ends.Driving} turns off, which no half or whole turn explains ({readings[k].Text})"));
    }

    private static string InWords(int halves, string shaft) => halves switch
    {
        1 => CountedEnds.Half(shaft),
        2 => Spoken($"one {shaft} turn"),
        3 => Spoken($"one and a half {shaft} turns"),
        _ => Spoken($"{halves / 2.0:0.#} {shaft} turns"),
    };
}
