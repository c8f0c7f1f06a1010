using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class TableTextTests
{
    private static readonly TableText Table = new(["gear", "ratio"], [["first, long", "3.64"], ["\"top\"", "1.00"]]);

    [Fact]
    public void As_text_its_columns_are_straight()
        => Assert.Equal("gear         ratio\nfirst, long  3.64\n\"top\"        1.00\n", Table.ToText());

    // RFC 4180, 2.5 to 2.7: fields with commas or quotes are quoted, quotes doubled, lines end in CR LF.
    [Fact]
    public void As_csv_commas_and_quotes_survive()
        => Assert.Equal("gear,ratio\r\n\"first, long\",3.64\r\n\"\"\"top\"\"\",1.00\r\n", Table.ToCsv());
}
