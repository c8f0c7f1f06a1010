namespace BuildLog.Gearing.Measurements;

/// <summary>Where inputs come from: one count, one roll-out, one label. Inputs of one piece of evidence get better together.</summary>
/// <param name="Name">What it is called in a budget, such as <c>axle turn count</c>.</param>
/// <param name="Settle">
/// What to do at the bench to make its uncertainty smaller by the given factor (above 1), as a clause that follows "to settle it,";
/// null where nothing simple helps.
/// </param>
public sealed record Evidence(Later Name, Func<double, string>? Settle = null);
