namespace BuildLog.Gearing.Ratios;

/// <summary>Axle ratios that are sold under a round name, with the tooth pair behind it.</summary>
/// <remarks>
/// Pairs read in axle makers' technical notes and service data are marked; the others are from memory, plausible and used as likely
/// candidates only: they never decide a finding.
/// </remarks>
public static class ListedRatios
{
    /// <summary>Read in print: 40/13, 37/12, 41/12, 45/13, 41/11, 41/10, 37/9, 47/11, 40/10. From memory: the rest.</summary>
    public static readonly IReadOnlyList<Teeth> Common =
    [
        new(41, 16), new(41, 15), new(39, 14), new(43, 14), new(40, 13), new(37, 12), new(42, 13), new(43, 13), new(37, 11), new(41, 12),
        new(45, 13), new(46, 13), new(39, 11), new(43, 12), new(37, 10), new(41, 11), new(53, 14), new(35, 9), new(43, 11), new(40, 10),
        new(41, 10), new(37, 9), new(47, 11), new(43, 10), new(41, 9), new(46, 10), new(47, 10), new(43, 9), new(39, 8), new(46, 9), new(41, 8),
        new(47, 9), new(37, 7), new(43, 8), new(40, 7), new(35, 6), new(43, 7), new(45, 7),
    ];
}
