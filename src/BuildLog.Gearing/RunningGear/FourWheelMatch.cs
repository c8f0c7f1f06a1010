using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RunningGear;

/// <summary>How the front axle is joined to the rear one.</summary>
public enum FrontDrive
{
    /// <summary>Always together, nothing between them.</summary>
    ThroughShaft,

    /// <summary>Engaged by hand when the ground is loose: part-time.</summary>
    Declutch,

    /// <summary>Always, with a differential between the axles.</summary>
    CentreDifferential,

    /// <summary>Always, through a clutch pack that must not slip all day.</summary>
    ClutchPack,
}

/// <summary>How far the rear wheels fall short of the front ones in a turn of the transfer case, as a share of the front ones' way.</summary>
/// <remarks>
/// <code>low speed:  (r_F · i_R − r_R · i_F) / (r_F · i_R)        high speed:  (M_R · i_R − M_F · i_F) / (M_R · i_R)</code>
/// <para>r loaded radius; M turns per distance; i axle ratios; F front, R rear. Positive: the front pulls, which is preferred.</para>
/// <para>Uncertainty: with four tyres of one set the tyre cancels, and only the ratios count; <see cref="Measured"/> keeps that.</para>
/// <para>A radial rolls 0.96 to 0.97 of its free circumference, not 2π times the height of its axle: the first is the source's rule and no measurement of the way.</para>
/// <para>Source: a transfer case maker's manual, page 37; the clutch pack's from trade press (1½ in in ten turns of a 30 in tyre), weak.</para>
/// </remarks>
public static class FourWheelMatch
{
    /// <summary>Share, from loaded radii, metres.</summary>
    public static Measured LowSpeed(Measured frontRadius, Measured rearRadius, Measured frontAxle, Measured rearAxle)
        => 1 - (rearRadius * frontAxle / (frontRadius * rearAxle));

    /// <summary>Share, from rolling circumferences, metres.</summary>
    public static Measured HighSpeed(Measured frontCircumference, Measured rearCircumference, Measured frontAxle, Measured rearAxle)
        => 1 - (rearCircumference * frontAxle / (frontCircumference * rearAxle));

    /// <summary>Shares permitted to either side, crawling and at speed: 0.010 and 0.015 always joined, 0.015 and 0.020 engaged by hand, 0.030 with a centre differential, 0.0016 through a clutch pack.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such drive.</exception>
    public static (double Low, double High) Limits(FrontDrive drive) => drive switch
    {
        FrontDrive.ThroughShaft => (0.010, 0.015),
        FrontDrive.Declutch => (0.015, 0.020),
        FrontDrive.CentreDifferential => (0.030, 0.030),
        FrontDrive.ClutchPack => (0.0016, 0.0016),
        _ => throw new ArgumentOutOfRangeException(nameof(drive), drive, "No such drive."),
    };

    /// <summary>Whether the limit was read in a maker's manual.</summary>
    public static bool LimitIsVerified(FrontDrive drive) => drive != FrontDrive.ClutchPack;
}
