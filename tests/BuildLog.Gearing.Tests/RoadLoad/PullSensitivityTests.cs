using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.Measurements;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.RoadLoad;

/// <summary>How strongly hills and top speeds move with what they are made of.</summary>
public sealed class PullSensitivityTests
{
    /// <summary>The car with one of its numbers replaced, and what that number is.</summary>
    private sealed record Changed(Func<Measured, Driveline> With, double At);

    private static readonly Driveline Falling = InventedLoad.Car with { Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)) { Torque = InventedLoad.Curve((1000, 90), (5000, 60)) } };

    private static readonly Dictionary<string, Changed> Numbers = new()
    {
        ["mass"] = new(x => Loaded(InventedLoad.Exact with { Mass = InventedCar.Exactly(x) }), 1500),
        ["rolling resistance"] = new(x => Loaded(InventedLoad.Exact with { RollingResistance = InventedCar.Exactly(x) }), 0.014),
        ["drag area"] = new(x => Loaded(InventedLoad.Exact with { DragArea = InventedCar.Exactly(x) }), 0.8),
        ["axle"] = new(x => Falling with { RearAxle = InventedCar.Axle(x) }, 4.1),
        ["tyre"] = new(x => Falling with { Tyres = InventedCar.Rolling(x) }, 2),
    };

    public static TheoryData<string> Names => [.. Numbers.Keys];

    [Fact]
    public void A_hill_moves_with_pull_and_roll_as_small_differences_say()
        => Gen.Select(Gen.Double[-0.1, 0.9], Gen.Double[0, 0.3]).Sample((pull, roll) =>
        {
            if (Hills.Held(pull, roll) is not { Value: < 5 }) return;

            SmallDifferences.Agree(p => Hills.Held(p, roll)!, pull);
            SmallDifferences.Agree(crr => Hills.Held(pull, crr)!, roll);
        });

    [Theory]
    [MemberData(nameof(Names))]
    public void A_top_speed_that_power_ends_moves_as_small_differences_say(string name)
    {
        Assert.Equal(TopSpeedLimit.Power, TopSpeed.Of(InventedLoad.Pull(Falling))!.Limit);
        SmallDifferences.Agree(x => TopSpeed.Of(InventedLoad.Pull(Numbers[name].With(x)))!.Speed, Numbers[name].At);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void So_does_the_hill_held_at_a_speed(string name)
        => SmallDifferences.Agree(x => InventedLoad.Pull(Numbers[name].With(x)).Hill(InventedLoad.Step(Falling), 25)!, Numbers[name].At);

    [Theory]
    [InlineData("mass")]
    [InlineData("rolling resistance")]
    [InlineData("drag area")]
    public void So_does_the_speed_that_peak_power_would_reach(string name)
        => SmallDifferences.Agree(x => TopSpeed.ByPeakPower(InventedLoad.Pull(Numbers[name].With(x))), Numbers[name].At);

    // Sine 1 − 10⁻⁵ is a wall of 89.7°, on which no wheel rolls.
    [Fact]
    public void Next_to_a_wall_there_is_no_hill() => Assert.Null(Hills.Held(1 - 1e-5, 0));

    private static Driveline Loaded(VehicleLoad load) => Falling with { Load = load };
}
