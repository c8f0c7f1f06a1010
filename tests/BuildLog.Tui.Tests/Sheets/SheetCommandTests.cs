using BuildLog.Tui.Sheets;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Sheets;

public sealed class SheetCommandTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-papers-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_reader_that_is_none_is_refused_with_those_there_are()
    {
        var said = Said.By("sheet", "Tansy", "--demo", "--for", "neighbour", "--preview");

        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith("--for: 'neighbour' is nobody a sheet is made for: buyer, inspector, insurer or own.", said.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_preview_writes_nothing_and_needs_no_file()
    {
        var said = Said.By("sheet", "Tansy", "--demo", "--for", "insurer", "--preview", "--out", File("tansy.pdf"));

        Assert.Equal(0, said.ExitCode);
        Assert.Contains("Parts history", said.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Measurement evidence", said.Output, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_preview_in_json_has_the_lines_of_each_page()
    {
        var pages = Said.By("sheet", "Tansy", "--demo", "--preview", "--json").Json.GetProperty("pages");

        Assert.True(pages.GetArrayLength() >= 2);
        Assert.Contains("Tansy", pages[0].EnumerateArray().Select(line => line.GetString()));
    }

    [Fact]
    public void A_photo_that_is_not_there_is_refused_before_anything_is_written()
    {
        var said = Said.By("sheet", "Tansy", "--demo", "--photo", File("front.jpg"), "--out", File("tansy.pdf"));

        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith("--photo: There is no photo", said.Errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_photo_that_is_none_is_named_and_the_sheet_is_written_without_it()
    {
        System.IO.File.WriteAllText(File("front.jpg"), "a letter");

        var said = Said.By("sheet", "Tansy", "--demo", "--before", File("front.jpg"), "--out", File("tansy.pdf"));

        Assert.Equal(0, said.ExitCode);
        Assert.Contains("The photo front.jpg is no JPEG, PNG or WebP that can be read, so it was left out.", said.Output, StringComparison.Ordinal);
        Assert.True(System.IO.File.Exists(File("tansy.pdf")));
    }

    [Theory]
    [InlineData("order", "Ottery")]
    [InlineData("session", "Ottery", "--method", "roll-out", "--date", "2024-06-01")]
    [InlineData("time", "Brindle")]
    [InlineData("costs", "Brindle")]
    [InlineData("labels")]
    public void The_other_papers_name_the_file_they_need(params string[] paper)
    {
        var said = Said.By(["paper", .. paper, "--demo"]);

        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith("--out: Name the PDF", said.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("order", "Ottery")]
    [InlineData("session", "Brindle", "--date", "2024-10-26")]
    [InlineData("time", "Brindle")]
    [InlineData("costs", "Brindle", "--paper", "letter")]
    [InlineData("labels", "--shelf")]
    public void The_other_papers_are_written_alike_when_asked_to(params string[] paper)
    {
        Assert.Equal(0, Said.By(["paper", .. paper, "--demo", "--reproducible", "--out", File("one.pdf")]).ExitCode);

        Assert.StartsWith("%PDF-", System.IO.File.ReadAllText(File("one.pdf")), StringComparison.Ordinal);
        Assert.Equal(3, Said.By(["paper", .. paper, "--demo", "--reproducible", "--out", File("one.pdf")]).ExitCode);
    }

    [Fact]
    public void A_vehicle_without_a_propshaft_has_none_to_order()
    {
        var said = Said.By("paper", "order", "Tansy", "--demo", "--out", File("tansy.pdf"));

        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith("Tansy has no propshaft yet", said.Errors, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void A_day_without_a_session_is_refused_with_the_days_there_are()
    {
        var said = Said.By("paper", "session", "Brindle", "--demo", "--date", "2020-01-01", "--out", File("b.pdf"));

        Assert.Equal(2, said.ExitCode);
        Assert.Contains("2024-10-26", said.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_machine_without_a_viewer_says_so_and_keeps_the_file()
        => Assert.Equal("Nothing on this machine offers to open a PDF; tansy.pdf is written all the same.", SystemViewer.Refusal("tansy.pdf"));

    private string File(string name) => Path.Combine(folder, name);
}
