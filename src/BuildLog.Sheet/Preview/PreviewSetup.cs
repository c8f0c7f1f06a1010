using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Preview;

/// <summary>How a preview is laid: on how many columns, and how its charts are drawn.</summary>
/// <param name="Width">Columns there are; tables may take all of them.</param>
public sealed record PreviewSetup(int Width)
{
    internal const int LongestLine = 100; // of running text

    /// <summary>Without a terminal to measure.</summary>
    public static PreviewSetup Usual { get; } = new(78);

    /// <summary>Draws charts that stand together as lines; null to say them in words.</summary>
    public Func<IReadOnlyList<Chart>, int, IReadOnlyList<string>>? Draw { get; init; }

    /// <summary>Columns of running text, which nobody reads in longer lines.</summary>
    public int Measure => Math.Min(Width, LongestLine);
}
