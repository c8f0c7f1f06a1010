using BuildLog.Data.Search;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Search;

/// <summary>Something found in the record, and where the workbench shows it.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Says">Which one, of which vehicle or part, and the words around the match.</param>
/// <param name="VehicleId">The vehicle it speaks of; null where it speaks of none.</param>
/// <param name="Page">Title of the page that shows such things.</param>
public sealed record FoundPlace(string Kind, string Says, long? VehicleId, string Page)
{
    /// <summary>The record's word for a photo, receipt or paper.</summary>
    internal const string Attached = "attachment";

    /// <summary>Where the part it speaks of is fitted; null where it is not, or speaks of none.</summary>
    public string? Position { get; init; }

    /// <param name="found">What the record found.</param>
    /// <param name="vehicleId">The vehicle it speaks of, or on which the part is that it speaks of.</param>
    /// <param name="position">Where on it that part is.</param>
    public static FoundPlace Of(Found found, long? vehicleId, string? position) => new(
        Spoken(found.Kind),
        string.Join(", ", new[] { found.Title, found.Vehicle, found.Part, found.DayAsTyped ?? (found.Day is { } day ? DayText.InShort(day) : null), found.Excerpt }
            .OfType<string>().Where(text => text.Length > 0).Distinct(StringComparer.Ordinal)),
        vehicleId,
        PageOf(found.Kind))
    {
        Position = position,
    };

    // By the words the record has for its kinds; what has no page of its own is seen on the first.
    private static string PageOf(string kind) => kind switch
    {
        "turn count" or "gear count" or "roll-out" or "teeth" or "loaded radius" or "bolt circle" or "shaft angles" or "weighbridge" or "speedometer run" or "road test" => Spoken("Measured"),
        "job" or "work" or "work given out" or "cost" or "deadline" => Spoken("Jobs"),
        "decision" or "note" => Spoken("Decisions"),
        Attached => Spoken("Papers"),
        "wanted part" or "offer" => Spoken("Wanted"),
        "fitment" => Spoken("History"),
        _ when kind.EndsWith("goal", StringComparison.Ordinal) => Spoken("Goal"),
        _ => Spoken("Findings"),
    };
}
