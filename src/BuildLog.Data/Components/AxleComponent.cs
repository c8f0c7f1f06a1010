using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Components;

/// <summary>A drive axle. Its counts are kept as sessions; here stands what was read off it or said of it.</summary>
public sealed class AxleComponent : Component
{
    public override string Kind => "axle";

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
