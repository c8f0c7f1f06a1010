namespace BuildLog.Sheet.Papers;

/// <summary>What every paper but the build sheet says at its head, already worded by the caller. A text that is null or blank prints as "not recorded".</summary>
public abstract record PaperContent
{
    /// <summary>Identifies this paper inside the file; the same paper printed again keeps it.</summary>
    public required Guid Id { get; init; }

    /// <summary>When the paper was made; goes into the file's properties.</summary>
    public required DateTimeOffset Created { get; init; }

    public Content.Paper Paper { get; init; } = Content.Paper.A4;

    /// <summary>The printed date as the reader sees it.</summary>
    public string? PrintedOn { get; init; }

    public string? ShopName { get; init; }

    /// <summary>The vehicle or whatever else the paper is about.</summary>
    public string? About { get; init; }
}
