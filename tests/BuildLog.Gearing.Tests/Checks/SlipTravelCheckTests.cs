using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// 1200 mm at 6°: 14.5 mm longer at 100 mm of droop, 5.7 mm shorter at 80 mm of bump (worked examples E11 and E12).
/// Source of the limit: 0, geometry; 10 mm and 25 mm, common practice, from memory.
/// </remarks>
public sealed class SlipTravelCheckTests
{
    [Theory]
    [InlineData(90, 30, Verdict.Fits, Verdict.Fits)]
    [InlineData(90, 5, Verdict.Clash, Verdict.Fits)]
    [InlineData(90, 7, Verdict.Watch, Verdict.Fits)]
    [InlineData(90, 15, Verdict.Watch, Verdict.Fits)]
    [InlineData(60, 30, Verdict.Fits, Verdict.Watch)]
    [InlineData(40, 30, Verdict.Fits, Verdict.Clash)]
    public void Room_to_go_in_and_spline_to_come_out(double stroke, double stands, Verdict inwards, Verdict outwards)
        => Assert.Equal([inwards, outwards], Find(stroke, stands).Select(finding => finding.Verdict));

    // In 5.7 and 10 kept, out 14.5 and 25 kept.
    [Fact]
    public void The_numbers_and_the_joint_that_would_do()
    {
        var finding = Find(40, 30)[1];

        Assert.Equal("At full droop the propshaft lengthens by 15 mm, and the spline comes apart, 5 mm too short.", finding.Says);
        Assert.Equal(["a slip joint that stands 17 mm out at ride height, of a stroke of 59 mm or more"], finding.Cures);
    }

    [Fact]
    public void A_shaft_whose_slip_joint_was_never_asked_for_says_nothing()
        => Assert.Empty(new SlipTravelCheck().Look(InventedShaft.Car(3000), OwnersGoals.None));

    [Fact]
    public void Every_missing_measure_has_its_way()
    {
        var finding = Assert.Single(new SlipTravelCheck().Look(
            InventedShaft.Car(3000, new("shaft", new ShaftPiece()) { Slip = new() }), OwnersGoals.None));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal(6, finding.Cures.Count);
    }

    private static List<Finding> Find(double stroke, double stands)
    {
        Propshaft shaft = new("shaft", new ShaftPiece(length: InventedShaft.Known(1.2)))
        {
            Line = InventedShaft.Line(3, 6, 3),
            Slip = new(InventedShaft.Known(stroke / 1000), InventedShaft.Known(stands / 1000)),
        };
        var car = InventedShaft.Car(3000, shaft) with { RearAxle = InventedCar.Axle(4.10) with { Travel = new(InventedShaft.Known(0.1), InventedShaft.Known(0.08)) } };
        return [.. new SlipTravelCheck().Look(car, OwnersGoals.None)];
    }
}
