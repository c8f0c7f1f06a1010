using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>What tyres hold on the road that everything is judged on, where nobody said more of it.</summary>
/// <remarks>
/// Grip 0.80, u = 0.05: 0.70 to 0.90, from memory. A driveline maker's manual sizes shafts and joints with 0.71, near its low end. One value serves pulling away
/// and strength alike, because a finding is only sure with all of the interval: a hill has to be climbed with the least of it, a joint to hold the most of it, and
/// a joint clashes only where the manual's would too.
/// </remarks>
public static class DryRoad
{
    /// <summary>The largest driving force over the load on the driven wheels; ask once for each vehicle and keep the answer.</summary>
    public static Known Grip => new(Measured.From(0.8, new Input(Spoken("grip on a dry road"), 0.05, new Evidence(Spoken("grip")))), Source.Assumed, Spoken("dry road"));
}
