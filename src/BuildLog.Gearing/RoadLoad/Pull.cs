using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>What a driveline can do against what its vehicle needs, gear by gear, at full throttle.</summary>
/// <remarks>
/// <code>n = v i/(C (1 − s));   F = T(n) · a · i · η · 2π/C;   reserve = F − resistance</code>
/// <para>
/// i gear · transfer case · axle; C rolling circumference, m; s converter slip; T torque, N·m; a what altitude leaves of it; η efficiency.
/// v m/s, n rev/s, F newtons.
/// </para>
/// <para>Steady: nothing is taken for turning masses. At a cruise a converter passes its torque on unchanged and loses speed alone.</para>
/// <para>Source: definition; parts see <see cref="TorqueCurve"/>, <see cref="AltitudeLoss"/>, <see cref="DrivelineEfficiency"/>, <see cref="DrivingResistance"/>.</para>
/// </remarks>
public sealed class Pull
{
    private const double LastBits = 1e-9;

    private readonly Measured axle;
    private readonly Measured circumference;
    private readonly Measured keptSpeed;
    private readonly double altitudeFactor;

    private Pull(Driveline driveline, TorqueCurve torque, Measured axle, Measured circumference, DrivingResistance resistance)
    {
        (Driveline, Torque, Resistance, this.axle, this.circumference) = (driveline, torque, resistance, axle, circumference);
        keptSpeed = 1 - (driveline.Transmission?.Converter?.CruiseSlip ?? 0);
        altitudeFactor = AltitudeLoss.Factor(driveline.Engine!.Induction, driveline.Load!.Air, driveline.Engine.CriticalAltitude?.Value.Value);
        EndsAtRedline = driveline.Engine.Redline is { } known && known.Value.Value <= torque.To;
        HighestEngineSpeed = EndsAtRedline ? driveline.Engine.Redline!.Value : torque.To;
    }

    /// <summary>The driveline it is of.</summary>
    public Driveline Driveline { get; }

    /// <summary>The engine's full-load torque.</summary>
    public TorqueCurve Torque { get; }

    /// <summary>What the road takes.</summary>
    public DrivingResistance Resistance { get; }

    /// <summary>What the driver can select, from the lowest gear up.</summary>
    public IReadOnlyList<DriveStep> Steps => Driveline.Steps;

    /// <summary>The redline, or the end of the torque curve where that comes first, rev/s.</summary>
    public Measured HighestEngineSpeed { get; }

    /// <summary>False where the torque curve ends first: what the engine makes beyond is not known.</summary>
    public bool EndsAtRedline { get; }

    /// <summary>Null where one of the numbers it needs is not known, or the engine may not turn as fast as its torque curve begins.</summary>
    public static Pull? Of(Driveline driveline)
        => driveline is { Engine: { Torque: { } torque, BeginsAboveRedline: false }, Steps.Count: > 0, DrivingAxle.Ratio: { } axle, DrivingTyres.RollingCircumference: { } circumference }
            && DrivingResistance.Of(driveline.Load) is { } resistance
            ? new(driveline, torque, axle.Value, circumference.Value, resistance)
            : null;

    /// <summary>Engine speed, rev/s.</summary>
    public Measured EngineSpeed(DriveStep step, Measured roadSpeed) => roadSpeed * step.Ratio * axle / (circumference * keptSpeed);

    /// <summary>Road speed, m/s.</summary>
    public Measured RoadSpeed(DriveStep step, Measured engineSpeed) => engineSpeed * circumference * keptSpeed / (step.Ratio * axle);

    /// <summary>Newtons at the wheels; null where the torque curve does not reach.</summary>
    public Measured? Force(DriveStep step, Measured roadSpeed)
        => Torque.At(EngineSpeed(step, roadSpeed)) is { } torque ? torque * ForcePerTorque(step) : null;

    /// <summary>Watts at the wheels; null where the torque curve does not reach.</summary>
    public Measured? PowerAtWheels(DriveStep step, Measured roadSpeed) => Force(step, roadSpeed) is { } force ? force * roadSpeed : null;

    /// <summary>The watts that arrive at the wheels through this gear's losses, of so many by the engine's data sheet.</summary>
    public Measured AtWheels(DriveStep step, Measured power) => power * DrivelineEfficiency.Of(Driveline, step) * keptSpeed * altitudeFactor;

    /// <summary>Newtons that are left for acceleration up a gradient; null where the torque curve does not reach.</summary>
    public Measured? Reserve(DriveStep step, Measured roadSpeed, double gradient = 0)
        => Force(step, roadSpeed) is { } force ? force - Resistance.At(roadSpeed, gradient) : null;

    /// <summary>The reserve on the level over road speed in plain numbers, for searches; only within the torque curve, or rounding beside it.</summary>
    internal Func<double, double> NominalReserve(DriveStep step)
    {
        var (turns, force, road) = (EngineSpeed(step, 1).Value, ForcePerTorque(step).Value, Resistance.Curve);
        return v => (Torque.TorqueAt(v * turns) * force) - road.Force(v);
    }

    /// <summary>The reserve at one road speed over how much shorter the gear is made, in plain numbers; less than all where the engine does not turn so, with a share of its highest speed kept free.</summary>
    internal Func<double, double, double> NominalReserveGeared(DriveStep step, double roadSpeed)
    {
        var (turns, force, road) = (EngineSpeed(step, roadSpeed).Value, ForcePerTorque(step).Value, Resistance.Curve.Force(roadSpeed));
        return (factor, free) => turns * factor is var n && n >= Torque.From && n * (1 + free) <= HighestEngineSpeed.Value * (1 + LastBits)
            ? (Torque.TorqueAt(Math.Min(n, Torque.To)) * force * factor) - road
            : double.NegativeInfinity;
    }

    /// <summary>The steepest gradient it holds, rise over run; null where the torque curve does not reach or no road is that steep.</summary>
    public Measured? Hill(DriveStep step, Measured roadSpeed)
        => Force(step, roadSpeed) is { } force
            ? Hills.Held((force - Resistance.Drag(roadSpeed)) / Resistance.Weight, Resistance.RollingResistance)
            : null;

    /// <summary>The torque the engine has to give, on its data sheet's terms, to hold a speed up a gradient, N·m.</summary>
    public Measured TorqueNeeded(DriveStep step, Measured roadSpeed, double gradient = 0)
        => Resistance.At(roadSpeed, gradient) / ForcePerTorque(step);

    /// <summary>Watts at the flywheel, on the data sheet's terms, to hold a speed up a gradient.</summary>
    public Measured PowerNeeded(DriveStep step, Measured roadSpeed, double gradient = 0)
        => TorqueNeeded(step, roadSpeed, gradient) * EngineSpeed(step, roadSpeed) * (2 * Math.PI);

    /// <summary>What goes into the gearbox as it pulls away, N·m at sea level; see <see cref="HillStart"/>.</summary>
    public Measured PullAwayTorque
    {
        get
        {
            var converter = Driveline.Transmission?.Converter;
            var speed = (converter is null ? Driveline.Engine!.LowestPull : converter.StallSpeed)?.Value;
            var torque = (speed is null ? null : Torque.At(speed)) ?? Torque.At(Torque.From)!;
            return torque * (converter?.TorqueRatio ?? 1);
        }
    }

    /// <summary>Newtons at the wheels as it pulls away in a gear; see <see cref="HillStart"/>.</summary>
    public Measured PullAwayForce(DriveStep step) => PullAwayTorque * ForcePerTorque(step);

    private Measured ForcePerTorque(DriveStep step)
        => step.Ratio * axle * DrivelineEfficiency.Of(Driveline, step) * (2 * Math.PI * altitudeFactor) / circumference;
}
