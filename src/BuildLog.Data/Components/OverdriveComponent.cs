using System.ComponentModel.DataAnnotations.Schema;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Components;

/// <summary>A separate overdrive unit behind the gearbox.</summary>
public sealed class OverdriveComponent : Component
{
    /// <summary>What a count of it says it was: stored, so the same in all languages, and nothing that a knob calls a gear.</summary>
    public const string Engaged = "engaged";

    /// <summary>What it was counted as where it was not engaged.</summary>
    public const string NotEngaged = "disengaged";

    public override Later Kind => new Later("overdrive");

    public override IReadOnlyList<Position> Positions => [Position.Overdrive];

    /// <summary>As a ratio or as the share it is sold by, see <see cref="OverdriveUnit"/>.</summary>
    public Noted? OverdriveRatio { get; set; }

    /// <summary>Its planetary set, if somebody has counted the teeth.</summary>
    public Planetary? Teeth
    {
        get => OverdriveRing is { } ring && OverdriveSun is { } sun ? new Planetary(ring, sun) : null;
        set => (OverdriveRing, OverdriveSun) = (value?.Ring, value?.Sun);
    }

    /// <summary>Flange or spline behind it, in the shop's words.</summary>
    [NotMapped]
    public string? Output { get => Traits.Of(Trait.Output); set => Traits.Put(Trait.Output, value); }

    internal int? OverdriveRing { get; set; }

    internal int? OverdriveSun { get; set; }

    public override void Check()
    {
        base.Check();
        if (Teeth is { } teeth) _ = OverdriveUnit.Of(teeth);
        if (OverdriveRatio is not null) _ = OverdriveUnit.Read(OverdriveRatio.Text).OrRefuse();
    }
}
