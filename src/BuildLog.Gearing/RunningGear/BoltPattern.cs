using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RunningGear;

/// <summary>A pattern that wheels are sold by.</summary>
/// <param name="Studs">How many.</param>
/// <param name="PitchCircle">Metres.</param>
/// <param name="Name">As it is written.</param>
/// <exception cref="RefusedException">A circle that is not above zero.</exception>
public sealed record BoltPattern(int Studs, double PitchCircle, string Name)
{
    /// <summary>Metres; above zero.</summary>
    public double PitchCircle { get; init => field = value.AboveZero(Spoken("A bolt circle, m,"), "0.1143"); } = PitchCircle.AboveZero(Spoken("A bolt circle, m,"), "0.1143");
}

/// <summary>The patterns in use, and which of them a measured circle can be.</summary>
/// <remarks>
/// Pairs such as 100 and 101.6, 112 and 114.3, 120 and 120.65 mm are never taken for one another: where a measurement cannot tell them apart, both
/// are named. Source: the list from memory; an inch is 25.4 mm.
/// </remarks>
public static class BoltPatterns
{
    /// <summary>The patterns of road wheels with 4 to 8 studs; from memory.</summary>
    public static readonly IReadOnlyList<BoltPattern> Common =
    [
        Metric(4, 98), Metric(4, 100), Inches(4, 4), Metric(4, 108), Inches(4, 4.5),
        Metric(5, 98), Metric(5, 100), Metric(5, 108), Metric(5, 110), Metric(5, 112), Inches(5, 4.5), Metric(5, 115), Metric(5, 118), Metric(5, 120), Inches(5, 4.75),
        Inches(5, 5), Metric(5, 130), Metric(5, 135), Inches(5, 5.5), Metric(5, 150), Inches(5, 6.5),
        Inches(6, 4.5), Metric(6, 120), Inches(6, 5), Metric(6, 130), Metric(6, 135), Inches(6, 5.5), Metric(6, 170),
        Inches(8, 6.5), Metric(8, 170), Metric(8, 180),
    ];

    /// <summary>The patterns inside the 95 % interval, the nearest first; empty where none is.</summary>
    /// <remarks>An exact circle is held to a twentieth of a millimetre, the last figure such numbers are written with.</remarks>
    public static IReadOnlyList<BoltPattern> Matching(int studs, Measured pitchCircle)
    {
        var room = Math.Max(pitchCircle.Expanded95, 0.05e-3 + 1e-9);
        return
        [
            .. Common
                .Where(pattern => pattern.Studs == studs && Math.Abs(pattern.PitchCircle - pitchCircle.Value) <= room)
                .OrderBy(pattern => Math.Abs(pattern.PitchCircle - pitchCircle.Value)),
        ];
    }

    private static BoltPattern Metric(int studs, double millimetres) => new(studs, millimetres / 1000, FormattableString.Invariant($"{studs}×{millimetres:0.##} mm"));

    private static BoltPattern Inches(int studs, double inches)
        => new(studs, inches * 0.0254, FormattableString.Invariant($"{studs}×{inches * 25.4:0.##} mm ({inches:0.##} in)"));
}
