using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>By how much a shaft changes its length while the axle moves.</summary>
/// <param name="Out">Metres it grows at full droop.</param>
/// <param name="In">Metres it shrinks on the way to full bump.</param>
/// <remarks>
/// <code>L(y) = √((L cos γ)² + (L sin γ + y)²);   out = L(droop) − L;   in = L − min L(y), −bump ≤ y ≤ droop</code>
/// <para>L between joint centres at ride height, m; γ inclination of the shaft, front end high; y drop of the pinion, m.</para>
/// <para>
/// Where the shaft passes through the level on its way it is shortest there, not at full bump. Uncertainty: through <see cref="Measured"/>.
/// Not for: the axle's own arc (leaf springs, arms), which adds to it; measure that at both stops. Source: geometry.
/// </para>
/// </remarks>
public sealed record SlipTravel(Measured Out, Measured In)
{
    /// <summary>Spline that has to stay engaged at full droop, metres. From memory.</summary>
    public const double Engaged = 0.025;

    /// <summary>What has to be left before it bottoms, metres. Common practice, no source.</summary>
    public const double Clear = 0.01;

    /// <summary>Metres between the longest and the shortest.</summary>
    public Measured Total => Out + In;

    /// <summary>From the length at ride height, m, the shaft's inclination, rad, and how far the pinion drops and rises, m.</summary>
    public static SlipTravel Of(Measured length, Measured inclination, Measured droop, Measured bump)
    {
        var level = length * inclination.Map(Math.Cos, -Math.Sin(inclination.Value));
        var drop = length * inclination.Map(Math.Sin, Math.Cos(inclination.Value));

        // From the level on every way up or down makes it longer, so the extremes are at the stops or at the level.
        var atDroop = Long(level, drop + droop);
        var atBump = Long(level, drop - bump);
        var passesLevel = drop.Value - bump.Value < 0 && drop.Value + droop.Value > 0;
        var shortest = passesLevel ? level : atBump.Value < atDroop.Value ? atBump : atDroop;
        var longest = atBump.Value > atDroop.Value ? atBump : atDroop;
        return new(longest - length, length - shortest);
    }

    private static Measured Long(Measured level, Measured drop) => ((level * level) + (drop * drop)).SquareRoot();
}
