using System.Globalization;
using System.Text;
using BuildLog.Data.Lists;

namespace BuildLog.Tui.Papers;

/// <summary>An account as CSV.</summary>
public static class AccountCsv
{
    /// <summary>The mark at the beginning tells a spreadsheet that it is UTF-8.</summary>
    public static Encoding Encoding { get; } = new UTF8Encoding(encoderShouldEmitUTF8Identifier: true);

    public static string Text(Account account)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        CsvTable.Write(text, account.Columns, account.Rows);
        return text.ToString();
    }
}
