using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Components;

/// <summary>A drive axle. Its counts are kept as sessions; here stands what was read off it or said of it.</summary>
public sealed class AxleComponent : BoltedComponent
{
    public override Later Kind => new Later("axle");

    public override IReadOnlyList<Position> Positions => [Position.RearAxle, Position.FrontAxle];

    /// <summary>Ring gear and pinion, if somebody has counted their teeth.</summary>
    public Teeth? Teeth
    {
        get => Ring is { } ring && Pinion is { } pinion ? new Teeth(ring, pinion) : null;
        set => (Ring, Pinion) = (value?.Ring, value?.Pinion);
    }

    /// <summary>What a tag, a table or somebody says of the differential's ratio, without a hub reduction.</summary>
    public Noted? StatedRatio { get; set; }

    /// <summary>Further reduction in the hubs; null where there is none. A turn count has it inside, teeth and tags have not.</summary>
    public Noted? HubReduction { get; set; }

    /// <summary>Low over high of an axle with two ratios, as <see cref="TwoSpeedAxle.ReadStep"/> reads it; null for one ratio. All else here is of high, the one for the road.</summary>
    [NotMapped]
    public Noted? LowStep { get => Specs.Of(Spec.LowStep); set => Specs.Put(Spec.LowStep, value); }

    /// <summary>Mounting face to mounting face.</summary>
    [NotMapped]
    public Noted? HubFaces { get => Specs.Of(Spec.HubFaces); set => Specs.Put(Spec.HubFaces, value); }

    /// <summary>How far it goes down from ride height.</summary>
    [NotMapped]
    public Noted? Droop { get => Specs.Of(Spec.Droop); set => Specs.Put(Spec.Droop, value); }

    /// <summary>How far it goes up, to the stop.</summary>
    [NotMapped]
    public Noted? Bump { get => Specs.Of(Spec.Bump); set => Specs.Put(Spec.Bump, value); }

    /// <summary>The torque its maker allows at the wheels, both shafts together.</summary>
    [NotMapped]
    public Noted? TorqueRating { get => Specs.Of(Spec.TorqueRating); set => Specs.Put(Spec.TorqueRating, value); }

    /// <summary>What the propshaft bolts to, in the shop's words.</summary>
    [NotMapped]
    public string? PinionFlange { get => Traits.Of(Trait.PinionFlange); set => Traits.Put(Trait.PinionFlange, value); }

    /// <summary>Middle of the left spring perch to middle of the right one.</summary>
    [NotMapped]
    public Noted? Perches { get => Specs.Of(Spec.Perches); set => Specs.Put(Spec.Perches, value); }

    /// <summary>The pinion against the perches, positive where its front is higher.</summary>
    [NotMapped]
    public Noted? PinionToPerch { get => Specs.Of(Spec.PinionToPerch); set => Specs.Put(Spec.PinionToPerch, value); }

    [NotMapped]
    public Presence? ParkingBrake { get => Traits.Of<Presence>(Trait.ParkingBrake); set => Traits.Put(Trait.ParkingBrake, value); }

    internal int? Ring { get; set; }

    internal int? Pinion { get; set; }

    public override void Check()
    {
        base.Check();
        _ = Teeth;
        if (StatedRatio is not null) _ = RatioRange.Axle.Read(StatedRatio.Text).OrRefuse();
        if (HubReduction is not null) _ = RatioRange.Hub.Read(HubReduction.Text).OrRefuse();
    }
}
