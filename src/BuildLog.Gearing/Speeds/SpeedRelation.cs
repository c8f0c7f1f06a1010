using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Speeds;

/// <summary>The one of five that is left out and wanted.</summary>
public enum Unknown
{
    /// <summary>v, m/s.</summary>
    RoadSpeed,
    /// <summary>n, rev/s.</summary>
    EngineSpeed,
    /// <summary>i_gear.</summary>
    Gear,
    /// <summary>i_axle.</summary>
    Axle,
    /// <summary>C, metres.</summary>
    Circumference,
}

/// <summary>Road speed, engine speed, ratios and tyre of one driveline; four of the five are given, the fifth follows.</summary>
/// <remarks>
/// <code>v = n (1 − s) C / (i_gear · i_overdrive · i_transfer · i_axle · i_hub)</code>
/// <para>v road speed, m/s; n engine speed, rev/s; s converter slip (0 locked or manual); C rolling circumference, m; i ratios, turns in per turn out.</para>
/// <para>Uncertainty: through <see cref="Measured"/>; inputs that two figures share cancel in what is computed from both.</para>
/// <para>Not for: a slipping clutch, tyre growth at speed, cornering. Tyre slip under drive is part of C's uncertainty.</para>
/// <para>Source: kinematics; in handbook form v[km/h] = 0.06 · C[m] · n[rev/min] / i (a vehicle maker's calculation guide, formula 1).</para>
/// </remarks>
public sealed record SpeedRelation
{
    /// <summary>Metres per second.</summary>
    public Measured? RoadSpeed { get; init; }

    /// <summary>Revolutions per second.</summary>
    public Measured? EngineSpeed { get; init; }

    /// <summary>Gearbox ratio, input turns per output turn.</summary>
    public Measured? Gear { get; init; }

    /// <summary>Propshaft turns per turn of the half-shafts.</summary>
    public Measured? Axle { get; init; }

    /// <summary>Rolling circumference, metres.</summary>
    public Measured? Circumference { get; init; }

    /// <summary>Ratio of a separate overdrive unit; one where there is none or it is out.</summary>
    public Measured Overdrive { get; init; } = 1;

    /// <summary>Transfer case ratio; one where there is none.</summary>
    public Measured Transfer { get; init; } = 1;

    /// <summary>Hub reduction; one where there is none.</summary>
    public Measured Hub { get; init; } = 1;

    /// <summary>Converter slip as a share of engine speed, below one.</summary>
    public Measured Slip { get; init; } = 0;

    /// <summary>Which are missing, in the order people name them.</summary>
    public IReadOnlyList<Unknown> Missing =>
    [
        .. new (Measured? Value, Unknown What)[]
        {
            (RoadSpeed, Unknown.RoadSpeed), (EngineSpeed, Unknown.EngineSpeed), (Gear, Unknown.Gear), (Axle, Unknown.Axle), (Circumference, Unknown.Circumference),
        }.Where(entry => entry.Value is null).Select(entry => entry.What),
    ];

    /// <summary>Engine turns per wheel turn with the converter locked; there is no slip in it.</summary>
    /// <exception cref="InvalidOperationException">A ratio is missing.</exception>
    public Measured OverallRatio => Given(Gear) * Overdrive * Transfer * Given(Axle) * Hub;

    /// <summary>Wheel turns per second.</summary>
    public Measured WheelSpeed => Given(EngineSpeed) * (1 - Slip) / OverallRatio;

    /// <summary>The same relation with the one missing member filled in.</summary>
    /// <exception cref="InvalidOperationException">Not exactly one is missing.</exception>
    /// <exception cref="RefusedException">A ratio or circumference that is not above zero, or a slip that is not below one; a standing car.</exception>
    public SpeedRelation Solved()
    {
        if (Missing is not [var unknown]) throw new InvalidOperationException("Exactly one of the five must be missing.");
        if (Slip.Value is not (>= 0 and < 1)) throw new RefusedException("slip", Spoken("A converter slips by nothing to less than 100 %."), "3 %");
        foreach (var factor in (Measured?[])[Gear, Axle, Circumference, Overdrive, Transfer, Hub])
        {
            if (factor is { Value: <= 0 }) throw new RefusedException("out-of-range", Spoken("Ratios and circumference are more than zero."), "4.10");
        }

        if (unknown is Unknown.Gear or Unknown.Axle && RoadSpeed!.Value <= 0 || unknown == Unknown.Circumference && EngineSpeed!.Value <= 0)
            throw new RefusedException("standing", Spoken("A vehicle that stands tells no ratio and no circumference."), "110 km/h");
        return Solved(unknown);
    }

    private SpeedRelation Solved(Unknown unknown) => unknown switch
    {
        Unknown.RoadSpeed => this with { RoadSpeed = Turning * Given(Circumference) / OverallRatio },
        Unknown.EngineSpeed => this with { EngineSpeed = Given(RoadSpeed) * OverallRatio / (Given(Circumference) * (1 - Slip)) },
        Unknown.Gear => this with { Gear = Turning * Given(Circumference) / (Given(RoadSpeed) * Overdrive * Transfer * Given(Axle) * Hub) },
        Unknown.Axle => this with { Axle = Turning * Given(Circumference) / (Given(RoadSpeed) * Given(Gear) * Overdrive * Transfer * Hub) },
        _ => this with { Circumference = Given(RoadSpeed) * OverallRatio / Turning },
    };

    /// <summary>Turns per second that go into the gearbox.</summary>
    private Measured Turning => Given(EngineSpeed) * (1 - Slip);

    private static Measured Given(Measured? value) => value ?? throw new InvalidOperationException("A member that is needed is missing.");
}
