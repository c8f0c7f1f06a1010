using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The words of one box of the strip, cut so that a number is never cut in the middle.</summary>
internal static class BoxText
{
    public static string NothingFitted => Spoken("(empty)");

    public static string Part(DrivelineBox box) => box.Part ?? NothingFitted;

    /// <summary>The number with its ± in as much room as there is: spaces go first, then the ±, which the card below repeats, and the unit last. In plain ASCII the nought before the point of the ± goes too: what the ± takes more there.</summary>
    public static string Number(DrivelineBox box, int width) => Number(box, width, Characters.AreAscii);

    internal static string Number(DrivelineBox box, int width, bool inAscii)
    {
        var tight = inAscii ? "+-" : "±"; // without spaces around it, plain ASCII needs a cell more for it
        var (value, unit) = Split(box.Number);
        string[] attempts = box.PlusMinus.Length == 0
            ? [box.Number, value]
            : [$"{value} ± {box.PlusMinus}{unit}", $"{value}{tight}{box.PlusMinus}{unit}", $"{value}{tight}{box.PlusMinus}{unit.Trim()}", .. inAscii ? (string[])[$"{value}{tight}{box.PlusMinus.TrimStart('0')}{unit.Trim()}"] : [], box.Number, value];
        return attempts.FirstOrDefault(text => TextFit.Width(text) <= width) ?? TextFit.Cut(box.Number, width);
    }

    /// <summary>Number and source in one line where both have room.</summary>
    public static string NumberAndSource(DrivelineBox box, int width)
    {
        var full = Number(box, int.MaxValue);
        var both = $"{full}  {box.Source}";
        return TextFit.Width(both) <= width ? both : Number(box, width);
    }

    /// <summary>A box in two lines: the source beside the caption, or beside the number where that has the room; an empty position says so instead.</summary>
    public static (string Caption, string Number) TwoLines(DrivelineBox box, int width)
    {
        var both = $"{box.Caption}  {(box.Part is null ? NothingFitted : box.Source)}".TrimEnd();
        return TextFit.Width(both) <= width ? (both, Number(box, width)) : (box.Caption, NumberAndSource(box, width));
    }

    /// <summary>Everything about the box in one line.</summary>
    public static string Card(DrivelineBox box)
    {
        string[] parts = [$"{box.Caption}: {box.Part ?? Spoken("nothing fitted, Enter fits a part")}", Number(box, int.MaxValue), box.Source];
        return string.Join(" · ", parts.Where(part => part.Length > 0));
    }

    /// <summary>Everything known about what is fitted there, a line for each thing.</summary>
    public static IReadOnlyList<string> WholeCard(DrivelineBox box) =>
    [
        .. new[] { Spoken($"Position  {box.Caption}"), Spoken($"Number    {Number(box, int.MaxValue)}"), Spoken($"Source    {box.Source}") }
            .Where(line => line.TrimEnd().Contains("  ", StringComparison.Ordinal)),
        .. box.Lines ?? [],
    ];

    private static (string Value, string Unit) Split(string number)
    {
        var space = number.LastIndexOf(' ');
        return space < 0 ? (number, "") : (number[..space], number[space..]);
    }
}
