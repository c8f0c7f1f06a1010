using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Speedometers;

/// <summary>A driven gear with whole teeth and how the speedometer reads with it.</summary>
/// <remarks>
/// <code>teeth = drive · i · correction / (C · W),   q = teeth / whole teeth</code>
/// <para>i shaft turns per wheel turn; C rolling circumference, m; W cable turns wanted a metre. Fewer teeth turn the cable faster and read higher.</para>
/// <para>
/// A maker's service data round down under 0.6 and up from there, which tends to read high, the lawful side. Here each whole number beside the
/// exact one is named with its own error. Source: a maker's service data of 1998.
/// </para>
/// </remarks>
public sealed record DrivenGear(int Teeth, Reading Reading)
{
    /// <summary>Gearboxes are served with driven gears of 14 to 46 teeth; common practice, no source.</summary>
    public bool IsMade => Teeth is >= 14 and <= 46;

    /// <summary>z, the teeth of a driven gear that would read exactly right, whole or not.</summary>
    /// <param name="drive">With the teeth of its drive gear and any correction.</param>
    /// <param name="axle">i_axle, above zero.</param>
    /// <param name="transfer">i_transfer in high; one where there is none.</param>
    /// <param name="circumference">C, m a turn.</param>
    /// <param name="wanted">W, cable turns a metre.</param>
    /// <exception cref="ArgumentException">A drive without gears: it has no driven gear.</exception>
    public static Measured Exactly(SpeedometerDrive drive, Measured axle, Measured transfer, Measured circumference, Measured wanted)
        => drive.DriveTeeth is { } teeth
            ? teeth * drive.Correction * CableTurns.ShaftTurns(drive.Pickup, axle, transfer) / (circumference * wanted)
            : throw new ArgumentException("Only a drive with gears has a driven gear.", nameof(drive));

    /// <summary>The same from the gear that is there and how it reads: <c>z = z_now · V₁ / V₂</c>.</summary>
    public static Measured Exactly(int teeth, Reading reading) => teeth * reading.Share;

    /// <summary>The whole numbers on both sides of the exact one, the smaller first; one alone where it is whole.</summary>
    public static IReadOnlyList<DrivenGear> Beside(Measured exactly)
    {
        var (below, above) = ((int)Math.Floor(exactly.Value + 1e-9), (int)Math.Ceiling(exactly.Value - 1e-9));
        return [.. new[] { below, above }.Distinct().Where(teeth => teeth >= 3).Select(teeth => new DrivenGear(teeth, new(exactly / teeth)))];
    }

    /// <summary>Those whose reading is inside a window, the most teeth and so the lowest reading first.</summary>
    public static IEnumerable<DrivenGear> Within(Measured exactly, Window share)
    {
        for (var teeth = (int)Math.Floor((exactly.Value / share.Low) + 1e-9); teeth >= 3 && exactly.Value / teeth <= share.High; teeth--)
            yield return new(teeth, new(exactly / teeth));
    }

    /// <summary>The maker's rule: down under 0.6, up from there.</summary>
    public static int ByMakersRule(double exactly) => (int)Math.Floor(exactly + 0.4 + 1e-9);
}
