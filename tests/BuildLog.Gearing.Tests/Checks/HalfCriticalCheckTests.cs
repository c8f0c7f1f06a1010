using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <remarks>Half of 5393.67 rev/min ± 8 % is 2481.1 to 2912.6; the shaft turns v · 4.10 / 2.00 m: 72.6 to 85.3 km/h.</remarks>
public sealed class HalfCriticalCheckTests
{
    [Theory]
    [InlineData("72 km/h", Verdict.Fits)]
    [InlineData("73 km/h", Verdict.Watch)]
    [InlineData("85 km/h", Verdict.Watch)]
    [InlineData("86 km/h", Verdict.Fits)]
    public void Inside_the_band_it_hums(string speed, Verdict verdict) => Assert.Equal(verdict, Find(speed).Verdict);

    // Axles: 4.10 · 2481.1 / n and 4.10 · 2912.6 / n at 80 km/h (n = 2733.3): 3.7217 and 4.3689.
    [Fact]
    public void The_speeds_and_the_axles_that_would_do_are_named()
        => Assert.Equal(["cruise at 72 km/h or less, or at 86 km/h or more", "axle ratio 3.72 or less, or 4.37 or more"], Find("80 km/h").Cures);

    // Either side of the band does, so a search for an axle that meets every goal is not held to one of them.
    [Fact]
    public void It_narrows_no_window() => Assert.Empty(Find("80 km/h").Windows);

    // 0.75 of 5393.67 rev/min is 4045.3, reached at 118.4 km/h.
    [Fact]
    public void Where_it_whips_the_check_of_its_speed_speaks()
    {
        Assert.Equal(Verdict.Fits, Find("118 km/h").Verdict);
        Assert.Empty(new HalfCriticalCheck().Look(InventedShaft.Car(5000), new([InventedCar.Goal("119 km/h", "2700")])));
    }

    [Fact]
    public void It_warns_and_never_clashes() => Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (Find("79 km/h").Verdict, Find("79 km/h").Because));

    [Fact]
    public void Without_a_cruise_goal_or_a_tube_there_is_nothing_to_say()
    {
        Assert.Empty(new HalfCriticalCheck().Look(InventedShaft.Car(5000), OwnersGoals.None));
        Assert.Empty(new HalfCriticalCheck().Look(InventedShaft.Car(5000, new("shaft", new ShaftPiece())), new([InventedCar.Goal("80 km/h", "2700")])));
    }

    private static Finding Find(string speed) => Assert.Single(new HalfCriticalCheck().Look(InventedShaft.Car(5000), new([InventedCar.Goal(speed, "2700")])));
}
