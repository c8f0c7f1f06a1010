using System.Globalization;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>A ring gear and its pinion, teeth counted.</summary>
/// <remarks>
/// <code>i = ring / pinion</code>
/// <para>Exact: no uncertainty. Makes the differential's ratio; a hub reduction comes on top. Source: definition of a gear ratio.</para>
/// </remarks>
public readonly record struct Teeth
{
    private const int Fewest = 4;
    private const int Most = 200;
    private const string Right = "41/10";

    /// <exception cref="RefusedException">A tooth count that no gear has, or a ratio that no axle has.</exception>
    public Teeth(int ring, int pinion)
    {
        if (ring is < Fewest or > Most || pinion is < Fewest or > Most)
            throw new RefusedException("teeth", Spoken($"A gear has {Fewest} to {Most} teeth, not {ring}/{pinion} (ring/pinion)."), Right);
        if (RatioRange.Axle.Accepts((double)ring / pinion)) (Ring, Pinion) = (ring, pinion);
        else throw new RefusedException(RatioRange.Axle.Refuse((double)ring / pinion) with { Example = Right });
    }

    /// <summary>Teeth of the ring gear.</summary>
    public int Ring { get; }

    /// <summary>Teeth of the pinion.</summary>
    public int Pinion { get; }

    /// <summary>Pinion turns per turn of the ring gear.</summary>
    public double Ratio => (double)Ring / Pinion;

    /// <summary>Hunting teeth: every tooth meets every other, as makers prefer.</summary>
    public bool IsCoprime => GreatestCommonDivisor(Ring, Pinion) == 1;

    /// <summary>The ratio, without uncertainty.</summary>
    public Measured ToMeasured() => Ratio;

    /// <summary>Reads <c>41/10</c>, ring first.</summary>
    public static Parsed<Teeth> Read(string text)
    {
        var parts = text.Split('/', ':');
        if (parts.Length != 2
            || !int.TryParse(parts[0].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var ring)
            || !int.TryParse(parts[1].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var pinion))
            return new Refusal("teeth", Spoken($"{Shown.Quoted(text)} is not a pair of tooth counts: write ring/pinion as whole numbers."), Right);

        return Parsed.From(() => new Teeth(ring, pinion)).In(text);
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Ring}/{Pinion}");

    private static int GreatestCommonDivisor(int a, int b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
