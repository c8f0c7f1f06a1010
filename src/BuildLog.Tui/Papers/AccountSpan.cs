using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Papers;

/// <summary>The days an account is about; an open end has no limit.</summary>
public sealed record AccountSpan(DateOnly? From, DateOnly? To)
{
    public static AccountSpan All { get; } = new(null, null);

    public bool Holds(DateOnly day) => day >= (From ?? DateOnly.MinValue) && day <= (To ?? DateOnly.MaxValue);

    /// <summary><c>1 March 2026 to 30 April 2026</c>; null for all of it.</summary>
    public string? InWords() => (From, To) switch
    {
        ({ } from, { } to) => Spoken($"{DayText.InWords(from)} to {DayText.InWords(to)}"),
        ({ } from, null) => Spoken($"since {DayText.InWords(from)}"),
        (null, { } to) => Spoken($"until {DayText.InWords(to)}"),
        _ => null,
    };
}
