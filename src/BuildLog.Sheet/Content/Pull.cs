namespace BuildLog.Sheet.Content;

/// <summary>What the vehicle can do against what the road asks, as two charts beside each other and one below.</summary>
/// <param name="Power">Power at the wheels in each gear, and the road load.</param>
/// <param name="Hill">The steepest hill held in each gear.</param>
/// <param name="Note">What the charts rest on, printed below them.</param>
public sealed record Pull(CurveChart Power, CurveChart Hill, string? Note = null)
{
    /// <summary>Force at the wheels in each gear, what hills take, and where the wheels spin; null for none.</summary>
    public CurveChart? Effort { get; init; }
}
