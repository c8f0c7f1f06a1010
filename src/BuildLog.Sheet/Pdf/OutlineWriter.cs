using BuildLog.Sheet.Drawing;
using PdfSharp.Pdf;

namespace BuildLog.Sheet.Pdf;

/// <summary>The file's bookmarks: level 0 outermost, deeper ones under the last of level 0.</summary>
internal sealed class OutlineWriter(PdfDocument pdf)
{
    private PdfOutlineCollection? inner;

    public void Add(Bookmark bookmark, PdfPage page, double pageHeight)
    {
        var entry = new PdfOutline(bookmark.Title, page, true)
        {
            PageDestinationType = PdfPageDestinationType.Xyz,
            Left = 0,
            Top = pageHeight - bookmark.Y,
        };

        if (bookmark.Level > 0 && inner is not null)
        {
            inner.Add(entry);
            return;
        }

        pdf.Outlines.Add(entry);
        inner = entry.Outlines;
    }
}
