using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Papers.Accounts;

/// <summary>The hours of a vehicle or a span of time.</summary>
public sealed record TimeSheet : PaperContent
{
    /// <summary>"1 March to 30 April 2026"; null for all of it.</summary>
    public string? Span { get; init; }

    public WorkDone Work { get; init; } = new([], null);
}

/// <summary>The money of a vehicle or a span of time.</summary>
public sealed record CostSheet : PaperContent
{
    /// <summary>"1 March to 30 April 2026"; null for all of it.</summary>
    public string? Span { get; init; }

    public MoneySpent Costs { get; init; } = new([], []);
}
