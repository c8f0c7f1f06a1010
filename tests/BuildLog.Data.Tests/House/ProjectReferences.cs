using System.Xml.Linq;
using Xunit;

namespace BuildLog.Data.Tests.House;

/// <summary>Who may know whom. When an arrow turns round, this names it.</summary>
public sealed class ProjectReferences
{
    [Theory]
    [InlineData("src/BuildLog.Gearing", "")]
    [InlineData("src/BuildLog.Data", "BuildLog.Gearing")]
    [InlineData("src/BuildLog.Sheet", "BuildLog.Gearing")]
    [InlineData("src/BuildLog.Tui", "BuildLog.Data, BuildLog.DemoData, BuildLog.Gearing, BuildLog.Sheet")]
    [InlineData("demo-data", "BuildLog.Data, BuildLog.Gearing")]
    public void Point_one_way(string project, string mayKnow)
    {
        var allowed = mayKnow.Split(", ", StringSplitOptions.RemoveEmptyEntries);
        Assert.Empty(Known(project).Except(allowed));
    }

    [Fact]
    public void Cover_every_project_outside_the_tests()
    {
        var projects = Directory.GetFiles(Root, "*.csproj", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Root, Path.GetDirectoryName(path)!).Replace('\\', '/'))
            .Where(path => !path.StartsWith("tests/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal);
        Assert.Equal(["demo-data", "src/BuildLog.Data", "src/BuildLog.Gearing", "src/BuildLog.Sheet", "src/BuildLog.Tui"], projects);
    }

    [Fact]
    public void Lead_out_of_gearing_to_numbers_only()
        => Assert.Equal(["MathNet.Numerics", "UnitsNet"], Project("src/BuildLog.Gearing").Descendants("PackageReference").Select(reference => (string)reference.Attribute("Include")!).Order(StringComparer.Ordinal));

    private static string Root
    {
        get
        {
            var folder = AppContext.BaseDirectory;
            while (!File.Exists(Path.Combine(folder, "BuildLog.sln"))) folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("BuildLog.sln is not above the tests.");
            return folder;
        }
    }

    private static XDocument Project(string folder) => XDocument.Load(Directory.GetFiles(Path.Combine(Root, folder), "*.csproj").Single());

    private static IEnumerable<string> Known(string project)
        => Project(project).Descendants("ProjectReference").Select(reference => Path.GetFileNameWithoutExtension(((string)reference.Attribute("Include")!).Replace('\\', '/')));
}
