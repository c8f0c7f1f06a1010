using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Commands;

/// <summary>What kind of file a command writes.</summary>
/// <param name="Name">As a sentence names it.</param>
/// <param name="Form">As help shows it.</param>
/// <param name="Example">A name that would be right.</param>
/// <param name="Read">Understands a path, or refuses it.</param>
internal sealed record PaperKind(string Name, string Form, string Example, Func<string, Parsed<string>> Read)
{
    public static PaperKind Pdf { get; } = new("PDF", "FILE.pdf", "kestrel.pdf", SheetFile.Read);

    /// <summary>For a pocket.</summary>
    public static PaperKind Card { get; } = new("PDF", "FILE.pdf", "axle-card.pdf", SheetFile.Read) { Papers = [new("a6", Paper.A6), new("half-letter", Paper.HalfLetter)] };

    public static PaperKind Account { get; } = new(new Later("PDF or CSV"), "FILE.pdf|FILE.csv", "kestrel-costs.csv", SheetFile.ReadAccount);

    public static PaperKind Bundle { get; } = new(new Later("zip"), "FILE.zip", "kestrel-handover.zip", SheetFile.ReadBundle);

    /// <summary>What it may be printed on; the first where nothing is said.</summary>
    public IReadOnlyList<PaperWord> Papers { get; private init; } = [new("a4", Paper.A4), new("letter", Paper.Letter)];
}

/// <summary>A paper as it is typed.</summary>
internal sealed record PaperWord(string Word, Paper Paper);
