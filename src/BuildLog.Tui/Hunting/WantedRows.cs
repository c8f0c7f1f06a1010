using BuildLog.Data.Hunting;
using BuildLog.Gearing.Checks;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Hunting;

/// <summary>Wanted parts and offers as rows.</summary>
internal static class WantedRows
{
    public static WantedRow Part(WantedPart wanted) => new(
        wanted.Id, null, wanted.Title, string.Join("; ", wanted.Windows.Select(WantedWindows.InWords)), wanted.Most is { } most ? $"to {most}" : "", null, wanted.State.InWords(),
        [
            .. wanted.Windows.Select(window => $"{window.Quantity.InWords()} {window.InWords()}"),
            .. wanted.MustHaves.Select(must => $"must have {must.What}: {must.Text}"),
            .. Line("costs at most", wanted.Most?.ToString()), .. Line("needed by", wanted.Deadline is { } day ? DayText.InWords(day) : null),
            .. Line("wanted no more, because", wanted.DroppedFor), .. Line("", wanted.Notes),
        ]);

    public static WantedRow Offer(VehicleOnBench bench, WantedPart wanted, Offer offer, DateOnly today)
    {
        var judged = JudgedOffer.Of(bench, wanted, offer.Claimed, offer.Price);
        var isOver = offer.Expires < today;
        return new(
            wanted.Id, offer.Id, offer.What, offer.Claimed, offer.Price?.ToString() ?? "", judged.Verdict, isOver ? "ran out" : judged.Verdict.InWords(),
            [
                judged.InWords,
                .. Line("claimed", offer.Claimed), .. Line("price", offer.Price?.ToString()), .. Line("at", offer.Supplier?.Name), .. Line("at", offer.Place), .. Line("contact", offer.Contact),
                $"seen {DayText.InWords(offer.Seen)}{(offer.Expires is { } last ? $", {(isOver ? "ran out" : "runs out")} {DayText.InWords(last)}" : "")}",
                .. Line("", offer.Notes),
            ]);
    }

    private static IEnumerable<string> Line(string name, string? text) => string.IsNullOrWhiteSpace(text) ? [] : [$"{name} {text}".Trim()];
}
