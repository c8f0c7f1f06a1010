using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class EngineRangeCheckTests
{
    // 108 km/h in top: 3690 rev/min; 18 km/h: 615. The goal itself allows both.
    [Theory]
    [InlineData("108 km/h", Source.MakersData, Verdict.Clash, "its redline is 3000 rev/min.", "axle ratio 0.89 to 3.32")]
    [InlineData("108 km/h", Source.Assumed, Verdict.Watch, "its redline is 3000 rev/min.", "axle ratio 0.89 to 3.32")]
    [InlineData("18 km/h", Source.OwnersWord, Verdict.Clash, "its idle is 800 rev/min.", "axle ratio 5.34 to 19.99")]
    public void An_at_most_allows_nothing_that_the_engine_cannot_do(string speed, Source source, Verdict verdict, string says, string cure)
    {
        var finding = Assert.Single(Look(Car(source), speed));

        Assert.Equal(verdict, finding.Verdict);
        Assert.EndsWith(says, finding.Says, StringComparison.Ordinal);
        Assert.NotEmpty(cure);
        Assert.NotEmpty(finding.Cures);
    }

    [Fact]
    public void Within_its_range_or_while_that_is_not_known_nothing_is_said()
    {
        Assert.Empty(Look(Car(Source.MakersData), "72 km/h"));
        Assert.Empty(Look(InventedCar.Plain, "108 km/h"));
    }

    private static IEnumerable<Finding> Look(Driveline car, string speed)
        => new EngineRangeCheck().Look(car, OwnersGoals.None with { Cruise = [CruiseGoal.Read(speed, "4000", "at most").OrRefuse()] });

    private static Driveline Car(Source source)
        => InventedCar.Plain with { Engine = new("four", CheckCase.Known(800 / 60.0, source), CheckCase.Known(3000 / 60.0, source)) };
}
