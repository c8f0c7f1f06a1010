namespace BuildLog.Endurance;

/// <summary>One way of treating the program badly.</summary>
internal interface IOrdeal
{
    string Name { get; }

    /// <param name="rounds">How often; for some it is how many keys, texts or hours.</param>
    Survival Run(int rounds);
}

/// <summary>How an ordeal ended.</summary>
/// <param name="Faults">What it was put through.</param>
/// <param name="Troubles">What it did not survive, in words; empty if all was well.</param>
/// <param name="Remark">What a reader should know of the number.</param>
internal sealed record Survival(int Faults, IReadOnlyList<string> Troubles, string Remark)
{
    /// <summary>Why it could not be had on this machine; null where it was.</summary>
    public string? Skipped { get; init; }

    public static Survival NotHere(string why) => new(0, [], "") { Skipped = why };
}
