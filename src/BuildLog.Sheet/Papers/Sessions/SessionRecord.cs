using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Papers.Sessions;

/// <summary>One measurement session, with all that somebody needs who wants to check it or do it again.</summary>
public sealed record SessionRecord : PaperContent
{
    public string? Method { get; init; }

    /// <summary>The part that was measured.</summary>
    public string? Part { get; init; }

    public string? Date { get; init; }

    public string? Who { get; init; }

    public IReadOnlyList<string> Conditions { get; init; } = [];

    /// <summary>In the order they were taken, as typed.</summary>
    public IReadOnlyList<string> Readings { get; init; } = [];

    public string? Result { get; init; }

    public string? Interval95 { get; init; }

    public string? ExpandedUncertainty { get; init; }

    /// <summary>What follows from it, in sentences.</summary>
    public IReadOnlyList<string> Says { get; init; } = [];

    /// <summary>What the uncertainty is made of, the largest share first.</summary>
    public IReadOnlyList<LabelledLine> Budget { get; init; } = [];

    public IReadOnlyList<SignatureLine> Signatures { get; init; } = [new(Spoken("Measured by")), new(Spoken("Seen by"))];
}
