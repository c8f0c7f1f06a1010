using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Components;

/// <summary>An engine.</summary>
public sealed class EngineComponent : Component
{
    public override Later Kind => new Later("engine");

    public override IReadOnlyList<Position> Positions => [Position.Engine];

    public Noted? Idle { get; set; }

    public Noted? Redline { get; set; }

    /// <summary>Full-load torque by points, such as <c>1500:180 Nm; 3000:210 Nm</c>; it counts before the two peaks.</summary>
    [NotMapped]
    public Noted? TorquePoints { get => Specs.Of(Spec.TorquePoints); set => Specs.Put(Spec.TorquePoints, value); }

    /// <summary>The two peaks of a data sheet, of which a curve is drawn when all four numbers are there.</summary>
    [NotMapped]
    public Noted? PeakTorque { get => Specs.Of(Spec.PeakTorque); set => Specs.Put(Spec.PeakTorque, value); }

    [NotMapped]
    public Noted? PeakTorqueAt { get => Specs.Of(Spec.PeakTorqueAt); set => Specs.Put(Spec.PeakTorqueAt, value); }

    [NotMapped]
    public Noted? PeakPower { get => Specs.Of(Spec.PeakPower); set => Specs.Put(Spec.PeakPower, value); }

    [NotMapped]
    public Noted? PeakPowerAt { get => Specs.Of(Spec.PeakPowerAt); set => Specs.Put(Spec.PeakPowerAt, value); }

    /// <summary>The lowest engine speed it pulls from cleanly in a high gear.</summary>
    [NotMapped]
    public Noted? LowestPull { get => Specs.Of(Spec.LowestPull); set => Specs.Put(Spec.LowestPull, value); }

    /// <summary>Null for naturally aspirated, which most are.</summary>
    public Induction? Induction { get; set; }

    /// <summary>Up to where a charger keeps the pressure, above sea level.</summary>
    [NotMapped]
    public Noted? CriticalAltitude { get => Specs.Of(Spec.CriticalAltitude); set => Specs.Put(Spec.CriticalAltitude, value); }

    /// <summary>Of the block's back, in the shop's words.</summary>
    [NotMapped]
    public string? BellHousing { get => Traits.Of(Trait.BellHousing); set => Traits.Put(Trait.BellHousing, value); }

    /// <summary>What sits on the crankshaft.</summary>
    [NotMapped]
    public Plate? Plate { get => Traits.Of<Plate>(Trait.Plate); set => Traits.Put(Trait.Plate, value); }

    /// <summary>Of the bearing or bush in the crankshaft.</summary>
    [NotMapped]
    public Noted? PilotBore { get => Specs.Of(Spec.PilotBore); set => Specs.Put(Spec.PilotBore, value); }

    /// <summary>Where the block leaves room for the starter.</summary>
    [NotMapped]
    public StarterSide? Starter { get => Traits.Of<StarterSide>(Trait.Starter); set => Traits.Put(Trait.Starter, value); }

    /// <summary>Seen from in front of the vehicle.</summary>
    [NotMapped]
    public Sense? Turns { get => Traits.Of<Sense>(Trait.Turns); set => Traits.Put(Trait.Turns, value); }

    /// <summary>What it pulls at full load; null while neither points nor both peaks are known.</summary>
    /// <exception cref="RefusedException">The peaks are none that an engine can have together.</exception>
    public TorqueCurve? Torque()
        => TorquePoints is { } points ? TorqueText.Curve(points.Text, points.Source)
            : PeakTorque is { } torque && PeakTorqueAt is { } atTorque && PeakPower is { } power && PeakPowerAt is { } atPower
                ? PlausibleCurve.From(torque.Si, atTorque.Si, power.Si, atPower.Si)
                : null;

    public override void Check()
    {
        base.Check();
        if (Idle is not null) _ = CruiseGoal.ReadEngineSpeed(Idle.Text).OrRefuse();
        if (Redline is not null) _ = CruiseGoal.ReadEngineSpeed(Redline.Text).OrRefuse();
        if (Idle is not null && Redline is not null && Idle.Si >= Redline.Si)
            throw new RefusedException("redline", Spoken($"The redline ({Redline}) must be above the idle speed ({Idle})."), "idle 800 rev/min, redline 5500 rev/min");
        _ = Torque();
    }
}
