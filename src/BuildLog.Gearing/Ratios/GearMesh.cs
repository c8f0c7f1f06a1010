using System.Globalization;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>Two gears in mesh on parallel shafts, teeth counted.</summary>
/// <remarks>
/// <code>i = driven / driver</code>
/// <para>Exact: no uncertainty. It turns the sense of rotation round; an idler between them turns it back and is not in the ratio.</para>
/// <para>Not for: ring gear and pinion of an axle, which are <see cref="Teeth"/>; an idler of two unlike gears, which is two meshes. Source: definition.</para>
/// </remarks>
public readonly record struct GearMesh
{
    internal const int Fewest = 4;
    internal const int Most = 200;
    private const string Right = "29/19";

    /// <exception cref="RefusedException">A tooth count that no gear has.</exception>
    public GearMesh(int driven, int driver)
    {
        if (driven is < Fewest or > Most || driver is < Fewest or > Most)
            throw new RefusedException("teeth", Spoken($"A gear has {Fewest} to {Most} teeth, not {driven}/{driver} (driven/driver)."), Right);
        (Driven, Driver) = (driven, driver);
    }

    /// <summary>Teeth of the driven gear.</summary>
    public int Driven { get; }

    /// <summary>Teeth of the driving gear.</summary>
    public int Driver { get; }

    /// <summary>Driver turns per turn of the driven gear.</summary>
    public double Ratio => (double)Driven / Driver;

    /// <summary>Reads <c>29/19</c>, the driven gear first.</summary>
    public static Parsed<GearMesh> Read(string text)
    {
        var parts = text.Split('/', ':');
        if (parts.Length != 2
            || !int.TryParse(parts[0].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var driven)
            || !int.TryParse(parts[1].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var driver))
            return new Refusal("teeth", Spoken($"{Shown.Quoted(text)} is not a pair of tooth counts: write driven/driver as whole numbers."), Right);

        return Parsed.From(() => new GearMesh(driven, driver)).In(text);
    }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Driven}/{Driver}");
}
