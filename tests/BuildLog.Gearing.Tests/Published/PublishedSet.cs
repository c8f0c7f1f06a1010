using System.Globalization;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>A table from print, or a group of figures of one origin.</summary>
/// <param name="Name">What it checks.</param>
/// <param name="Source">The kind of publication it was read in.</param>
/// <param name="Standing">How far it can be trusted.</param>
/// <param name="Figures">The figures with the engine's own.</param>
public sealed record PublishedSet(string Name, string Source, Standing Standing, IReadOnlyList<Figure> Figures)
{
    /// <summary>One row of the table in README.md.</summary>
    public string Row => string.Create(
        CultureInfo.InvariantCulture,
        $"| {Name} | {Source} | {InWords(Standing)} | {Figures.Count} | {Largest} |");

    // Below this, the figure differs from one machine to the next.
    private string Largest => Figures.Max(figure => figure.RelativeDeviation) switch
    {
        < 1e-11 => "below 1e-11",
        var largest => largest.ToString("0.0E+0", CultureInfo.InvariantCulture).Replace("E", "e", StringComparison.Ordinal),
    };

    private static string InWords(Standing standing) => standing switch
    {
        Standing.Read => "read",
        Standing.FromMemory => "from memory",
        Standing.WorkedOut => "worked out apart from this code",
        _ => "common practice, no source",
    };
}

public enum Standing
{
    Read,
    FromMemory,
    WorkedOut,
    CommonPractice,
}
