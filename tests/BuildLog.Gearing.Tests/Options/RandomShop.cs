using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tests.Drivelines;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>What stands in the plain car and so many other parts, of any number a shop may have.</summary>
internal static class RandomShop
{
    /// <summary>What some of its parts meet and some do not.</summary>
    public static readonly OwnersGoals Wishes = new([InventedCar.Goal("110 km/h", "2400 rpm")])
    {
        OverallLow = OverallLowGoal.Read("11").OrRefuse(),
        TyreDiameter = LengthLimit.ReadTyreDiameter("700 mm").OrRefuse(),
    };

    public static CandidateParts Of(int seed, int boxes, int overdrives, int axles, int tyres)
    {
        var random = new Random(seed);
        Measured About(double low, double high, double most) => random.Next(3) switch
        {
            0 => Math.Round(low + (random.NextDouble() * (high - low)), 2),
            1 => InventedCar.Of(low + (random.NextDouble() * (high - low)), random.NextDouble() * most),
            _ => Measured.From(low + (random.NextDouble() * (high - low)), new Input("count", random.NextDouble() * most, new Evidence("count"), random.Next(2, 9))),
        };
        Price? Price() => random.Next(2) == 0 ? null : new(random.Next(1, 500) * 100, "EUR");

        var here = CandidateParts.InPlace(InventedCar.Plain);
        return new(
            [.. here.Gearboxes, .. Enumerable.Range(1, boxes).Select(k => new Candidate<Transmission>($"box {k}", new($"box {k}", [InventedCar.Gear("1", About(2.5, 4, 0.01)), InventedCar.Gear("5", About(0.6, 1.2, 0.01))]) { Untold = k % 5 == 0 ? new(["2", "3", "4"], k % 10 == 0, k % 15 == 0) : null }, Pool.Offered) { Price = Price() })],
            [.. here.Overdrives, .. Enumerable.Range(1, overdrives).Select(k => new Candidate<Overdrive>($"overdrive {k}", new($"overdrive {k}", InventedCar.Exactly(About(0.68, 0.85, 0.005))), Pool.Offered) { Price = Price() })],
            [.. here.Axles, .. Enumerable.Range(1, axles).Select(k => new Candidate<Axle>($"axle {k}", InventedCar.Axle(About(2.3, 5, 0.05)), Pool.Owned) { Price = Price() })],
            [.. here.Tyres, .. Enumerable.Range(1, tyres).Select(k => new Candidate<TyreSet>($"tyres {k}", InventedCar.Rolling(About(1.7, 2.4, 0.03)), Pool.Listed) { Price = Price() })]);
    }
}
