using BuildLog.Gearing.Tests.Published.Examples;
using Xunit;

namespace BuildLog.Gearing.Tests.Published;

public sealed class PublishedFiguresTests
{
    public static TheoryData<string> Names => [.. PublishedSets.All.Select(NameOf)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_engine_gives_what_is_printed(string name)
    {
        var set = PublishedSets.All.Single(set => NameOf(set) == name)();

        Assert.NotEmpty(set.Figures);
        Assert.All(set.Figures, figure => Assert.True(
            figure.Deviation <= figure.Tolerance,
            FormattableString.Invariant($"{figure.Name}: printed {figure.Printed:R}, computed {figure.Computed:R}, allowed ± {figure.Tolerance:G2}")));
    }

    // Rows A1 to H8; E4 stands in four lines.
    [Fact]
    public void The_driveline_examples_are_all_there()
    {
        var rows = new[] { WorkedExamples.Printed(), WorkedExamples.WorkedOut() }.SelectMany(set => set.Figures).Select(figure => figure.Name.Split(' ')[0]).ToList();
        var wanted = new[] { ("A", 12), ("B", 10), ("C", 6), ("D", 14), ("E", 12), ("G", 10), ("H", 8) }.SelectMany(group => Enumerable.Range(1, group.Item2).Select(row => $"{group.Item1}{row}"));

        Assert.Equal(75, rows.Count);
        Assert.Equal(wanted.Order(StringComparer.Ordinal), rows.Distinct().Order(StringComparer.Ordinal));
    }

    private static string NameOf(Func<PublishedSet> set) => $"{set.Method.DeclaringType!.Name}.{set.Method.Name}";
}
