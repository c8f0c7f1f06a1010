using System.Globalization;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Benchmarks.Coverage;

/// <summary>A shop of which we know the truth: an axle drawn from the stated prior, a tyre, and what somebody would have read and typed of them, with the stated errors.</summary>
internal sealed class ShopAtRandom
{
    private static readonly double[] ReadTo = [0.5, 0.25, 0.25, 0.25, 0.125, 0.1];

    private readonly Random random;

    public ShopAtRandom(Random random)
    {
        this.random = random;
        (TrueRatio, IsListed) = DrawnAxle();
        Count = Counted();
        TrueCircumference = Between(1.7, 2.6);
        Roll = Rolled();
        Gear = Between(0.7, 1);
        RoadSpeed = Between(80, 130) / 3.6;
        TrueCruise = RoadSpeed * Gear * TrueRatio / TrueCircumference;
        Wanted = Goal();
    }

    public double TrueRatio { get; }

    /// <summary>It is one of the candidates; false where the prior's last tenth drew it.</summary>
    public bool IsListed { get; }

    public TurnCount Count { get; }

    public double TrueCircumference { get; }

    public RollOut Roll { get; }

    public double Gear { get; }

    public double RoadSpeed { get; }

    /// <summary>Engine turns a second at the road speed.</summary>
    public double TrueCruise { get; }

    public Window Wanted { get; }

    /// <summary>What the program makes of what was read.</summary>
    public Measured Cruise => new SpeedRelation { RoadSpeed = RoadSpeed, Gear = Gear, Axle = Count.Ratio, Circumference = Roll.RollingCircumference }.Solved().EngineSpeed!;

    /// <summary>The road speed at the engine speed that truly belongs to it.</summary>
    public Measured Speed => new SpeedRelation { EngineSpeed = TrueCruise, Gear = Gear, Axle = Count.Ratio, Circumference = Roll.RollingCircumference }.Solved().RoadSpeed!;

    // The prior as RatioCandidates states it: 0.70 the listed ones, 0.20 the other tooth pairs by their weight, 0.10 anything, even in ln i over 2 to 9.
    private (double Ratio, bool IsListed) DrawnAxle()
    {
        var share = random.NextDouble();
        if (share < 0.70) return (ListedRatios.Common[random.Next(ListedRatios.Common.Count)].Ratio, true);
        if (share >= 0.90) return (2 * Math.Pow(4.5, random.NextDouble()), false);

        var listed = ListedRatios.Common.Select(teeth => teeth.Ratio).ToHashSet();
        while (true)
        {
            var pair = ToothPairs.All[random.Next(ToothPairs.All.Count)];
            if (!listed.Contains(pair.Ratio) && random.NextDouble() < ToothPairs.Weight(pair)) return (pair.Ratio, true);
        }
    }

    // The wheel stops within ± 0.02 turn of its mark, the propshaft is read to the nearest fraction.
    private TurnCount Counted()
    {
        var wheels = random.Next(2) == 0 ? Wheels.OneHeld : Wheels.Together;
        var (turns, readTo, repeats) = (random.Next(5, 31), ReadTo[random.Next(ReadTo.Length)], random.Next(1, 6));
        var how = new CountPrecision(readTo);
        var readings = Enumerable.Range(0, repeats).Select(_ =>
        {
            var turned = turns + Within(how.Align);
            var propshaft = TrueRatio * turned * (wheels == Wheels.OneHeld ? 0.5 : 1);
            var text = string.Create(CultureInfo.InvariantCulture, $"{turns}:{Math.Round(propshaft / readTo) * readTo}");
            return TurnReading.Read(text, wheels).OrRefuse();
        });
        return TurnCount.Of([.. readings], how);
    }

    // The mark within ± 0.01 turn, the tape within ± 2 mm; a loose wheel rolls further than a loaded one, by a factor of which 0.971 ± 0.010 is known.
    private RollOut Rolled()
    {
        var isLoaded = random.Next(2) == 0;
        var how = new RollOutPrecision(isLoaded);
        var rolls = TrueCircumference / (isLoaded ? 1 : 0.971 + (0.010 * Normal()));
        var (turns, repeats) = (random.Next(1, 6), random.Next(1, 4));
        var readings = Enumerable.Range(0, repeats).Select(_ =>
        {
            var millimetres = 1000 * ((rolls * (turns + Within(how.Align))) + Within(how.Tape));
            return RollReading.Read(string.Create(CultureInfo.InvariantCulture, $"{turns}:{millimetres:0.0}mm")).OrRefuse();
        });
        return RollOut.Of([.. readings], how);
    }

    // Give or take a twentieth; the truth lies anywhere within a tenth of what is wanted.
    private Window Goal()
    {
        var centre = TrueCruise / (1 + Within(0.1));
        return new(0.95 * centre, 1.05 * centre);
    }

    private double Between(double low, double high) => low + ((high - low) * random.NextDouble());

    private double Within(double halfWidth) => ((2 * random.NextDouble()) - 1) * halfWidth;

    private double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
