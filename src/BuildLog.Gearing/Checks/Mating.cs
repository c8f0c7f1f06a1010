using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Checks;

/// <summary>One end of two that have to go together.</summary>
/// <param name="Part">Whose end it is.</param>
/// <param name="Thing">What it is called, such as <c>bell-housing pattern</c>.</param>
/// <param name="Words">What it is, in the shop's words; null where nobody looked.</param>
/// <param name="Way">The cheapest way to know it.</param>
internal sealed record MatingEnd(Position Part, string Thing, string? Words, string Way)
{
    /// <summary>It follows from what else is known of the part, so nobody needs to have looked.</summary>
    public bool IsImplied { get; init; }

    /// <summary>Not an end of the part, but what has to be at the other one.</summary>
    public bool IsNeed { get; init; }

    public bool IsLookedAt => Words is not null && !IsImplied;

    public bool IsUnlooked => Words is null;

    /// <summary>Such as <c>engine's bell-housing pattern</c>.</summary>
    public string Name => IsNeed ? Spoken($"{Thing} the {Part.InWords()} needs") : Spoken($"{Part.InWords()}'s {Thing}");
}

/// <summary>Two ends that go together if they are called the same.</summary>
/// <param name="One">The end further up the driveline.</param>
/// <param name="Other">What goes to it.</param>
/// <param name="Cures">What would cure a difference, from the words of both.</param>
internal sealed record Mating(MatingEnd One, MatingEnd Other, Func<string, string, IReadOnlyList<string>> Cures)
{
    /// <summary>The joint it hangs at.</summary>
    public IReadOnlyList<Position> Between { get; init; } = [One.Part, Other.Part];

    /// <summary>They begin with a count; where only what follows differs, it may be one thing written twice.</summary>
    public bool CountDecides { get; init; }

    public bool IsLookedAt => One.IsLookedAt || Other.IsLookedAt;
}
