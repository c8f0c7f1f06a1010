namespace BuildLog.Data.Search;

/// <summary>A record that holds the words looked for.</summary>
/// <param name="Kind">What it is, such as <c>turn count</c>.</param>
/// <param name="Title">Which one; empty where nothing names it.</param>
/// <param name="Vehicle">The vehicle it speaks of.</param>
/// <param name="Part">The part it speaks of.</param>
/// <param name="Day">The day it speaks of.</param>
/// <param name="Excerpt">The words around the first match, on one line.</param>
/// <param name="RecordUid">The record's <see cref="Kept.Uid"/>.</param>
public sealed record Found(string Kind, string Title, string? Vehicle, string? Part, DateOnly? Day, string Excerpt, Guid RecordUid)
{
    /// <summary>The day as it was typed where it is not known to the day; <see cref="Day"/> is the one it is reckoned on.</summary>
    public string? DayAsTyped { get; init; }
}
