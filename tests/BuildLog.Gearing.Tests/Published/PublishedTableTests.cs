using System.Runtime.CompilerServices;
using Xunit;

namespace BuildLog.Gearing.Tests.Published;

public sealed class PublishedTableTests
{
    private const string Heading = "| what | source | standing | figures | largest relative deviation |";

    // With BUILDLOG_WRITE_PUBLISHED=1 the run writes the table; else it only compares.
    [Fact]
    public void The_readme_has_the_table_of_this_run()
    {
        string[] rows = [Heading, "|---|---|---|---:|---:|", .. PublishedSets.All.Select(set => set().Row)];
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
