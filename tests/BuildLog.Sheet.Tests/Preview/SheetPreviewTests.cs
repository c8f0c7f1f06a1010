using BuildLog.Sheet.Content;
using BuildLog.Sheet.Preview;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Preview;

public sealed class SheetPreviewTests
{
    [Fact]
    public void It_has_the_pages_that_the_file_has()
    {
        var preview = BuildSheetWriter.Preview(Sheets.WithHistory(150));
        var result = BuildSheetWriter.Write(Sheets.WithHistory(150), Stream.Null);

        Assert.Equal(result.Pages, preview.Pages.Count);
        Assert.Equal(150, preview.Lines(PreviewSetup.Usual).Count(line => line.StartsWith("day", StringComparison.Ordinal)));
    }

    [Fact]
    public void It_says_the_numbers_under_their_headings()
    {
        var lines = BuildSheetWriter.Preview(KestrelPickup.Sheet).Lines(PreviewSetup.Usual).ToList();

        Assert.Equal("Kestrel pickup", lines[lines.IndexOf("══════════════") - 1]);
        Assert.Contains("Cruise goal", lines);
        Assert.Contains("  Key value: 3.545 ± 0.004 : 1", lines);
        Assert.Contains(lines, line => line.StartsWith("[Chart of engine speed", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.Contains("Page 1 of", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(156)]
    [InlineData(78)]
    [InlineData(40)]
    public void No_line_is_longer_than_asked_whatever_is_in_it(int width)
    {
        var preview = BuildSheetWriter.Preview(Sheets.Everywhere(new string('W', 10_000)));

        Assert.All(preview.Pages.SelectMany(page => page.Lines(new(width))), line => Assert.True(line.Length <= width, line));
    }

    [Fact]
    public void Tables_take_the_width_there_is_and_running_text_stays_readable()
    {
        var preview = BuildSheetWriter.Preview(KestrelPickup.Sheet);
        var (narrow, wide) = (preview.Lines(PreviewSetup.Usual).ToList(), preview.Lines(new(156)).ToList());

        Assert.Contains("Rear axle  Fell 9-bolt, open differential  3.545 ± 0.004 : 1             measured, 20 turns", wide);
        Assert.Contains("  Key value: 3.545 ± 0.004 : 1", narrow);
        Assert.True(wide.Count < narrow.Count);
        var note = Assert.Single(wide, line => line.StartsWith("Road speeds in km/h. Driveline locked up", StringComparison.Ordinal));
        Assert.InRange(note.Length, 90, 100);
        Assert.Equal("tyre's.", wide[wide.IndexOf(note) + 1]);
    }

    // Of 60 columns ten are the longest name and two the gap: 48 for the words. Of 36 that would leave 24, too few for words.
    [Fact]
    public void A_cell_too_long_for_its_column_goes_on_below_itself_where_that_leaves_room_for_words()
    {
        var table = new TextTable();
        Row(table, "Verdict", "Finding");
        table.EndHead();
        Row(table, "clash", "twelve words that do not fit into fifty columns beside a name of eight");
        Row(table, "watch over", "short\nand a second line");
        var shown = table.TakeRows()!;

        Assert.Equal(
            ["Verdict     Finding", "clash       twelve words that do not fit into fifty columns", "            beside a name of eight", "watch over  short", "            and a second line"],
            shown.Lines(60));
        Assert.Equal(["clash", "  Finding: twelve words that do not", "    fit into fifty columns beside a", "    name of eight"], shown.Lines(36).Take(4));
        Assert.Null(table.TakeRows());
    }

    private static void Row(TextTable table, params string[] cells)
    {
        table.StartRow();
        foreach (var cell in cells) table.EndCell(cell);
    }

    [Fact]
    public void Charts_are_handed_on_as_the_numbers_that_paper_draws_those_that_stand_together_at_once()
    {
        var sheet = KestrelPickup.Sheet;
        var handed = new List<IReadOnlyList<Chart>>();
        var lines = BuildSheetWriter.Preview(sheet).Lines(new(100)
        {
            Draw = (charts, width) =>
            {
                Assert.Equal(100, width);
                handed.Add(charts);
                return [$"drawn: {charts.Count}"];
            },
        }).ToList();

        Assert.Contains(handed, charts => charts is [Sawtooth sawtooth] && ReferenceEquals(sawtooth, sheet.Sawtooth));
        Assert.Contains(handed, charts => charts.SequenceEqual([sheet.Pull!.Power, sheet.Pull.Hill]));
        Assert.Contains("drawn: 2", lines);
        Assert.DoesNotContain(lines, line => line.StartsWith("[Chart", StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_in_it_can_steer_a_terminal()
    {
        var preview = BuildSheetWriter.Preview(Sheets.Everywhere("Ke\u001b[2Jst\u202Erel"));

        Assert.All(preview.Lines(PreviewSetup.Usual), line => Assert.DoesNotContain(line, char.IsControl));
    }
}
