using BuildLog.Sheet.Charts;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Regions;

namespace BuildLog.Sheet.Papers.Comparisons;

/// <summary>The comparison: matters down, options across.</summary>
internal static class OptionsComparedPaper
{
    private const int Fewest = 2;
    private const int Most = 4;

    public static DrawnDocument Draw(OptionsCompared compared)
    {
        if (compared.Options.Count is < Fewest or > Most)
            throw new ArgumentException($"A comparison has {Fewest} to {Most} options beside each other, not {compared.Options.Count}.", nameof(compared));

        return PlainPaper.Draw(compared, Spoken("options compared"),
        [
            new Panel(new Paragraph(Spoken("What is wanted"), TypeScale.Label) { KeepWithNext = true }, Goal(compared.Goal)) { SpaceBefore = 8 },
            new Section(Spoken("The options"), OptionsRegion.TableOf(new(compared.Options, compared.Rows))),
            .. compared.Map is { } map ? [new Section(Spoken("Axle against tyre"), new Picture(RegionDrawing.HeightOf(map), RegionDrawing.Of(map))) { KeepTogether = true }] : (Block[])[],
            .. compared.Notes.Count == 0 ? (Block[])[] : [new Section(Spoken("What this rests on"), new Bullets(compared.Notes, TypeScale.Body))],
        ]);
    }

    private static Paragraph Goal(string? goal)
    {
        var told = Missing.OrWords(goal, TypeScale.Strong);
        return new Paragraph(told.Text, told.Style);
    }
}
