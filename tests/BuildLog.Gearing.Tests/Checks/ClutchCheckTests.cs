using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class ClutchCheckTests
{
    // 200 N·m at its peak, ± 3 % standard: 188 to 212. 1.2 times 212 is 254; 1.2 times 188 is 226.
    [Theory]
    [InlineData(260, Source.MakersData, Verdict.Fits)]
    [InlineData(225, Source.MakersData, Verdict.Watch)]
    [InlineData(180, Source.MakersData, Verdict.Clash)]
    [InlineData(180, Source.OwnersWord, Verdict.Watch)]
    public void A_clutch_passes_on_a_fifth_more_than_the_engine_gives(double rating, Source source, Verdict verdict)
        => Assert.Equal(verdict, CheckCase.Find(new ClutchCheck(), Car(new(rating, source))).Verdict);

    [Fact]
    public void A_clutch_too_weak_is_cured_by_a_rating()
    {
        var finding = CheckCase.Find(new ClutchCheck(), Car(new(180, Source.MakersData)));

        Assert.Equal("The engine gives 200 ± 12 N·m, the clutch passes on 180 N·m; 1.2 times the engine's torque is wanted.", finding.Says);
        Assert.Equal(["a clutch rated for 255 N·m or more"], finding.Cures);
    }

    [Fact]
    public void A_rating_nobody_entered_says_nothing_and_one_that_was_asks_for_the_engines_torque()
    {
        Assert.Empty(CheckCase.Look(new ClutchCheck(), Car(null)));
        Assert.Equal(Verdict.Open, CheckCase.Find(new ClutchCheck(), Car(new(180, Source.MakersData)) with { Engine = new("engine") }).Verdict);
    }

    [Fact]
    public void Before_a_converter_it_is_the_flexplate()
    {
        var car = Car(new(180, Source.MakersData));

        Assert.Equal(
            ["a flexplate rated for 255 N·m or more"],
            CheckCase.Find(new ClutchCheck(), car with { Transmission = car.Transmission! with { Converter = new Converter(true) } }).Cures);
    }

    // 400 N·m ± 5.88 %: a rating is surely 1.2 times that from 1.2 · 400 / (1 − 0.0588) = 510 N·m.
    [Fact]
    public void A_told_peak_is_all_that_it_asks_of_the_engine()
        => Assert.Equal(["a clutch rated for 510 N·m or more"], CheckCase.Find(new ClutchCheck(), Car(new(300, Source.MakersData)) with { Engine = new("four") { ToldTorque = new(400, null) } }).Cures);

    private static Driveline Car(Known? rating) => InventedCar.Plain with
    {
        Engine = new("four") { Torque = TorqueCurve.Of([new(1000 / 60.0, 180), new(3000 / 60.0, 200)]) },
        Transmission = InventedCar.Plain.Transmission! with { Front = new() { ClutchRating = rating } },
    };
}
