using System.Text.Json;
using System.Text.RegularExpressions;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>docs/dependencies.md names what the lock file of the program names, and the fonts; packaging/README.md says how it is written.</summary>
public sealed partial class DependenciesTests
{
    [Fact]
    public void Every_package_and_font_stands_there_in_its_version_and_no_other()
    {
        var page = Row().Matches(Pages.Read("docs/dependencies.md")).Select(row => (Name: row.Groups[1].Value, Version: row.Groups[2].Value, Licence: row.Groups[3].Value)).ToList();
        using var locked = JsonDocument.Parse(Pages.Read("src/BuildLog.Tui/packages.lock.json"));
        var packages = locked.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(framework => framework.Value.EnumerateObject())
            .Where(package => package.Value.GetProperty("type").GetString() != "Project")
            .Select(package => $"{package.Name} {package.Value.GetProperty("resolved").GetString()}");
        var fonts = Directory.EnumerateFiles(Pages.Path("src/BuildLog.Sheet/Fonts/Files"), "*.ttf").Select(Path.GetFileName);

        Assert.All(page, row => Assert.DoesNotContain("not named", row.Licence, StringComparison.Ordinal));
        Assert.Equal(packages.Order(StringComparer.OrdinalIgnoreCase), page.Where(row => !IsFont(row.Name)).Select(row => $"{row.Name} {row.Version}").Order(StringComparer.OrdinalIgnoreCase), StringComparer.OrdinalIgnoreCase);
        Assert.Equal(fonts.Order(StringComparer.Ordinal), page.Select(row => row.Name).Where(IsFont).Order(StringComparer.Ordinal));
    }

    private static bool IsFont(string name) => name.EndsWith(".ttf", StringComparison.Ordinal);

    [GeneratedRegex(@"(?m)^\| (\S+) \| (\d\S*) \| (.+) \|$")]
    private static partial Regex Row();
}
