using BuildLog.Gearing.Options;
using BuildLog.Sheet.Content;

namespace BuildLog.Tui.Sheets;

/// <summary>How a sheet is wanted.</summary>
/// <param name="Reader">For whom.</param>
/// <param name="Paper">On which paper.</param>
/// <param name="From">Leaves out what happened before this day; null for everything.</param>
/// <param name="WithHours">With the work and its hours; the shop's own file always has them.</param>
/// <param name="WithCosts">With what was paid; the shop's own file always has it.</param>
/// <param name="Compared">What is fitted beside other parts; null for no such section.</param>
public sealed record SheetWishes(SheetReader Reader, Paper Paper = Paper.A4, DateOnly? From = null, bool WithHours = false, bool WithCosts = false, OptionComparison? Compared = null)
{
    public bool Hours => WithHours || Reader == SheetReader.Own;

    public bool Costs => WithCosts || Reader == SheetReader.Own;

    public bool Holds(DateOnly day) => day >= (From ?? DateOnly.MinValue);
}
