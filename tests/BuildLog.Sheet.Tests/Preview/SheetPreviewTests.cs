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
        Assert.Equal(150, preview.Lines.Count(line => line.StartsWith("day", StringComparison.Ordinal)));
    }

    [Fact]
    public void It_says_the_numbers_under_their_headings()
    {
        var lines = BuildSheetWriter.Preview(KestrelPickup.Sheet).Lines.ToList();

        Assert.Equal("Kestrel pickup", lines[lines.IndexOf("══════════════") - 1]);
        Assert.Contains("Cruise goal", lines);
        Assert.Contains("  Key value: 3.545 ± 0.004 : 1", lines);
        Assert.Contains(lines, line => line.StartsWith("[Chart of engine speed", StringComparison.Ordinal));
        Assert.DoesNotContain(lines, line => line.Contains("Page 1 of", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(78)]
    [InlineData(40)]
    public void No_line_is_longer_than_asked_whatever_is_in_it(int width)
    {
        var preview = BuildSheetWriter.Preview(Sheets.Everywhere(new string('W', 10_000)), width);

        Assert.All(preview.Pages.SelectMany(page => page.Lines), line => Assert.True(line.Length <= width, line));
    }

    [Fact]
    public void Nothing_in_it_can_steer_a_terminal()
    {
        var preview = BuildSheetWriter.Preview(Sheets.Everywhere("Ke\u001b[2Jst\u202Erel"));

        Assert.All(preview.Lines, line => Assert.DoesNotContain(line, char.IsControl));
    }
}
