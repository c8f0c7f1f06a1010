using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers.Comparisons;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Options;

/// <summary>Two to four drivelines side by side, as a table for the terminal and as a page of the sheet.</summary>
internal static class ComparisonWords
{
    private const int MatterWidth = 20;
    private static string Unknown => Spoken("not known");

    public static IReadOnlyList<ComparedRow> Rows(OptionComparison compared, UnitSystem units) =>
    [
        .. compared.Figures.Select(row => new ComparedRow(row.What, [.. row.Values.Select(value => value is null ? null : Rounded.Converted(value, row.Unit, units.Shown(row.Unit)))])),
        new(Spoken("cost"), compared.Costs),
        new(Spoken("clash"), Counts(compared, counts => counts.Clash)),
        new(Spoken("open"), Counts(compared, counts => counts.Open)),
        new(Spoken("watch"), Counts(compared, counts => counts.Watch)),
        new(Spoken("fits"), Counts(compared, counts => counts.Fits)),
    ];

    /// <summary>The table in a width.</summary>
    public static IReadOnlyList<string> Table(OptionComparison compared, UnitSystem units, int width)
    {
        var each = ((width - MatterWidth) / compared.Names.Count) - 2;
        return
        [
            .. Lines("", compared.Names, each),
            new string('─', MatterWidth + (compared.Names.Count * (each + 2))),
            .. Rows(compared, units).SelectMany(row => Lines(row.Matter, [.. row.Values.Select(value => value ?? Unknown)], each)),
            .. Lacking(compared).SelectMany(lacking => TextFit.Wrap(lacking, width)),
        ];
    }

    public static OptionsCompared Page(VehicleOnBench bench, OptionComparison compared, UnitSystem units, MapWords? map, Paper paper, DateTimeOffset printed) => new()
    {
        Id = bench.Vehicle.Uid,
        Created = printed,
        Paper = paper,
        PrintedOn = Forms.DayText.InWords(printed),
        About = bench.Vehicle.Name,
        Goal = string.Join("; ", GoalWords.Wants(bench.Goals, units)),
        Options = compared.Names,
        Rows = Rows(compared, units),
        Map = map?.ToRegion(),
        Notes = [.. Lacking(compared), .. map is null ? [] : (string[])[MapWords.TakenAs], Spoken("Judged by every check against the goals as they are today; what is only listed or claimed is taken at its word.")],
    };

    public static ComparedOptions OnSheet(OptionComparison compared, UnitSystem units) => new(compared.Names, Rows(compared, units));

    // One reason often stands behind several figures.
    private static IEnumerable<string> Lacking(OptionComparison compared)
        => compared.Figures.Where(row => row.Lacking.Count > 0)
            .GroupBy(row => string.Join("; ", row.Lacking), row => row.What)
            .Select(alike => Spoken($"Not known, {string.Join(", ", alike)}: {alike.Key}."));

    private static IReadOnlyList<string?> Counts(OptionComparison compared, Func<VerdictCounts, int> of) => [.. compared.Counts.Select(counts => Rounded.Fixed(of(counts), 0))];

    // A cell that is too long goes on below itself.
    private static IEnumerable<string> Lines(string matter, IReadOnlyList<string> cells, int each)
    {
        List<List<string>> wrapped = [[.. TextFit.Wrap(matter, MatterWidth - 2)], .. cells.Select(cell => TextFit.Wrap(cell, each).ToList())];
        for (var k = 0; k < wrapped.Max(lines => lines.Count); k++)
            yield return string.Join("  ", wrapped.Select((lines, column) => TextFit.Exactly(lines.ElementAtOrDefault(k) ?? "", column == 0 ? MatterWidth - 2 : each))).TrimEnd();
    }
}
