using BuildLog.Gearing.Quantities;
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

    public static PaperKind Account { get; } = new("PDF or CSV", "FILE.pdf|FILE.csv", "kestrel-costs.csv", SheetFile.ReadAccount);

    public static PaperKind Bundle { get; } = new("zip", "FILE.zip", "kestrel-handover.zip", SheetFile.ReadBundle);
}
