using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

/// <summary>A turn count and a roll-out all the way to an engine speed, propagated and thrown: JCGM 101's second route.</summary>
public sealed class WholeChainTests
{
    private const int Throws = 400_000;
    private const double RoadSpeed = 110 / 3.6;

    // One wheel held, 20 turns read to a quarter; a loose wheel rolled three turns. The throws draw every error where it arises:
    // p ± 1/8, w ± 0.02, tape ± 2 mm, mark ± 0.01 turn, loaded factor 0.971 with u 0.010.
    [Fact]
    public void Thrown_many_times_the_cruise_has_the_spread_that_was_propagated()
    {
        var axle = TurnCount.Of([TurnReading.Read("20:41", Wheels.OneHeld).OrRefuse()], new CountPrecision(0.25, 0.02)).Ratio;
        var tyre = RollOut.Of([RollReading.Read("3:6300mm").OrRefuse()], new RollOutPrecision(Loaded: false)).RollingCircumference;
        var n = new SpeedRelation { RoadSpeed = RoadSpeed, Gear = 0.82, Axle = axle, Circumference = tyre }.Solved().EngineSpeed! * 60;

        var random = new Random(20260511);
        var thrown = new double[Throws];
        for (var k = 0; k < Throws; k++)
        {
            var ratio = 2 * (41 + Within(random, 0.125)) / (20 + Within(random, 0.02));
            var circumference = (6.300 + Within(random, 0.002)) / (3 + Within(random, 0.01)) * (0.971 + (0.010 * Normal(random)));
            thrown[k] = 60 * RoadSpeed * 0.82 * ratio / circumference;
        }

        Array.Sort(thrown);
        var mean = thrown.Average();
        var u = Math.Sqrt(thrown.Sum(value => Math.Pow(value - mean, 2)) / (Throws - 1));

        // The formula bends a little (1/C): first order is good to about u²/n = 0.01 % of n, and to 1 % of u.
        Assert.Equal(mean, n.Value, mean * 3e-4);
        Assert.Equal(u, n.StandardUncertainty, u * 0.01);
        Assert.Equal(thrown[(int)(0.025 * Throws)], n.Interval95.Low, u * 0.05);
        Assert.Equal(thrown[(int)(0.975 * Throws)], n.Interval95.High, u * 0.05);
    }

    // Five repeats over ten turns: the mark's error is thrown for each, the reading's once for all.
    [Fact]
    public void Repeats_thrown_with_one_reading_error_have_the_spread_of_the_fitted_line()
    {
        var readings = Enumerable.Repeat(TurnReading.Read("10:20.5", Wheels.OneHeld).OrRefuse(), 5).ToList();
        var ratio = TurnCount.Of(readings, new CountPrecision(0.25, 0.1)).Ratio;

        var random = new Random(20260512);
        var thrown = new double[Throws / 4];
        for (var k = 0; k < thrown.Length; k++)
        {
            var reading = Within(random, 0.125);
            for (var repeat = 0; repeat < 5; repeat++) thrown[k] += 2 * (20.5 + reading) / (10 + Within(random, 0.1)) / 5;
        }

        var mean = thrown.Average();
        var u = Math.Sqrt(thrown.Sum(value => Math.Pow(value - mean, 2)) / (thrown.Length - 1));
        Assert.Equal(u, ratio.StandardUncertainty, u * 0.01);
    }

    private static double Within(Random random, double halfWidth) => ((2 * random.NextDouble()) - 1) * halfWidth;

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
