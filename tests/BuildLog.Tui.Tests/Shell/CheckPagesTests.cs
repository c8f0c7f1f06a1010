using System.Text.RegularExpressions;
using BuildLog.Gearing.Checks;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Docs;

namespace BuildLog.Tui.Tests.Shell;

/// <summary>Each check has its page, and each page its check.</summary>
public sealed partial class CheckPagesTests
{
    private static readonly string[] Headings = ["What", "Why", "Limit and source", "Example", "Cure"];

    public static TheoryData<string> Ids => [.. AllChecks.List.Select(check => check.Id)];

    [Fact]
    public void There_is_a_page_for_each_check_and_no_other()
        => Assert.Equal(AllChecks.List.Select(check => HelpText.OfCheck(check.Id)).Order(StringComparer.Ordinal), HelpText.Pages.Where(page => page.StartsWith(HelpText.OfCheck(""), StringComparison.Ordinal)));

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_page_has_the_title_of_the_check_and_the_five_sections(string id)
    {
        var page = HelpText.OfCheck(id);
        var lines = HelpText.Of(page);

        Assert.Equal(AllChecks.List.Single(check => check.Id == id).Title, HelpText.TitleOf(page));
        Assert.Equal(Headings, lines.Where(line => line.Runs[0].Tone == Tone.Heading).Select(line => line.Text));
        Assert.True(lines.Count < 60, $"{id}: {lines.Count} lines");
    }

    // Programs, the demo's tests and who files an issue call a check by its id; F1 is read at the bench.
    [Theory]
    [MemberData(nameof(Ids))]
    public void The_page_names_its_id_and_F1_does_not(string id)
    {
        var page = HelpText.OfCheck(id);
        foreach (var language in new[] { "docs", "docs/nl" }) Assert.Equal($"Id in JSON: {id}", Pages.Lines($"{language}/{page}.md")[2]);
        Assert.DoesNotContain(HelpText.Of(page), line => line.Text.Contains("JSON", StringComparison.Ordinal));
        Assert.Equal(Headings[0], HelpText.Of(page)[0].Text);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_example_comes_to_a_number_or_a_verdict(string id)
        => Assert.Matches(NumberOrVerdict(), string.Join(" ", HelpText.Of(HelpText.OfCheck(id)).SkipWhile(line => line.Text != "Example").Skip(1).TakeWhile(line => line.Text != "Cure").Select(line => line.Text)));

    [GeneratedRegex(@"\d|: (fits|watch|clash|open)\.")]
    private static partial Regex NumberOrVerdict();
}
