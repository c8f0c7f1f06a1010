using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Components;

/// <summary>An engine.</summary>
public sealed class EngineComponent : Component
{
    public override string Kind => "engine";

    public override IReadOnlyList<Position> Positions => [Position.Engine];

    public Noted? Idle { get; set; }

    public Noted? Redline { get; set; }

    public override void Check()
    {
        base.Check();
        if (Idle is not null) _ = CruiseGoal.ReadEngineSpeed(Idle.Text).OrRefuse();
        if (Redline is not null) _ = CruiseGoal.ReadEngineSpeed(Redline.Text).OrRefuse();
        if (Idle is not null && Redline is not null && Idle.Si >= Redline.Si)
            throw new RefusedException("redline", $"The redline ({Redline}) must be above the idle speed ({Idle}).", "idle 800 rev/min, redline 5500 rev/min");
    }
}
