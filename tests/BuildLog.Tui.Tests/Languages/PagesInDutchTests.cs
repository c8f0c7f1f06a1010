using System.Text.RegularExpressions;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Languages;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Languages;

/// <summary>The help and the pages of the checks say the same in both languages.</summary>
public sealed partial class PagesInDutchTests
{
    public static TheoryData<string> Pages => [.. HelpText.Pages];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_has_the_same_headings_formulas_and_numbers(string page)
    {
        Assert.True(HelpText.Has(page, Language.Dutch));
        var english = HelpText.Of(page);
        using var spoken = Language.Dutch.Speak();
        var dutch = HelpText.Of(page);

        Assert.Equal(Count(english, Tone.Heading), Count(dutch, Tone.Heading));
        Assert.Equal(Count(english, Tone.Strong), Count(dutch, Tone.Strong));
        Assert.Equal(Numbers(english), Numbers(dutch));
    }

    [Fact]
    public void The_page_of_a_check_has_its_title()
    {
        using var spoken = Language.Dutch.Speak();
        Assert.All(AllChecks.List, check => Assert.Equal(check.Title, HelpText.TitleOf(HelpText.OfCheck(check.Id))));
    }

    [Fact]
    public void A_page_that_is_not_translated_is_read_in_English()
    {
        Assert.False(HelpText.Has("Workbench", Language.English)); // the English ones are the pages themselves
        Assert.NotEmpty(HelpText.Of("Workbench"));
    }

    private static int Count(IReadOnlyList<TextLine> lines, Tone tone) => lines.Count(line => line.Runs[0].Tone == tone);

    private static IEnumerable<string> Numbers(IReadOnlyList<TextLine> lines)
        => lines.SelectMany(line => Number().Matches(line.Text)).Select(number => number.Value.Replace(',', '.').TrimEnd('.')).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"\d[\d.,]*")]
    private static partial Regex Number();
}
