using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Components;

/// <summary>A separate overdrive unit behind the gearbox.</summary>
public sealed class OverdriveComponent : Component
{
    public override string Kind => "overdrive";

    public override IReadOnlyList<Position> Positions => [Position.Overdrive];

    public Noted? OverdriveRatio { get; set; }

    public override void Check()
    {
        base.Check();
        if (OverdriveRatio is not null) _ = RatioRange.Overdrive.Read(OverdriveRatio.Text).OrRefuse();
    }
}
