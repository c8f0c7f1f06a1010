using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.RoadLoad;

/// <summary>Hill and top speed thrown many times from their formulas written out, against what was propagated.</summary>
public sealed class ThrownPullTests
{
    private const int Throws = 200_000;

    // mass ± 40 kg, Crr ± 0.001, CdA ± 0.08 m², axle ± 0.02, circumference ± 0.02 m, losses ± 0.02 (all standard); torque falls from 200 N·m by 0.02 a rev/min.
    private static readonly Driveline Car = InventedCar.Plain with
    {
        Engine = new("four") { Torque = InventedLoad.Curve((1000, 180), (6000, 80)) },
        RearAxle = InventedCar.Axle(InventedCar.Of(4.10, 0.02, "axle")),
        Tyres = InventedCar.Rolling(InventedCar.Of(2.00, 0.02, "tyre")),
        Load = InventedLoad.Exact with
        {
            Mass = InventedCar.Exactly(InventedCar.Of(1500, 40, "mass")),
            RollingResistance = InventedCar.Exactly(InventedCar.Of(0.014, 0.001, "roll")),
            DragArea = InventedCar.Exactly(InventedCar.Of(0.8, 0.08, "drag")),
        },
    };

    [Fact]
    public void The_hill_has_the_spread_that_was_propagated()
    {
        var hill = InventedLoad.Pull(Car).Hill(InventedLoad.Step(Car), 30)!;
        Compare(hill, draw =>
        {
            var p = (Force(draw, 30) - (0.5 * 1.225 * draw.Area * 900)) / (draw.Mass * 9.80665);
            var theta = 0.0;
            for (var k = 0; k < 30; k++) theta = Math.Asin(p - (draw.Roll * Math.Cos(theta)));
            return Math.Tan(theta);
        });
    }

    [Fact]
    public void The_top_speed_has_the_spread_that_was_propagated()
    {
        var top = TopSpeed.Of(InventedLoad.Pull(Car))!;
        Assert.Equal(TopSpeedLimit.Power, top.Limit);
        Compare(top.Speed, draw =>
        {
            var (low, high) = (30.0, 50.0);
            for (var k = 0; k < 40; k++)
            {
                var v = (low + high) / 2;
                if (Force(draw, v) > (draw.Mass * 9.80665 * draw.Roll) + (0.5 * 1.225 * draw.Area * v * v)) low = v;
                else high = v;
            }

            return low;
        });
    }

    private static double Force(Draw draw, double v)
        => (200 - (0.02 * 60 * v * draw.Axle / draw.Tyre)) * draw.Axle * (0.9504 + draw.Losses) * 2 * Math.PI / draw.Tyre;

    private static void Compare(Gearing.Measurements.Measured propagated, Func<Draw, double> formula)
    {
        var random = new Random(20260601);
        double Normal(double centre, double u) => centre + (u * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()));

        var thrown = new double[Throws];
        for (var k = 0; k < Throws; k++)
            thrown[k] = formula(new(Normal(1500, 40), Normal(0.014, 0.001), Normal(0.8, 0.08), Normal(4.10, 0.02), Normal(2, 0.02), Normal(0, 0.02)));

        Array.Sort(thrown);
        var mean = thrown.Average();
        var u = Math.Sqrt(thrown.Sum(value => Math.Pow(value - mean, 2)) / (Throws - 1));

        // Drag is thrown by 10 %: the formulas bend over that, by some per cent of u.
        Assert.Equal(mean, propagated.Value, 0.1 * u);
        Assert.Equal(u, propagated.StandardUncertainty, 0.02 * u);
        Assert.Equal(thrown[(int)(0.025 * Throws)], propagated.Interval95.Low, 0.2 * u);
        Assert.Equal(thrown[(int)(0.975 * Throws)], propagated.Interval95.High, 0.2 * u);
    }

    private readonly record struct Draw(double Mass, double Roll, double Area, double Axle, double Tyre, double Losses);
}
