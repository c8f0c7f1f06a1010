using BuildLog.Sheet.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace BuildLog.Sheet.Pdf;

/// <summary>PDFsharp's fonts, brushes and pens for our faces and colours; fonts and brushes are made once a document.</summary>
internal sealed class DrawingTools
{
    private static readonly XPdfFontOptions SubsetUnicode = new(PdfFontEncoding.Unicode, PdfFontEmbedding.TryComputeSubset);

    private readonly Dictionary<(string Face, double Size), XFont> fonts = [];
    private readonly Dictionary<Colour, XSolidBrush> brushes = [];

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

    public static XPen PenOf(Stroke stroke)
    {
        var pen = new XPen(Converted(stroke.Colour), stroke.Width) { LineJoin = XLineJoin.Round };
        if (stroke.Dash.Count > 0) pen.DashPattern = [.. stroke.Dash.Select(length => length / stroke.Width)];
        return pen;
    }

    private static XColor Converted(Colour colour) => XColor.FromArgb(colour.Red, colour.Green, colour.Blue);
}
