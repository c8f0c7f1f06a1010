namespace BuildLog.Sheet.Drawing;

/// <summary>What the file says about itself.</summary>
internal sealed record DocumentInfo
{
    public required string Title { get; init; }

    public required string Author { get; init; }

    public required string Subject { get; init; }

    public required string Keywords { get; init; }

    /// <summary>The language of the text: "en-GB".</summary>
    public required string Language { get; init; }

    public required string Creator { get; init; }

    public required DateTimeOffset Created { get; init; }

    public required Guid Id { get; init; }

    /// <summary>The file calls itself PDF/A-2a, which no file may in which a sign is missing from the fonts (ISO 19005-2, 6.2.11.8).</summary>
    public bool ClaimsPdfA { get; init; }
}

internal sealed class DrawnPage(double width, double height)
{
    public double Width { get; } = width;

    public double Height { get; } = height;

    public List<Operation> Operations { get; } = [];
}

internal sealed record DrawnDocument(DocumentInfo Info, IReadOnlyList<DrawnPage> Pages);
