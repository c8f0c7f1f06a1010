using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Preview;

/// <summary>What a page says in one place, before it is known how wide it is shown.</summary>
internal abstract record PreviewPiece
{
    public abstract IEnumerable<string> Lines(PreviewSetup setup);
}

internal sealed record PreviewHeading(string Text, char Underline) : PreviewPiece
{
    public override IEnumerable<string> Lines(PreviewSetup setup) => ["", .. TextWrap.Lines(Text, setup.Measure), new string(Underline, Math.Min(setup.Measure, Text.Length))];
}

/// <param name="Text">A paragraph, an item of a list, or what a picture shows in words.</param>
/// <param name="Further">Stands before every line but the first.</param>
internal sealed record PreviewText(string Text, string Further = "") : PreviewPiece
{
    public override IEnumerable<string> Lines(PreviewSetup setup) => TextWrap.Lines(Text, setup.Measure, "", Further);
}

internal sealed record PreviewTable(TextTable Table) : PreviewPiece
{
    public override IEnumerable<string> Lines(PreviewSetup setup) => Table.Lines(setup.Width);
}

/// <summary>Charts that stand together, each with its words.</summary>
internal sealed record PreviewCharts(IReadOnlyList<(Chart Chart, string Words)> Charts) : PreviewPiece
{
    public override IEnumerable<string> Lines(PreviewSetup setup) => setup.Draw is { } draw
        ? draw([.. Charts.Select(each => each.Chart)], setup.Width)
        : Charts.SelectMany(each => new PreviewText(each.Words, " ").Lines(setup));
}
