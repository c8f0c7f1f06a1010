using BuildLog.DemoData;
using BuildLog.Tui.Tests.Commands;
using BuildLog.Tui.Tests.Reference;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>README.md promises nothing that is not so.</summary>
public sealed class ReadmeTests
{
    private const string Page = "README.md";
    private const string PageInThePicture = "tests/BuildLog.Tui.Tests/Docs/build-sheet.txt";

    // One after the other on one copy of the demo shop: what is exported is imported, what is undone is redone.
    [Fact]
    public void Every_command_it_shows_works()
    {
        var record = DemoShop.CreateFreshCopy();
        var folder = Path.GetDirectoryName(record)!;
        try
        {
            var lines = Pages.Lines(Page).Where(line => line.StartsWith("    buildlog ", StringComparison.Ordinal)).Select(line => line.Trim()).ToList();
            Assert.True(lines.Count > 25);
            foreach (var line in lines)
            {
                var said = TypedLine.Run(line, folder, "--database", record);
                Assert.True(said.ExitCode == 0 || (said.ExitCode == 1 && line.Contains("--fail-on", StringComparison.Ordinal)), $"{line}\n{said.Errors}");
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void It_leaves_no_command_out()
    {
        var shown = Pages.Lines(Page).Where(line => line.StartsWith("    buildlog ", StringComparison.Ordinal)).Select(line => line.Trim().Split(' ')[1]).ToHashSet();
        string[] elsewhere = ["completion", "man"];
        var leftOut = ProgramAsRead.Entry().Commands.Select(command => command.Name).Except(shown).Except(elsewhere).ToList();
        Assert.True(leftOut.Count == 0, $"The README shows no line with: {string.Join(", ", leftOut)}.");
    }

    // A picture cannot be compared word by word; the text of the page it was taken of can. Both are taken anew together.
    [Fact]
    public void Its_picture_of_a_sheet_is_of_the_sheet_that_is_printed_today()
    {
        var lines = Said.By("sheet", "Tansy", "--demo", "--preview").Output.Split('\n');
        var page = lines.Skip(1).TakeWhile(line => !line.StartsWith("──── page 2", StringComparison.Ordinal)).Where(line => !line.StartsWith("printed ", StringComparison.Ordinal));
        var printed = string.Join('\n', page).Trim('\n') + "\n";
        Assert.True(printed == Pages.Read(PageInThePicture), $"""
            docs/build-sheet.png shows another page than is printed today. Take it anew:
              buildlog sheet Tansy --demo --out tansy.pdf
              pdftoppm -r 64 -f 1 -l 1 -png -singlefile tansy.pdf docs/build-sheet
            look at it, and put this into {PageInThePicture}:
            {printed}
            """);
    }

    // Who unpacks an archive has no repository around it.
    [Fact]
    public void An_archive_has_a_README_of_its_own_that_leads_nowhere_else()
    {
        Assert.Contains("cp LICENSE packaging/archive/README.md", Pages.Read("packaging/single-files.sh"), StringComparison.Ordinal);
        Assert.DoesNotContain("](", Pages.Read("packaging/archive/README.md"), StringComparison.Ordinal);
        Assert.True(Pages.Lines("packaging/archive/README.md").Length <= 20);
    }

    // BUILDLOG_WRITE_DOCS=1 takes the screen over, once its own picture was retaken.
    [Fact]
    public void Its_screen_is_one_that_is_tested()
    {
        var text = Pages.Read(Page);
        var screen = Pages.Read("tests/BuildLog.Tui.Tests/Screens/demo-80x24.txt").TrimEnd('\n');
        var shown = text.Split("```text\n")[1].Split("\n```")[0];
        Pages.AreInStep(Page, text.Replace(shown, screen, StringComparison.Ordinal));
    }
}
