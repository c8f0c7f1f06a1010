using System.Text.RegularExpressions;
using BuildLog.Gearing.Checks;
using BuildLog.Tui.Shell;

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

    // A limit that is a constant of the check, as the source has it, stands on its page as a number or as per cent.
    [Theory]
    [InlineData("cruise-band", "0.60", "0.95")]
    [InlineData("lugging", "0.5", "70 %")]
    [InlineData("top-gear", "1.10", "0.85")]
    [InlineData("gear-steps", "2 %")]
    [InlineData("propshaft-speed", "0.65", "0.75")]
    [InlineData("propshaft-half-critical", "46", "54")]
    [InlineData("joint-angles", "3°", "½°", "11.5°", "3.25°")]
    [InlineData("torsional-residual", "300", "400", "1°")]
    [InlineData("slip-travel", "25 mm")]
    [InlineData("four-wheel-match", "1.0 and 1.5 %", "1.5 and 2.0 %", "3.0 %", "0.16 %")]
    [InlineData("wheel-bolts", "0.05 mm", "0.3 mm")]
    [InlineData("tyre-load", "1.10")]
    [InlineData("speedometer", "1.131")]
    [InlineData("ratio", "2.2 to 7.2", "2.2 to 7.1", "0.50 to 1.10", "0.50 to 0.95", "1.00 to 1.25", "1.9 to 4.3")]
    [InlineData("label", "0.5")]
    public void The_numbers_of_the_limit_are_named(string id, params string[] limits)
    {
        var text = string.Join("\n", HelpText.Of(HelpText.OfCheck(id)).Select(line => line.Text));

        Assert.All(limits, limit => Assert.Contains(limit, text, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_example_comes_to_a_number_or_a_verdict(string id)
        => Assert.Matches(NumberOrVerdict(), string.Join(" ", HelpText.Of(HelpText.OfCheck(id)).SkipWhile(line => line.Text != "Example").Skip(1).TakeWhile(line => line.Text != "Cure").Select(line => line.Text)));

    [GeneratedRegex(@"\d|: (fits|watch|clash|open)\.")]
    private static partial Regex NumberOrVerdict();
}
