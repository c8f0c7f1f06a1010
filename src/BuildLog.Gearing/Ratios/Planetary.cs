using System.Globalization;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>A simple planetary gear, teeth counted: sun, planets on a carrier, ring.</summary>
/// <remarks>
/// <code>S ω_sun + R ω_ring = (R + S) ω_carrier</code>
/// <para>R, S teeth of ring and sun; ω speeds. With one member held the other two are geared exactly: no uncertainty.</para>
/// <para>
/// The planets' teeth, (R − S) / 2 or one less in a corrected set, are not in it.
/// </para>
/// <para>Not for: stepped or double planets. Source: kinematics (Willis); worked: R 75, S 30 makes 3.50, 1.40 and 0.714.</para>
/// </remarks>
public sealed record Planetary
{
    private const int FewestOnAPlanet = 8;

    /// <exception cref="RefusedException">Teeth that no gear has, or a ring that leaves no room for planets.</exception>
    public Planetary(int ring, int sun)
    {
        if (ring is < GearMesh.Fewest or > GearMesh.Most || sun is < GearMesh.Fewest or > GearMesh.Most)
            throw new RefusedException("teeth", Spoken($"A gear has {GearMesh.Fewest} to {GearMesh.Most} teeth, not {ring}/{sun} (ring/sun)."), "62/36");
        if (ring - sun < 2 * FewestOnAPlanet)
            throw new RefusedException("teeth", Spoken($"Between a ring of {ring} and a sun of {sun} teeth no planet fits: the ring needs {2 * FewestOnAPlanet} teeth more than the sun."), "62/36");
        (Ring, Sun) = (ring, sun);
    }

    /// <summary>R, teeth of the ring.</summary>
    public int Ring { get; }

    /// <summary>S, teeth of the sun.</summary>
    public int Sun { get; }

    /// <summary>Sun drives carrier, ring held: 1 + R/S. Low range of a transfer case, a hub reduction.</summary>
    public double RingHeld => 1 + ((double)Ring / Sun);

    /// <summary>Ring drives carrier, sun held: 1 + S/R. Second gear of many automatics, low of a two-speed axle.</summary>
    public double SunHeld => 1 + ((double)Sun / Ring);

    /// <summary>Carrier drives ring, sun held: R / (R + S). An overdrive.</summary>
    public double Overdriving => 1 / SunHeld;

    /// <summary>Sun drives ring, carrier held: −R/S; the minus turns it backwards.</summary>
    public double CarrierHeld => -(double)Ring / Sun;

    /// <summary>Reads <c>62/36</c>, the ring first.</summary>
    public static Parsed<Planetary> Read(string text)
    {
        var parts = text.Split('/', ':');
        if (parts.Length != 2
            || !int.TryParse(parts[0].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var ring)
            || !int.TryParse(parts[1].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var sun))
            return new Refusal("teeth", Spoken($"{Shown.Quoted(text)} is no planetary set: write ring/sun as whole numbers."), "62/36");

        return Parsed.From(() => new Planetary(ring, sun)).In(text);
    }

    /// <inheritdoc/>
    public override string ToString() => Spoken($"ring {Ring}, sun {Sun}");
}
