using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Papers.Accounts;

/// <summary>What is drawn up of a vehicle over a span of time.</summary>
public abstract record AccountContent : PaperContent
{
    /// <summary>"1 March to 30 April 2026"; null for all of it.</summary>
    public string? Span { get; init; }
}

/// <summary>The hours of a vehicle.</summary>
public sealed record TimeSheet : AccountContent
{
    public WorkDone Work { get; init; } = new([], null);
}

/// <summary>The money of a vehicle.</summary>
public sealed record CostSheet : AccountContent
{
    public MoneySpent Costs { get; init; } = new([], []);
}
