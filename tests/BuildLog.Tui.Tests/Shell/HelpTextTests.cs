using System.Text.RegularExpressions;
using BuildLog.Gearing.Languages;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Shell;

/// <summary>The help as F1 shows it.</summary>
public sealed partial class HelpTextTests
{
    public static TheoryData<string> Pages => [.. HelpText.Pages];

    // "*" beside a column, "2 * 3" in a formula and 5_a in a name are no marks.
    [Theory]
    [MemberData(nameof(Pages))]
    public void No_mark_of_the_written_page_is_shown(string page)
    {
        foreach (var language in Language.All)
        {
            using var spoken = language.Speak();
            Assert.DoesNotContain(HelpText.Of(page).Select(line => line.Text).Prepend(HelpText.TitleOf(page)), line => Mark().IsMatch(line));
        }
    }

    [Theory]
    [InlineData("*front axle for Haldor*", true)]
    [InlineData("a **strong** word", true)]
    [InlineData("### a heading", true)]
    [InlineData("`code`", true)]
    [InlineData("[a page](page.md)", true)]
    [InlineData("_so_ it is", true)]
    [InlineData("A column marked * is beyond the redline; two are marked * too", false)]
    [InlineData("  -   strike the plan", false)]
    public void A_mark_is_known(string line, bool isMark) => Assert.Equal(isMark, Mark().IsMatch(line));

    [Fact]
    public void Words_as_they_are_typed_stand_between_quotes()
        => Assert.Contains("such as 'front axle for Haldor': its window", HelpText.Of("Wanted")[0].Text, StringComparison.Ordinal);

    [Fact]
    public void A_sign_that_stands_alone_is_shown() => Assert.Contains(HelpText.Of("Speeds"), line => line.Text.Contains("marked * is", StringComparison.Ordinal));

    [GeneratedRegex(@"\*\S[^*]*\*|^#|`|\]\(|(?<!\w)_\w[^_]*_(?!\w)")]
    private static partial Regex Mark();
}
