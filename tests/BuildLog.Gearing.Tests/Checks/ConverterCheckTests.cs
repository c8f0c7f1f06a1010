using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Source of the limit: common practice, no source; the usual slip from memory.</remarks>
public sealed class ConverterCheckTests
{
    // 108 km/h: 3690 rev/min locked, 3690/0.945 = 3905 slipping, u 1.53 % · 3905 = 60.
    [Theory]
    [InlineData(2200, Verdict.Fits)]
    [InlineData(3900, Verdict.Watch)]
    [InlineData(4500, Verdict.Watch)]
    public void A_cruise_below_the_stall_speed_is_warned_of(double stall, Verdict verdict)
        => Assert.Equal(verdict, Find(new(false, CheckCase.Known(stall / 60))).Verdict);

    [Fact]
    public void The_cures_are_parts_and_numbers()
    {
        var finding = Find(new(false, CheckCase.Known(4500 / 60.0)));

        Assert.Equal(Because.UnverifiedLimit, finding.Because);
        Assert.Equal(["a gearbox whose converter locks", "a converter that stalls at 3750 rev/min or less", "axle ratio 4.88 or more"], finding.Cures.Take(3));
    }

    // The stall speed's own doubt widens what is judged.
    [Fact]
    public void An_uncertain_stall_speed_counts()
        => Assert.True(Find(new(false, CheckCase.Known(InventedCar.Of(60, 2, "stall")))).Value!.StandardUncertainty > 2);

    [Fact]
    public void Without_its_stall_speed_the_cruise_is_open()
    {
        var finding = Find(new(false));

        Assert.Equal(Verdict.Open, finding.Verdict);
        Assert.Equal("read the stall speed from the converter's data sheet", Assert.Single(finding.Cures));
    }

    [Fact]
    public void A_clutch_a_lock_up_or_no_goal_are_no_matter()
    {
        Assert.Empty(new ConverterCheck().Look(InventedCar.Plain, CheckCase.Cruise("108 km/h", "3690")));
        Assert.Empty(new ConverterCheck().Look(With(new(true)), CheckCase.Cruise("108 km/h", "3690")));
        Assert.Empty(new ConverterCheck().Look(With(new(false)), CheckCase.NoGoals));
    }

    private static Driveline With(Converter converter) => InventedCar.Plain with { Transmission = InventedCar.Plain.Transmission! with { Converter = converter } };

    private static Finding Find(Converter converter) => Assert.Single(new ConverterCheck().Look(With(converter), CheckCase.Cruise("108 km/h", "3690")));
}
