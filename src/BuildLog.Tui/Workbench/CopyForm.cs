using BuildLog.Data.Files;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Workbench;

/// <summary>Asks for the file that a table is written to.</summary>
public static class CopyForm
{
    public static Form For(TableText table, string name) => new()
    {
        Title = Spoken("Write the table to a file"),
        SaveCaption = Spoken("Write"),
        Entries = [new TextEntry("file", Spoken("File")) { Initial = name, Hint = Spoken("a new file; .csv opens in a spreadsheet, .txt is plain text"), Check = values => Refusal(values["file"]) }],
        Save = values => Write(values["file"], table),
    };

    private static string? Refusal(string path) =>
        path.Length == 0 ? Spoken("The file needs a name, such as costs.csv.")
        : File.Exists(path) ? Spoken($"{path} is there already: choose another name.")
        : null;

    private static SaveOutcome Write(string path, TableText table)
    {
        try
        {
            using var file = new StreamWriter(OwnerOnly.NewFile(path));
            file.Write(path.EndsWith(".txt", StringComparison.OrdinalIgnoreCase) ? table.ToText() : table.ToCsv());
            return SaveOutcome.Done;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return SaveOutcome.Refuse("file", Spoken($"{path} cannot be written ({trouble.Message.TrimEnd('.')})."));
        }
    }
}
