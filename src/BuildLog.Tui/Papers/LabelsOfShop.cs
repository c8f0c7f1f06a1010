using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers.Labels;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Papers;

/// <summary>The parts of the shop as labels.</summary>
public static class LabelsOfShop
{
    /// <summary>A name that stays, so that the same labels printed again are the same paper.</summary>
    private static readonly Guid Id = new("5d0c1a3e-6f0b-4c55-9d21-7a40c2b8e6f1");

    public static ShelfLabels Content(IEnumerable<PartPlace> parts, Paper paper, DateTimeOffset printed) => new()
    {
        Id = Id,
        Created = printed,
        Paper = paper,
        PrintedOn = DayText.InWords(printed),
        About = Spoken("The shop's parts"),
        Labels = [.. parts.Select(place => new ShelfLabel(place.Component.Uid, place.Component.Name, [.. Lines(place.Component)]))],
    };

    private static IEnumerable<string> Lines(Component part)
    {
        yield return part.SerialNumber.Length > 0 ? Spoken($"{part.Kind}, no. {part.SerialNumber}") : part.Kind;
        if (part.Donor.Length > 0) yield return Spoken($"donor: {part.Donor}");
        if (part.Shelf.Length > 0) yield return Spoken($"shelf: {part.Shelf}");
    }
}
