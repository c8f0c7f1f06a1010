using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>
/// Low gear: 200 N·m · 3.5 · 0.85 = 595 N·m. Slip: 0.8 · 9.80665 · 1800 kg · 2.00/2π m / (0.95 · 4.10) = 1154 N·m with both axles engaged.
/// </remarks>
public sealed class TransferCaseTorqueCheckTests
{
    [Theory]
    [InlineData(600, Source.MakersData, Verdict.Fits)]
    [InlineData(590, Source.MakersData, Verdict.Clash)]
    [InlineData(590, Source.OwnersWord, Verdict.Watch)]
    public void Low_gear_against_what_its_maker_allows(double rating, Source source, Verdict verdict)
    {
        var finding = Assert.Single(Look(Truck(rating, source)));

        Assert.Equal((verdict, 595), (finding.Verdict, Math.Round(finding.Value!.Value)));
        Assert.Equal([Position.Engine, Position.Transmission, Position.TransferCase], finding.Between);
        if (verdict != Verdict.Fits) Assert.Equal(["a transfer case rated for 595 N·m or more"], finding.Cures);
    }

    // 600 N·m make 1785 in first; the tyres slip before.
    [Fact]
    public void Where_the_tyres_slip_first_that_is_what_it_has_to_take()
    {
        var finding = Assert.Single(Look(Truck(1200, Source.MakersData) with { Engine = InventedLoad.WithTorque(600).Engine }));

        Assert.Equal((Verdict.Fits, 1154), (finding.Verdict, Math.Round(finding.Value!.Value)));
        Assert.StartsWith("At the transfer case's input the tyres hold 1154 N·m", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void One_of_the_two_torques_passes_and_does_not_fail()
    {
        var unweighed = Truck(590, Source.MakersData) with { AxleMasses = null, Load = null };

        Assert.Equal(Verdict.Open, Assert.Single(Look(unweighed)).Verdict);
        Assert.Contains("weigh the axles one by one", Assert.Single(Look(unweighed)).Cures);
        Assert.Equal(Verdict.Fits, Assert.Single(Look(unweighed with { TransferCase = Truck(600, Source.MakersData).TransferCase })).Verdict);
    }

    // 200 · 4.4 · 0.85 = 748 N·m in reverse, 595 in first.
    [Fact]
    public void Reverse_counts_where_it_is_lower_than_first()
    {
        var truck = Truck(600, Source.MakersData);
        var finding = Assert.Single(Look(truck with { Transmission = truck.Transmission! with { Reverse = CheckCase.Known(4.4) } }));

        Assert.Equal((Verdict.Clash, 748), (finding.Verdict, Math.Round(finding.Value!.Value)));
        Assert.StartsWith("At the transfer case's input reverse makes 748 N·m", finding.Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_rating_it_says_nothing() => Assert.Empty(Look(Truck(600, Source.MakersData) with { TransferCase = new("case", InventedCar.Exactly(1), null) }));

    private static Driveline Truck(double rating, Source source) => InventedLoad.Car with
    {
        FrontAxle = InventedCar.Axle(4.10),
        TransferCase = new("case", InventedCar.Exactly(1), InventedCar.Exactly(2.5)) { FrontDrive = FrontDrive.Declutch, TorqueRating = CheckCase.Known(rating, source) },
        AxleMasses = new(InventedCar.Exactly(850), InventedCar.Exactly(950)),
    };

    private static IReadOnlyList<Finding> Look(Driveline truck) => [.. new TransferCaseTorqueCheck().Look(truck, CheckCase.NoGoals)];
}
