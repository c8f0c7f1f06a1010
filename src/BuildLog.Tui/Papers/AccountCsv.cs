using System.Globalization;
using System.Text;
using BuildLog.Data.Lists;
using BuildLog.Sheet;

namespace BuildLog.Tui.Papers;

/// <summary>An account as CSV, whole or not at all.</summary>
public static class AccountCsv
{
    // The mark at the beginning tells a spreadsheet that it is UTF-8.
    private static readonly UTF8Encoding Marked = new(encoderShouldEmitUTF8Identifier: true);

    /// <exception cref="SheetWriteException">The path cannot be written, or a file is there and may not be overwritten.</exception>
    public static void WriteFile(Account account, string path, bool overwrite)
        => WholeFile.At(path, overwrite).Write(stream => stream.Write([.. Marked.Preamble, .. Marked.GetBytes(Text(account))]));

    public static string Text(Account account)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        CsvTable.Write(text, account.Columns, account.Rows);
        return text.ToString();
    }
}
