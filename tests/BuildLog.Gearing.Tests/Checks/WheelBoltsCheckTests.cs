using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: geometry; a bore 0.3 mm larger and a ring's wall of 1 mm, common practice, no source.</remarks>
public sealed class WheelBoltsCheckTests
{
    private static readonly Bolting Hub = Of(5, 114.3, 70, "1/2-20", Seat.Cone);

    [Fact]
    public void The_same_bolting_fits() => Assert.All(Find(Hub, Hub), finding => Assert.Equal(Verdict.Fits, finding.Verdict));

    [Theory]
    [InlineData(112)]
    [InlineData(115)]
    public void A_near_bolt_circle_clashes(double circle)
    {
        var finding = Find(Hub, Of(5, circle, 70)).First();

        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.Equal(["wheels with a bolt circle of 114.3 mm"], finding.Cures);
    }

    [Fact]
    public void Another_number_of_studs_leaves_nothing_that_fits()
    {
        var finding = Assert.Single(Find(Hub, Of(4, 114.3, 70)));

        Assert.Equal("The axle has 5 studs, the wheels 4 holes.", finding.Says);
        Assert.Equal(["wheels with 5 holes on 114.3 mm", "hubs with 4 studs on 114.3 mm"], finding.Cures);
    }

    [Fact]
    public void What_else_is_wrong_with_such_wheels_is_told_at_once()
        => Assert.Equal(
            ["The axle has 5 studs, the wheels 4 holes.", "The axle's bolt circle is 114.3 mm, the wheels' 100 mm.", "The axle's spigot is 70.0 mm, the wheels' bore 60.0 mm.", "The axle's nuts seat on a cone, the wheels have a ball."],
            Find(Hub, Of(4, 100, 60, "1/2-20", Seat.Ball)).Select(finding => finding.Says));

    // Bore and spigot as measured may be one: no ring is bought for nothing.
    [Fact]
    public void A_bore_that_may_be_the_spigots_is_tried_on()
    {
        var measured = Hub with { Bore = InventedShaft.Known(InventedCar.Of(0.07, 0.0001, "caliper", _ => "measure closer")) };

        Assert.Equal(["a wheel tried on by hand before they are bought"], Find(measured, Hub)[1].Cures);
    }

    // ± 1.4 mm at 95 %: 113.1 may be 112 or 114.3.
    [Fact]
    public void A_measured_circle_that_could_be_either_is_a_watch_that_names_both()
    {
        var measured = Hub with { PitchCircle = InventedShaft.Known(InventedCar.Of(0.1131, 0.0007, "chord", _ => "measure across more studs")) };
        var finding = Find(measured, Of(5, 112, 70)).First();

        Assert.Equal(Verdict.Watch, finding.Verdict);
        Assert.Contains("may be 5×112 mm or 5×114.3 mm (4.5 in)", finding.Says, StringComparison.Ordinal);
        Assert.StartsWith("measure across more studs", finding.SettledBy, StringComparison.Ordinal);
    }

    // Both to ± 0.3 mm: a caliper does not get nearer, and no other pattern of five holes is near.
    [Fact]
    public void Two_measured_circles_that_can_only_be_one_pattern_fit()
    {
        var finding = Find(Hub with { PitchCircle = Circle(0.1142) }, Hub with { PitchCircle = Circle(0.1144) }).First();

        Assert.Equal(Verdict.Fits, finding.Verdict);
        Assert.EndsWith("of the patterns wheels are sold by, both can only be 5×114.3 mm (4.5 in).", finding.Says, StringComparison.Ordinal);
        Assert.False(finding.LimitIsVerified);
    }

    [Fact]
    public void Two_measured_circles_of_patterns_half_a_millimetre_apart_stay_a_watch()
        => Assert.Equal(Verdict.Watch, Find(Hub with { PitchCircle = Circle(0.1202) }, Hub with { PitchCircle = Circle(0.1205) }).First().Verdict);

    [Theory]
    [InlineData(69, Verdict.Clash, "wheels bored to 70.01 to 70.29 mm, or to 72.1 mm or more with rings that fill it")]
    [InlineData(71.6, Verdict.Watch, "wheels bored to 70.01 to 70.29 mm, or to 72.1 mm or more with rings that fill it")]
    [InlineData(72.6, Verdict.Watch, "rings of 72.6 mm outside and 70.01 to 70.29 mm inside")]
    public void A_bore_too_small_does_not_go_on_and_one_too_large_wants_a_ring(double bore, Verdict verdict, string cure)
    {
        var finding = Find(Hub, Of(5, 114.3, bore))[1];

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal([cure], finding.Cures);
    }

    [Fact]
    public void Thread_and_seat_have_to_be_the_same()
    {
        Assert.Equal(["nuts of 1/2-20"], Assert.Single(Find(Hub, Of(5, 114.3, 70, "M12×1.5")), finding => finding.Verdict == Verdict.Clash).Cures);
        Assert.Equal(["nuts with a ball seat"], Assert.Single(Find(Hub, Of(5, 114.3, 70, "1/2-20", Seat.Ball)), finding => finding.Verdict == Verdict.Clash).Cures);
        Assert.DoesNotContain(Find(Of(5, 114.3, 70, "M12x1.5"), Of(5, 114.3, 70, "m12 × 1.5")), finding => finding.Verdict == Verdict.Clash);
    }

    [Fact]
    public void What_was_not_measured_is_asked_for_beside_what_was()
        => Assert.Equal([Verdict.Open, Verdict.Fits], Find(Hub with { Bore = null }, Of(5, 114.3, 70)).Select(finding => finding.Verdict));

    [Fact]
    public void All_that_was_not_measured_is_asked_for_in_turn()
        => Assert.Equal(
            [
                "count the axle's studs", "count the wheels' holes", "measure between two of the axle's studs, centre to centre",
                "measure between two holes of a wheel, edge to the same edge", "measure the axle's spigot across with a caliper", "measure the wheel's centre bore with a caliper",
            ],
            Assert.Single(Find(new(), new())).Cures);

    // Circles of which nobody knows the size are not named in the cure.
    [Fact]
    public void Studs_alone_clash_with_holes_alone()
        => Assert.Equal(["wheels with 5 holes", "hubs with 4 studs"], Find(new(5), new(4))[1].Cures);

    // A twentieth of a millimetre is the last figure such numbers are written with.
    [Theory]
    [InlineData(114.35, Verdict.Fits)]
    [InlineData(114.25, Verdict.Fits)]
    [InlineData(114.36, Verdict.Clash)]
    public void Circles_that_are_written_alike_are_one(double circle, Verdict verdict) => Assert.Equal(verdict, Find(Hub, Of(5, circle, 70)).First().Verdict);

    // ± 0.8 mm about 114.2: only 114.3 is sold so near, and the wheels' 114.6 may be it.
    [Fact]
    public void A_measured_circle_that_can_only_be_one_pattern_names_none()
    {
        var measured = Hub with { PitchCircle = InventedShaft.Known(InventedCar.Of(0.1142, 0.0003)) };
        var finding = Find(measured, Of(5, 114.6, 70)).First();

        Assert.Equal(Verdict.Watch, finding.Verdict);
        Assert.DoesNotContain("may be", finding.Says, StringComparison.Ordinal);
        Assert.EndsWith(", tried on by hand before they are bought", Assert.Single(finding.Cures), StringComparison.Ordinal);
    }

    [Fact]
    public void A_hub_nobody_asked_for_says_nothing()
        => Assert.Empty(new WheelBoltsCheck().Look(InventedCar.Plain with { Tyres = InventedCar.Rolling(2) with { Wheel = new(Bolting: Hub) } }, OwnersGoals.None));

    private static Known Circle(double metres) => InventedShaft.Known(InventedCar.Of(metres, 0.00015, "chord", _ => "measure across more studs"));

    private static Bolting Of(int studs, double circle, double bore, string? thread = null, Seat? seat = null)
        => new(studs, InventedShaft.Known(circle / 1000), InventedShaft.Known(bore / 1000), thread, seat);

    private static List<Finding> Find(Bolting hub, Bolting wheel)
        => [.. new WheelBoltsCheck().Look(
            InventedCar.Plain with { RearAxle = InventedCar.Axle(4.10) with { Hub = hub }, Tyres = InventedCar.Rolling(2) with { Wheel = new(Bolting: wheel) } }, OwnersGoals.None)];
}
