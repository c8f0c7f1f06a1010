namespace BuildLog.Sheet.Papers.Labels;

/// <summary>Labels to cut out and put on parts and shelves.</summary>
public sealed record ShelfLabels : PaperContent
{
    public IReadOnlyList<ShelfLabel> Labels { get; init; } = [];
}

/// <summary>One label.</summary>
/// <param name="Part">The part's own number; its code is made from it.</param>
/// <param name="Name">What the shop calls it.</param>
/// <param name="Lines">Kind, number, donor, shelf: what is known, a line each.</param>
public sealed record ShelfLabel(Guid Part, string Name, IReadOnlyList<string> Lines);
