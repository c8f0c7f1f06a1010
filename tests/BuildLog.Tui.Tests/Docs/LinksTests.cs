using System.Text.RegularExpressions;

namespace BuildLog.Tui.Tests.Docs;

public sealed partial class LinksTests
{
    public static TheoryData<string> Names => [.. Pages.All];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_link_leads_to_a_file_or_folder_that_is_there(string page)
    {
        foreach (Match link in Link().Matches(Pages.Read(page)))
        {
            var target = Path.Combine(Path.GetDirectoryName(Pages.Path(page))!, link.Groups[1].Value);
            Assert.True(Path.Exists(target), $"{page} links to {link.Groups[1].Value}, which is not there.");
        }
    }

    [GeneratedRegex(@"\]\(([^)#:]+)\)")]
    private static partial Regex Link();
}
