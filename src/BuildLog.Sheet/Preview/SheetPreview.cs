using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Preview;

/// <summary>What a paper will say, as text, page by page: the same pages that would be printed.</summary>
/// <param name="Pages">The pages in order.</param>
/// <param name="MissingSigns">Signs that the fonts could not print.</param>
/// <param name="SkippedPhotos">One sentence a photo that could not be printed.</param>
public sealed record SheetPreview(IReadOnlyList<PreviewPage> Pages, IReadOnlyList<MissingSign> MissingSigns, IReadOnlyList<string> SkippedPhotos)
{
    /// <summary>All pages below each other, each under a line with its number.</summary>
    public IEnumerable<string> Lines => Pages.SelectMany((page, i) => (IEnumerable<string>)
        [.. i == 0 ? (string[])[] : [""], Spoken($"──── page {page.Number} of {Pages.Count} ────"), "", .. page.Lines]);

    internal static SheetPreview Of(DrawnDocument document, int width, IReadOnlyList<string> skippedPhotos) =>
        new(PageAsText.Of(document, width), MissingSign.In(document), skippedPhotos);
}

/// <summary>One page as lines of text.</summary>
public sealed record PreviewPage(int Number, IReadOnlyList<string> Lines);
