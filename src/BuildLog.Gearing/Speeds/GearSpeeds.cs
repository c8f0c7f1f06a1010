using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Speeds;

/// <summary>How fast a driveline goes in each gear.</summary>
/// <remarks>Built on <see cref="SpeedRelation"/>; converter locked, transfer case in high.</remarks>
public sealed class GearSpeeds
{
    private readonly Measured axle;
    private readonly Measured circumference;

    private GearSpeeds(IReadOnlyList<DriveStep> steps, Measured axle, Measured circumference)
        => (Steps, this.axle, this.circumference) = (steps, axle, circumference);

    /// <summary>The gears, from the lowest to the top, overdrive included.</summary>
    public IReadOnlyList<DriveStep> Steps { get; }

    /// <summary>Of a driveline, through its driving axle and that axle's tyres; null where gears, axle ratio or circumference are not known.</summary>
    public static GearSpeeds? Of(Driveline driveline)
        => driveline is { Steps: { Count: > 0 } steps, DrivingAxle.Ratio: { } axle, DrivingTyres.RollingCircumference: { } circumference }
            ? new(steps, axle.Value, circumference.Value)
            : null;

    /// <summary>Road speed, m/s, at an engine speed in rev/s.</summary>
    public Measured RoadSpeed(DriveStep step, Measured engineSpeed) => (Relation(step) with { EngineSpeed = engineSpeed }).Solved().RoadSpeed!;

    /// <summary>Engine speed, rev/s, at a road speed in m/s.</summary>
    public Measured EngineSpeed(DriveStep step, Measured roadSpeed) => (Relation(step) with { RoadSpeed = roadSpeed }).Solved().EngineSpeed!;

    /// <summary>Road speed, m/s, per 1000 rev/min.</summary>
    public Measured PerThousand(DriveStep step) => RoadSpeed(step, 1000 / 60.0);

    /// <summary>Engine speed after each upshift made at an engine speed, road speed kept: n · i_next / i. Axle and tyre cancel.</summary>
    public IReadOnlyList<Upshift> Upshifts(Measured at)
        => [.. Steps.Zip(Steps.Skip(1), (from, to) => new Upshift(from, to, EngineSpeed(to, RoadSpeed(from, at))))];

    /// <summary>Road speed against engine speed as the driver goes up through the gears, shifting at one engine speed.</summary>
    /// <param name="start">Engine speed it pulls away from, rev/s.</param>
    /// <param name="shift">Engine speed of each upshift and the end of the top gear, rev/s.</param>
    public IReadOnlyList<SawTooth> Sawtooth(double start, double shift)
    {
        var teeth = new List<SawTooth>();
        foreach (var step in Steps)
        {
            var from = teeth.Count == 0 ? RoadSpeed(step, start).Value : teeth[^1].EndSpeed;
            teeth.Add(new(step.Name, from, EngineSpeed(step, from).Value, RoadSpeed(step, shift).Value, shift));
        }

        return teeth;
    }

    private SpeedRelation Relation(DriveStep step) => new() { Gear = step.Gear, Transfer = step.Transfer, Axle = axle, Circumference = circumference };
}

/// <summary>The engine speed, rev/s, right after an upshift.</summary>
public sealed record Upshift(DriveStep From, DriveStep To, Measured EngineSpeed);

/// <summary>One gear's line in the chart: speeds in m/s, engine speeds in rev/s.</summary>
public sealed record SawTooth(string Gear, double StartSpeed, double StartEngine, double EndSpeed, double EndEngine);
