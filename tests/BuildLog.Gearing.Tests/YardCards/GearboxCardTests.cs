using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.YardCards;
using Xunit;

namespace BuildLog.Gearing.Tests.YardCards;

public sealed class GearboxCardTests
{
    private static readonly WindowOfPart Top = new(Position.Transmission, "ratio of top (5)", Units.One, new(0.78, 0.86), new(0.79, 0.85), null);

    // A second route: the gear's count itself, as it would be typed, and the other parts' share of 0.01/0.79 and 0.01/0.85 added by squares.
    [Theory]
    [InlineData(GearboxCard.OutputTurns)]
    [InlineData(GearboxCard.MoreOutputTurns)]
    public void A_count_that_just_means_yes_is_a_gear_that_just_will_do(int turns)
    {
        var yes = GearboxCard.Edges(Top, turns).Yes!.Value;

        Assert.Equal(0.78, Low(Counted(yes.Low), 0.01 / 0.79), 1e-9);
        Assert.Equal(0.86, (2 * Counted(yes.High).Value) - Low(Counted(yes.High), 0.01 / 0.85), 1e-9);

        double Low(Gearing.Measurements.Measured counted, double others) => counted.Value - Math.Sqrt(Math.Pow(counted.Expanded95, 2) + Math.Pow(others * counted.Value, 2));
        Gearing.Measurements.Measured Counted(double input)
            => TurnCount.OfGear([TurnReading.ReadGear(FormattableString.Invariant($"{turns}:{input:R}")).OrRefuse()], new CountPrecision()).Ratio;
    }

    [Fact]
    public void What_is_looked_for_is_named()
    {
        var impossible = Top with { Window = new(0.9, 0.8), Lowest = new("cruise", "Cruise engine speed", "2500 rev/min or more", 0.9), Highest = new("top-speed", "Top speed", "160 km/h or more", 0.8) };

        Assert.StartsWith("No overdrive can do: ", Assert.Throws<RefusedException>(() => GearboxCard.Of([impossible], "overdrive")).Message, StringComparison.Ordinal);
        Assert.Equal([Top, Top], GearboxCard.Of([Top, Top]).Gears);
    }

    [Fact]
    public void One_gear_that_cannot_be_makes_no_card()
    {
        var impossible = Top with { Quantity = "ratio of 1", Window = new(4, 3), Lowest = new("overall-low", "Overall low", "30 or more", 4), Highest = new("cruise", "Cruise engine speed", "2500 rev/min or less", 3) };

        var refused = Assert.Throws<RefusedException>(() => GearboxCard.Of([Top, impossible]));
        Assert.StartsWith("No gearbox can do: overall low (30 or more) wants ratio of 1 4.00 or more", refused.Message, StringComparison.Ordinal);
    }
}
