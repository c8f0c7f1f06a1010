using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Data.Components;

/// <summary>What wheels are bolted by: a wheel's own holes, or the studs of an axle's hub.</summary>
public abstract class BoltedComponent : Component
{
    public int? Studs { get; set; }

    /// <summary>Diameter of the circle of the studs' centres.</summary>
    [NotMapped]
    public Noted? PitchCircle { get => Specs.Of(Spec.PitchCircle); set => Specs.Put(Spec.PitchCircle, value); }

    /// <summary>Centre bore of the wheel, or the spigot of the hub.</summary>
    [NotMapped]
    public Noted? Bore { get => Specs.Of(Spec.Bore); set => Specs.Put(Spec.Bore, value); }

    /// <summary>As written on the nut, such as <c>M12×1.5</c>; null where nobody looked.</summary>
    public string? Thread { get; set; }

    /// <summary>How the nuts seat.</summary>
    public Seat? Seat { get; set; }

    public override void Check()
    {
        base.Check();
        if (Studs is { } studs) _ = BoltCircle.Factor(studs, Chord.Adjacent);
        if (Thread is { } thread && (thread.Trim().Length is 0 or > 20 || thread.Any(char.IsControl)))
            throw new RefusedException("thread", Spoken("A thread is written in 1 to 20 characters."), "M12×1.5");
    }
}
