using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>The lowest ratio there is: first gear, the transfer case in low, the axle, in low too where it has two speeds.</summary>
/// <remarks>
/// <code>i = i_first · i_transfer low · i_axle · step;   crawl speed = n_idle C/i</code>
/// <para>Without a transfer case its factor is one, and so is the step of an axle with one ratio; see <see cref="Ratios.TwoSpeedAxle"/>. An overdrive unit is not engaged. Source: definition.</para>
/// </remarks>
public static class LowRange
{
    /// <summary>First gear, or reverse; null where it is not known.</summary>
    public static Gear? LowestGear(Driveline driveline, Way way)
        => way == Way.Forwards ? driveline.Transmission?.First
            : driveline.Transmission?.Reverse is { } reverse ? new("R", reverse)
            : null;

    /// <summary>The lowest gear in the lowest range; null where a ratio is not known.</summary>
    public static DriveStep? LowestStep(Driveline driveline, Way way = Way.Forwards)
        => LowestGear(driveline, way) is not { } gear ? null
            : driveline.TransferCase is null ? new(gear.Name, gear.Ratio.Value, 1)
            : driveline.TransferCase.Low is { } low ? new($"{gear.Name} low", gear.Ratio.Value, low.Value)
            : null;

    /// <summary>Engine turns per wheel turn; null where a ratio is not known.</summary>
    public static Measured? OverallRatio(Driveline driveline)
        => LowestStep(driveline) is { } step && driveline.DrivingAxle?.Ratio is { } axle ? step.Ratio * axle.Value * AxleStep(driveline.DrivingAxle) : null;

    /// <summary>What the low of a two-speed axle adds; one where it has one ratio.</summary>
    public static Measured AxleStep(Axle? axle) => axle?.LowStep?.Value ?? 1;

    /// <summary>Road speed at idle, m/s; null where a number is not known.</summary>
    public static Measured? CrawlSpeed(Driveline driveline)
        => OverallRatio(driveline) is { } overall && driveline is { Engine.Idle: { } idle, DrivingTyres.RollingCircumference: { } circumference }
            ? idle.Value * circumference.Value / overall
            : null;
}
