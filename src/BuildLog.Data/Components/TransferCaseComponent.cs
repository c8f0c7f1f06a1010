using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Data.Components;

/// <summary>A transfer case with a high range for the road and a low one.</summary>
public sealed class TransferCaseComponent : Component
{
    public override Later Kind => new Later("transfer case");

    public override IReadOnlyList<Position> Positions => [Position.TransferCase];

    public Noted? High { get; set; }

    /// <summary>As a ratio or as teeth, see <see cref="TransferCaseLow"/>.</summary>
    public Noted? Low { get; set; }

    /// <summary>How it joins the front axle to the rear one; null where nobody knows.</summary>
    public FrontDrive? FrontDrive { get; set; }

    /// <summary>The torque its maker allows at the input.</summary>
    [NotMapped]
    public Noted? TorqueRating { get => Specs.Of(Spec.TorqueRating); set => Specs.Put(Spec.TorqueRating, value); }

    /// <summary>Flange or spline towards the rear axle, in the shop's words.</summary>
    [NotMapped]
    public string? Output { get => Traits.Of(Trait.Output); set => Traits.Put(Trait.Output, value); }

    [NotMapped]
    public string? FrontOutput { get => Traits.Of(Trait.FrontOutput); set => Traits.Put(Trait.FrontOutput, value); }

    [NotMapped]
    public SpeedometerFeed? SpeedometerFeed { get => Traits.Of<SpeedometerFeed>(Trait.SpeedometerFeed); set => Traits.Put(Trait.SpeedometerFeed, value); }

    [NotMapped]
    public Presence? ParkingBrake { get => Traits.Of<Presence>(Trait.ParkingBrake); set => Traits.Put(Trait.ParkingBrake, value); }

    public override void Check()
    {
        base.Check();
        if (High is not null) _ = RatioRange.Transfer.Read(High.Text).OrRefuse();
        if (Low is not null) _ = TransferCaseLow.Read(Low.Text).OrRefuse();
        if (High is not null && Low is not null && Low.Si <= High.Si)
            throw new RefusedException("transfer", Spoken($"The low range ({Low}) must have the larger ratio, high is {High}."), "high 1.00, low 2.30");
    }
}
