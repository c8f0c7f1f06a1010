using System.Globalization;
using BuildLog.Data.Days;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Interpolation;
using MathNet.Numerics.Random;
using MathNet.Numerics.Statistics;
using UnitsNet;

namespace BuildLog.Benchmarks;

/// <summary><c>-- engine</c>: what is read and computed most, beside the runtime, UnitsNet and MathNet doing as much, turn by turn in one run.</summary>
internal static class EngineRun
{
    private const int Rounds = 15;
    private const int Times = 20_000;
    private const int Trials = 1_000_000;

    private static double sink;

    public static int Of()
    {
        Compare("quantity 2143.5 mm", () => Take(QuantityText.Read("2143.5 mm", BuildLog.Gearing.Quantities.Kind.Length)), "cut at the space, double.Parse", () => sink += double.Parse("2143.5 mm".Split(' ')[0], CultureInfo.InvariantCulture));
        Compare("quantity 2143.5 mm", () => Take(QuantityText.Read("2143.5 mm", BuildLog.Gearing.Quantities.Kind.Length)), "UnitsNet Length.Parse", () => sink += Length.Parse("2143.5 mm", CultureInfo.InvariantCulture).Meters);
        Compare("tyre P235/75R15 105S", () => Take(TyreSizeText.Read("P235/75R15 105S")), "three int.Parse of slices", () => sink += int.Parse("P235/75R15 105S".AsSpan(1, 3), CultureInfo.InvariantCulture) + int.Parse("P235/75R15 105S".AsSpan(5, 2), CultureInfo.InvariantCulture) + int.Parse("P235/75R15 105S".AsSpan(8, 2), CultureInfo.InvariantCulture));
        Compare("turns 10:20.5", () => Take(TurnReading.Read("10:20.5", Wheels.OneHeld)), "Split and two double.Parse", () => sink += "10:20.5".Split(':').Sum(text => double.Parse(text, CultureInfo.InvariantCulture)));
        Compare("day 3 May 2026", () => Take(LooseDayText.Read("3 May 2026")), "DateOnly.ParseExact", () => sink += DateOnly.ParseExact("3 May 2026", "d MMM yyyy", CultureInfo.InvariantCulture).DayNumber);

        var (speed, circumference) = (Length.FromKilometers(110) / Duration.FromHours(1), Length.FromMeters(2.1));
        var (ratio, tyre) = (Measured.From(3.9, Input.Rectangular("ratio", 0.01, new("count"))), Measured.From(2.1, Input.Rectangular("tyre", 0.01, new("roll"))));
        Compare("v i / C with uncertainty", () => sink += (30.56 * ratio / tyre).Value, "the same by UnitsNet, without", () => sink += (speed / circumference.Meters * 3.9).MetersPerSecond);

        double[] at = [1000, 2000, 3000, 4000, 5000], torque = [120, 150, 160, 150, 120];
        var curve = TorqueCurve.Of([.. at.Zip(torque, (n, t) => new TorquePoint(n, t))]);
        var theirs = CubicSpline.InterpolatePchipSorted(at, torque);
        Compare("torque curve, a point", () => sink += curve.TorqueAt(2750), "MathNet monotone cubic", () => sink += theirs.Interpolate(2750));

        double[] x = [10, 10, 10, 20, 20], y = [20.5, 20.5, 20.25, 41, 40.75];
        var points = x.Zip(y, (a, b) => (Measured.From(a, Input.Rectangular("stop", 0.02, new("count"))), Measured.From(b, Input.Rectangular("reading", 0.125, new("count"))))).ToArray();
        Compare("line of five counts, its u", () => sink += LineThroughOrigin.Fit(points, new("count")).Slope.Value, "MathNet slope alone", () => sink += Fit.LineThroughOrigin(x, y));

        var cruise = CruiseCheck.EngineSpeed(MeasuredTruck.Whole, MeasuredTruck.Goals.Cruise[0])!;
        Compare("a million draws, interval", () => sink += MonteCarlo.OfTrials(cruise, 1, Trials)!.Interval95.Low, "MathNet's uniforms and quantiles", () => sink += TheirDraws(), 1);
        Console.WriteLine(FormattableString.Invariant($"({sink != 0})"));
        return 0;
    }

    // The same four readings as the truck's cruise: propshaft and wheel turns, metres and turns of the tyre.
    private static double TheirDraws()
    {
        var drawn = new double[Trials];
        Array.Fill(drawn, 25 * 2);
        foreach (var (value, halfWidth, power) in new[] { (41, 0.125, 1), (20, 0.02, -1), (11.3, 0.002, -1), (5, 0.01, 1) })
        {
            var one = new double[Trials];
            ContinuousUniform.Samples(new MersenneTwister(1), one, value - halfWidth, value + halfWidth);
            for (var k = 0; k < Trials; k++) drawn[k] *= power > 0 ? one[k] : 1 / one[k];
        }

        Array.Sort(drawn);
        return SortedArrayStatistics.Quantile(drawn, 0.025);
    }

    private static void Take<T>(Parsed<T> parsed)
        where T : notnull
        => sink += parsed.Refusal is null ? 1 : throw new InvalidOperationException(parsed.Refusal.Message);

    private static void Compare(string what, Action ours, string baseline, Action theirs, int times = Times)
    {
        var (mine, other) = (new List<double>(), new List<double>());
        for (var round = 0; round < Rounds; round++)
        {
            mine.Add(Timing.Milliseconds(() => Repeat(ours, times)));
            other.Add(Timing.Milliseconds(() => Repeat(theirs, times)));
        }

        // Others that push in only ever make a round longer, so the least is nearest to a quiet machine.
        double a = 1e6 * mine.Min() / times, b = 1e6 * other.Min() / times;
        Console.WriteLine(FormattableString.Invariant($"{what,-28} {a,8:0} ns   {baseline,-34} {b,8:0} ns   {a / b:0.0} times   {1e3 / a:0.00} million a second"));
    }

    private static void Repeat(Action act, int times)
    {
        for (var k = 0; k < times; k++) act();
    }
}
