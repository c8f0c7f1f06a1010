using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Preview;

/// <summary>What a paper will say, as text, page by page: the same pages that would be printed.</summary>
/// <param name="Pages">The pages in order.</param>
/// <param name="MissingSigns">Signs that the fonts could not print.</param>
/// <param name="SkippedPhotos">One sentence a photo that could not be printed.</param>
public sealed record SheetPreview(IReadOnlyList<PreviewPage> Pages, IReadOnlyList<MissingSign> MissingSigns, IReadOnlyList<string> SkippedPhotos)
{
    /// <summary>All pages below each other, each under a line with its number.</summary>
    public IEnumerable<string> Lines(PreviewSetup setup) => Pages.SelectMany((page, i) => (IEnumerable<string>)
        [.. i == 0 ? (string[])[] : [""], Spoken($"──── page {page.Number} of {Pages.Count} ────"), "", .. page.Lines(setup)]);

    internal static SheetPreview Of(DrawnDocument document, IReadOnlyList<string> skippedPhotos) =>
        new(PageAsText.Of(document), MissingSign.In(document), skippedPhotos);
}

/// <summary>One page, to be laid as lines of text at any width.</summary>
public sealed class PreviewPage
{
    private readonly IReadOnlyList<PreviewPiece> pieces;

    internal PreviewPage(int number, IReadOnlyList<PreviewPiece> pieces) => (Number, this.pieces) = (number, pieces);

    public int Number { get; }

    /// <summary>Its lines, none longer than the setup allows.</summary>
    public IReadOnlyList<string> Lines(PreviewSetup setup) => [.. pieces.SelectMany(piece => piece.Lines(setup)).SkipWhile(line => line.Length == 0)];
}
