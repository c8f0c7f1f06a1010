using System.Runtime.CompilerServices;
using Xunit;

namespace BuildLog.Gearing.Tests.Published;

public sealed class PublishedFiguresTests
{
    private const string Heading = "| what | source | standing | figures | largest relative deviation |";

    public static TheoryData<string> Names => [.. PublishedSets.All.Select(set => set.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_engine_gives_what_is_printed(string name)
    {
        var set = PublishedSets.All.Single(set => set.Name == name);

        Assert.NotEmpty(set.Figures);
        Assert.All(set.Figures, figure => Assert.True(
            figure.Deviation <= figure.Tolerance,
            FormattableString.Invariant($"{figure.Name}: printed {figure.Printed:R}, computed {figure.Computed:R}, allowed ± {figure.Tolerance:G2}")));
    }

    // Rows A1 to H8; E4 stands in four lines.
    [Fact]
    public void The_driveline_examples_are_all_there()
    {
        var rows = PublishedSets.All.Where(set => set.Name.StartsWith("Driveline examples", StringComparison.Ordinal)).SelectMany(set => set.Figures).Select(figure => figure.Name.Split(' ')[0]).ToList();
        var wanted = new[] { ("A", 12), ("B", 10), ("C", 6), ("D", 14), ("E", 12), ("G", 10), ("H", 8) }.SelectMany(group => Enumerable.Range(1, group.Item2).Select(row => $"{group.Item1}{row}"));

        Assert.Equal(75, rows.Count);
        Assert.Equal(wanted.Order(StringComparer.Ordinal), rows.Distinct().Order(StringComparer.Ordinal));
    }

    // With BUILDLOG_WRITE_PUBLISHED=1 the run writes the table; else it only compares.
    [Fact]
    public void The_readme_has_the_table_of_this_run()
    {
        string[] rows = [Heading, "|---|---|---|---:|---:|", .. PublishedSets.All.Select(set => set.Row)];
        if (Environment.GetEnvironmentVariable("BUILDLOG_WRITE_PUBLISHED") == "1") Write(rows);

        var lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Published", "README.md"));
        Assert.Equal(rows, lines.Where(line => line.StartsWith('|')));
    }

    private static void Write(string[] rows, [CallerFilePath] string here = "")
    {
        var source = Path.Combine(Path.GetDirectoryName(here)!, "README.md");
        string[] text = [.. File.ReadAllLines(source).TakeWhile(line => !line.StartsWith('|')), .. rows];
        File.WriteAllLines(source, text);
        File.WriteAllLines(Path.Combine(AppContext.BaseDirectory, "Published", "README.md"), text);
    }
}
