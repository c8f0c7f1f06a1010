using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class LabelCheckTests
{
    private static readonly OwnersGoals Goal = new([InventedCar.Goal("108 km/h", "3700")]);

    private static readonly TyreSize Size = TyreSizeText.Read("205/65R15").OrRefuse();

    private static readonly Driveline Labelled = InventedCar.Plain with { Tyres = new("tyres", new(Size.RollingCircumference, Source.Tag, "label 205/65R15"), Size) };

    // Everything else is exact, so the label is all of it.
    [Fact]
    public void A_label_that_dominates_a_goal_is_a_watch()
    {
        var finding = Find(Labelled, Goal);

        Assert.Equal((Verdict.Watch, Because.Uncertainty), (finding.Verdict, finding.Because));
        Assert.Equal("The circumference 1.98 ± 0.06 m is only from the label; it is 100 % of what is uncertain in the engine speed at 108 km/h.", finding.Says);
        Assert.StartsWith("roll the tyres out", finding.Cures[0], StringComparison.Ordinal);
        Assert.Equal("roll the tyres out with the vehicle standing on them", finding.SettledBy);
    }

    // The label is good to 1.4355 %: beside an axle known to 3 % it is 1.4355² / (1.4355² + 3²) = 18.6 %.
    [Fact]
    public void A_label_beside_something_worse_fits()
    {
        var finding = Find(Labelled with { RearAxle = InventedCar.Axle(InventedCar.Of(4.10, 0.123)) }, Goal);

        Assert.Equal((Verdict.Fits, Because.Inside), (finding.Verdict, finding.Because));
        Assert.Contains("no more than 19 %", finding.Says, StringComparison.Ordinal);
        Assert.Empty(finding.Cures);
    }

    // In third, known to 3 %, the label is drowned; in fourth, which is exact, it is all there is.
    [Fact]
    public void The_goal_that_hangs_on_it_most_decides()
    {
        var box = new Transmission("box", [InventedCar.Gear("1", 3.5), InventedCar.Gear("3", InventedCar.Of(1.4, 0.042)), InventedCar.Gear("4", 1)]);
        var goals = new OwnersGoals([InventedCar.Goal("60 km/h", "3700", "", "3"), InventedCar.Goal("108 km/h", "3700")]);

        Assert.Contains("at 108 km/h", Find(Labelled with { Transmission = box }, goals).Says, StringComparison.Ordinal);
    }

    [Fact]
    public void Rolled_tyres_fit()
        => Assert.Equal(Verdict.Fits, Find(InventedCar.Plain, OwnersGoals.None).Verdict);

    // A turn of five forgotten: 1.98 m · 5/4 = 2.48 m, which no 205/65R15 has, worn or new. 1.93 m is one with 7 mm worn off.
    [Theory]
    [InlineData(2.48, Verdict.Watch)]
    [InlineData(1.58, Verdict.Watch)]
    [InlineData(1.93, Verdict.Fits)]
    public void A_roll_out_that_no_such_tyre_has_is_counted_again(double metres, Verdict verdict)
    {
        var finding = Find(InventedCar.Plain with { Tyres = InventedCar.Rolling(metres) with { Size = Size } }, OwnersGoals.None);

        Assert.Equal(verdict, finding.Verdict);
        Assert.Equal(verdict == Verdict.Fits ? [] : ["count the turns of the roll-out again, and read the marking again"], finding.Cures);
    }

    [Fact]
    public void Where_no_goal_hangs_on_the_label_nothing_is_said()
    {
        Assert.Empty(Look(Labelled, OwnersGoals.None));
        Assert.Empty(Look(Labelled with { RearAxle = null }, Goal));
        Assert.Empty(Look(Labelled with { Tyres = null }, Goal));
    }

    [Fact]
    public void Tyres_of_unknown_circumference_are_open()
    {
        var finding = Find(InventedCar.Plain with { Tyres = new("tyres", null, null) }, Goal);

        Assert.Equal((Verdict.Open, Because.MissingInput), (finding.Verdict, finding.Because));
        Assert.Equal(["roll the tyres out, or enter their size"], finding.Cures);
    }

    private static IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals) => new LabelCheck().Look(driveline, goals);

    private static Finding Find(Driveline driveline, OwnersGoals goals) => Assert.Single(Look(driveline, goals));
}
