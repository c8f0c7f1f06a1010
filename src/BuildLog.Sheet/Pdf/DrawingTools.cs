using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Photos;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BuildLog.Sheet.Pdf;

/// <summary>PDFsharp's fonts, brushes, pens and pictures for our faces, colours and photos; all but pens are made once a document.</summary>
internal sealed class DrawingTools : IDisposable
{
    private static readonly XPdfFontOptions SubsetUnicode = new(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset);

    private readonly Dictionary<(string Face, double Size), XFont> fonts = [];
    private readonly Dictionary<Colour, XSolidBrush> brushes = [];
    private readonly Dictionary<PreparedPhoto, XImage> pictures = [];

    public XFont FontOf(DrawText text)
    {
        var key = (text.Face.Name, text.Size);
        if (!fonts.TryGetValue(key, out var font))
            fonts[key] = font = new XFont(text.Face.Name, text.Size, XFontStyleEx.Regular, SubsetUnicode);

        return font;
    }

    public XBrush BrushOf(Colour colour)
    {
        if (!brushes.TryGetValue(colour, out var brush)) brushes[colour] = brush = new XSolidBrush(Converted(colour));
        return brush;
    }

    public XImage PictureOf(PreparedPhoto photo)
    {
        if (!pictures.TryGetValue(photo, out var picture))
        {
            // An archive file may not ask the viewer to smooth a picture (ISO 19005-2, 6.2.8).
            pictures[photo] = picture = XImage.FromStream(new MemoryStream(photo.Jpeg));
            picture.Interpolate = false;
        }

        return picture;
    }

    public void Dispose()
    {
        foreach (var picture in pictures.Values) picture.Dispose();
    }

    public static XPen PenOf(Stroke stroke)
    {
        var pen = new XPen(Converted(stroke.Colour), stroke.Width) { LineJoin = XLineJoin.Round };
        if (stroke.Dash.Count > 0) pen.DashPattern = [.. stroke.Dash.Select(length => length / stroke.Width)];
        return pen;
    }

    private static XColor Converted(Colour colour) => XColor.FromArgb(colour.Red, colour.Green, colour.Blue);
}
