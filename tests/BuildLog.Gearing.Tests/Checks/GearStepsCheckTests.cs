using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: common practice, no source; 2 % for ratios quoted to two places.</remarks>
public sealed class GearStepsCheckTests
{
    // A geometric and a progressive box of 3.5 to 0.8, worked by hand; a truck's wide top step; the last with an overdrive far above a direct top.
    [Theory]
    [InlineData(new[] { 3.50, 2.42, 1.67, 1.157, 0.80 }, Verdict.Fits)]
    [InlineData(new[] { 3.50, 2.14, 1.42, 1.024, 0.80 }, Verdict.Fits)]
    [InlineData(new[] { 3.50, 2.14, 1.42, 1.15, 0.80 }, Verdict.Watch)]
    [InlineData(new[] { 2.88, 1.91, 1.33, 1.00, 0.63 }, Verdict.Watch)]
    public void Steps_should_get_smaller_upwards(double[] ratios, Verdict verdict)
        => Assert.Equal(verdict, Assert.Single(Look(Box(ratios))).Verdict);

    // √(1.42 · 0.80) = 1.066, so 1.06: steps of 1.34 and 1.33 behind 1.51.
    [Fact]
    public void The_cure_is_a_ratio_where_one_gear_does_it()
        => Assert.Equal("ratio of gear 4 1.06 or less", Assert.Single(Assert.Single(Look(Box(3.50, 2.14, 1.42, 1.15, 0.80))).Cures));

    // 1.33/1.00 = 1.33, 1.00/0.63 = 1.587; a middle gear of √(1.33 · 0.63) = 0.915 would make the step above 1.33 1.45, over 1.44 below it: the hole has only moved.
    [Fact]
    public void The_worst_pair_is_named_and_where_no_gear_alone_does_it_the_box()
    {
        var finding = Assert.Single(Look(Box(2.88, 1.91, 1.33, 1.00, 0.63)));

        Assert.Equal("The step from 4 to 5 is 1.587, the one below it, from 3 to 4, 1.33: the upper is 1.19 times the lower and should not be larger.", finding.Says);
        Assert.Equal(1.587302 / 1.33, finding.Value!.Value, 1e-6);
        Assert.Equal("a gearbox with steps of 1.46 or less, none larger than the one below it", Assert.Single(finding.Cures));
        Assert.Equal(Because.UnverifiedLimit, finding.Because);
    }

    // Power peaks at the curve's end, 5000, torque at 3000. Of its first piece, 150 + 50 (t + t² − t³), 97 % of 200 are reached at t = 0.7372: 2474 rev/min.
    // The largest step is 4.1/2.1: shifted at 5000 it lands at 2561; 4.3/2.1 lands at 2442.
    [Fact]
    public void An_upshift_that_drops_below_the_strong_torque_is_a_watch()
    {
        var torque = InventedLoad.Curve((1000, 150), (3000, 200), (5000, 180));
        var drop = Look(Box(4.1, 2.1, 1.4, 1.0) with { Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)) { Torque = torque } })[1];
        Assert.Equal(Verdict.Fits, drop.Verdict);

        var wider = Look(Box(4.3, 2.1, 1.4, 1.0) with { Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)) { Torque = torque } })[1];
        Assert.Equal(5000 * 2.1 / 4.3, wider.Value!.Value * 60, 1e-6);
        Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (wider.Verdict, wider.Because));
        Assert.Equal("Shifted at the power peak, the step from 1 to 2 drops the engine to 2442 rev/min; its torque is near its peak from 2475 rev/min.", wider.Says);
        Assert.Equal("ratio of gear 2 2.14 or more", Assert.Single(wider.Cures));
    }

    // The step from 4.3 to 2.1 should be 5000/2475 = 2.02 or less; 2.13 in its place would be 2.37 over 0.9. Two alike steps from 4.3 to 0.9 are √4.78 = 2.19 each.
    [Fact]
    public void Where_one_ratio_would_only_move_the_hole_the_cure_is_a_closer_box()
    {
        var findings = Look(Box(4.3, 2.1, 0.9) with { Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)) { Torque = InventedLoad.Curve((1000, 150), (3000, 200), (5000, 180)) } });

        Assert.Equal([Verdict.Watch, Verdict.Watch], findings.Select(finding => finding.Verdict));
        Assert.All(findings, finding => Assert.Equal("a gearbox with steps of 2.02 or less, none larger than the one below it", Assert.Single(finding.Cures)));
    }

    // 201 N·m at 3000 among 200 from 1500 to 5000: nobody feels where that peaks.
    [Fact]
    public void On_a_flat_curve_there_is_no_peak_to_stay_above()
        => Assert.Equal(Verdict.Fits, Look(Box(4.3, 2.1, 1.4, 1.0) with { Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)) { Torque = InventedLoad.Curve((1500, 200), (3000, 201), (5000, 200)) } })[1].Verdict);

    // Shifted at 4000 it lands at 1953.
    [Fact]
    public void A_redline_below_the_power_peak_is_where_it_shifts()
    {
        var engine = new Engine("four", Redline: InventedCar.Exactly(4000 / 60.0)) { Torque = InventedLoad.Curve((1000, 150), (3000, 200), (5000, 180)) };

        Assert.StartsWith("Shifted at the redline, the step from 1 to 2 drops the engine to 1953 rev/min", Look(Box(4.3, 2.1, 1.4, 1.0) with { Engine = engine })[1].Says, StringComparison.Ordinal);
    }

    [Fact]
    public void An_overdrive_unit_is_the_last_step()
        => Assert.Contains("from 4 to 4 with overdrive", Assert.Single(Look(InventedCar.Plain with { Overdrive = new("unit", InventedCar.Exactly(0.6)) })).Says, StringComparison.Ordinal);

    // Three gears have one progression, two gears a drop of their own: 3.6 over 1.0 at 5000 lands at 1389.
    [Fact]
    public void Three_gears_have_a_progression_and_two_a_drop()
    {
        var torque = InventedLoad.Curve((1000, 150), (3000, 200), (5000, 180));

        Assert.Equal("The step from 2 to 3 is 2.00, the one below it, from 1 to 2, 1.50: the upper is 1.33 times the lower and should not be larger.", Assert.Single(Look(Box(3, 2, 1))).Says);
        Assert.Equal(5000 / 3.6, Assert.Single(Look(Box(3.6, 1) with { Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)) { Torque = torque } })).Value!.Value * 60, 1e-6);
        Assert.Contains("from 2 to 3", Look(Box(3.4, 2.4, 1.0) with { Engine = new("four", Redline: InventedCar.Exactly(5000 / 60.0)) { Torque = torque } })[1].Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_power_still_rises_at_the_curves_end_nobody_knows_where_it_shifts()
        => Assert.Single(Look(Box(4.3, 2.1, 1.4, 1.0) with { Engine = new("four", Redline: InventedCar.Exactly(6000 / 60.0)) { Torque = InventedLoad.Curve((1000, 150), (3000, 200), (5000, 180)) } }));

    [Fact]
    public void Two_gears_have_no_progression() => Assert.Empty(Look(Box(1.8, 1.0)));

    private static Driveline Box(params double[] ratios) => new() { Transmission = new("box", [.. ratios.Select((ratio, k) => InventedCar.Gear($"{k + 1}", ratio))]) };

    private static IReadOnlyList<Finding> Look(Driveline car) => [.. new GearStepsCheck().Look(car, CheckCase.NoGoals)];
}
