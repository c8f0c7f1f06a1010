namespace BuildLog.Sheet.Papers.Cards;

/// <summary>A card for a pocket: what to count on a part in the yard, and what each count means.</summary>
public sealed record YardCard : PaperContent
{
    /// <summary>What is looked for, in small letters: "axle".</summary>
    public string? Part { get; init; }

    /// <summary>What it has to be, and who says so.</summary>
    public IReadOnlyList<string> Wanted { get; init; } = [];

    public IReadOnlyList<CardWay> Ways { get; init; } = [];

    /// <summary>How to count, and what not to believe.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>What else to look at, with room for a pencil.</summary>
    public IReadOnlyList<CardBlank> Blanks { get; init; } = [];

    public IReadOnlyList<string> Cautions { get; init; } = [];
}

/// <summary>One way of counting. What lies between yes and no is to be counted further.</summary>
/// <param name="How">"One wheel held (open differential)".</param>
/// <param name="Counted">What yes and no are told in: "propshaft turns".</param>
/// <param name="Ranges">The same for a short count and a long one.</param>
public sealed record CardWay(string How, string Counted, IReadOnlyList<CardRange> Ranges);

/// <summary>How far it is counted, and which results mean yes and no.</summary>
/// <param name="Yes">Null where no count is a sure yes.</param>
public sealed record CardRange(string Turns, string? Yes, string No);

/// <summary>Something to fill in by pencil.</summary>
/// <param name="What">"perch to perch".</param>
/// <param name="Unit">"mm"; empty for words.</param>
/// <param name="Must">What it has to match; empty where nothing is known.</param>
public sealed record CardBlank(Later What, string Unit = "", string Must = "");
