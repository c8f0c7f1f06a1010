using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class GearboxTorqueCheckTests
{
    // 200 N·m ± 3 % standard: 188 to 212 N·m.
    [Theory]
    [InlineData(250, Source.MakersData, Verdict.Fits)]
    [InlineData(205, Source.MakersData, Verdict.Watch)]
    [InlineData(180, Source.MakersData, Verdict.Clash)]
    [InlineData(180, Source.OwnersWord, Verdict.Watch)]
    public void The_makers_rating_is_a_limit_and_hearsay_a_warning(double rating, Source source, Verdict verdict)
    {
        var finding = Assert.Single(Look(Car(CheckCase.Known(rating, source))));

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal([Position.Engine, Position.Transmission], finding.Between);
    }

    [Fact]
    public void The_cure_is_a_rating_and_the_watch_is_settled_on_a_rolling_road()
    {
        var finding = Assert.Single(Look(Car(CheckCase.Known(205))));

        Assert.Equal("The engine gives 200 ± 12 N·m, the gearbox is rated for 205 N·m.", finding.Says);
        Assert.Equal("a gearbox rated for 212 N·m or more", Assert.Single(finding.Cures));
        Assert.StartsWith("have the engine's torque measured on a rolling road", finding.SettledBy, StringComparison.Ordinal);
    }

    // 400 N·m ± 23.5 is said ± 30 elsewhere and would seem to reach 425, which it does not; told to ten, as that is known, 424 N·m are 430.
    [Fact]
    public void What_is_said_lies_on_the_side_of_the_limit_where_it_is()
    {
        Finding Rated(double rating) => Assert.Single(Look(Car(CheckCase.Known(rating)) with { Engine = new("four") { ToldTorque = new(400, null) } }));

        Assert.Equal((Verdict.Fits, "The engine gives 400 ± 24 N·m, the gearbox is rated for 425 N·m."), (Rated(425).Verdict, Rated(425).Says));
        Assert.Equal("The engine gives 400 ± 30 N·m, the gearbox is rated for 410 N·m.", Rated(410).Says);
        Assert.Equal(["a gearbox rated for 430 N·m or more"], Rated(410).Cures);
    }

    [Fact]
    public void In_front_of_a_converter_it_is_the_engines_torque_that_the_rating_is_held_against()
    {
        var car = Car(CheckCase.Known(250));

        Assert.EndsWith("rated for 250 N·m, taken as the engine's torque in front of the converter.", Assert.Single(Look(car with { Transmission = car.Transmission! with { Converter = new(LocksUp: true) } })).Says, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rating_asks_for_the_torque_and_without_a_rating_there_is_nothing_to_ask()
    {
        Assert.Equal(Verdict.Open, Assert.Single(Look(Car(CheckCase.Known(205)) with { Engine = new("four") })).Verdict);
        Assert.Empty(Look(Car(null)));
        Assert.Empty(Look(Car(CheckCase.Known(205)) with { Engine = null }));
    }

    // 400 N·m ± 3 % standard, as a curve of such a sheet has it: 376 to 424 N·m, and the ± is said with one figure, upwards, where that reaches no limit that is not reached.
    [Theory]
    [InlineData(300, Verdict.Clash, "30")]
    [InlineData(410, Verdict.Watch, "30")]
    [InlineData(430, Verdict.Fits, "24")]
    public void Peak_torque_alone_is_enough_to_judge_strength_by(double rating, Verdict verdict, string half)
    {
        var finding = Assert.Single(Look(Car(CheckCase.Known(rating)) with { Engine = new("four") { ToldTorque = new(400, null) } }));

        Assert.Equal(verdict, finding.Verdict);
        Assert.StartsWith($"The engine gives 400 ± {half} N·m", finding.Says, StringComparison.Ordinal);
    }

    private static Driveline Car(Known? rating) => InventedCar.Plain with
    {
        Engine = new("four") { Torque = TorqueCurve.Of([TorquePoint.Read("1000:180 Nm").OrRefuse(), TorquePoint.Read("3000:200 Nm").OrRefuse()]) },
        Transmission = InventedCar.Plain.Transmission! with { TorqueRating = rating },
    };

    private static IReadOnlyList<Finding> Look(Driveline car) => [.. new GearboxTorqueCheck().Look(car, CheckCase.NoGoals)];
}
