using System.Globalization;
using System.Text;
using BuildLog.Sheet.Drawing;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace BuildLog.Sheet.Pdf;

/// <summary>Draws the pages with PDFsharp, tagged, and lets <see cref="PdfFinisher"/> mend what PDFsharp leaves undone.</summary>
internal sealed class PdfSharpRenderer : IDocumentRenderer
{
    /// <remarks>PDFsharp writes dates in the calendar of the current culture, so for this while there is none.</remarks>
    public ReadOnlyMemory<byte> Render(DrawnDocument document)
    {
        var culture = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        try
        {
            return PdfFinisher.Finish(Save(document), document.Info);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    /// <summary>As PDFsharp leaves it, not yet finished: its streams plain, or packed as it does by itself.</summary>
    internal static ReadOnlyMemory<byte> Save(DrawnDocument document, bool packed = false)
    {
        EmbeddedFontResolver.Install();
        using var pdf = new PdfDocument();
        pdf.Options.CompressContentStreams = packed;
        pdf.Options.NoCompression = !packed;
        Describe(pdf, document.Info);
        pdf.SetPdfA();                                     // before anything is drawn
        var accessibility = UAManager.ForDocument(pdf);
        accessibility.SetDocumentLanguage(document.Info.Language);

        var tags = new TagWriter(accessibility.StructureBuilder);
        var outline = new OutlineWriter(pdf);
        using var tools = new DrawingTools();
        foreach (var page in document.Pages) DrawPage(pdf, page, tools, tags, outline);

        var saved = new MemoryStream();
        pdf.Save(saved, closeStream: false);
        return saved.GetBuffer().AsMemory(0, (int)saved.Length);
    }

    private static void Describe(PdfDocument pdf, DocumentInfo info)
    {
        pdf.Info.Title = info.Title;
        pdf.Info.Author = info.Author;
        pdf.Info.Subject = info.Subject;
        pdf.Info.Keywords = info.Keywords;
        pdf.Info.Creator = info.Creator;
        pdf.Info.CreationDate = DateTime.SpecifyKind(info.Created.UtcDateTime, DateTimeKind.Utc);
        pdf.Info.ModificationDate = pdf.Info.CreationDate;
        pdf.ViewerPreferences.DisplayDocTitle = true;
        pdf.PageMode = PdfPageMode.UseOutlines;

        var id = Encoding.Latin1.GetString(info.Id.ToByteArray());
        pdf.Internals.FirstDocumentID = id;
        pdf.Internals.SecondDocumentID = id;
    }

    private static void DrawPage(PdfDocument pdf, DrawnPage page, DrawingTools tools, TagWriter tags, OutlineWriter outline)
    {
        var sheet = pdf.AddPage();
        sheet.Width = XUnit.FromPoint(page.Width);
        sheet.Height = XUnit.FromPoint(page.Height);
        using var graphics = XGraphics.FromPdfPage(sheet);
        foreach (var operation in page.Operations)
        {
            switch (operation)
            {
                case DrawText text:
                    graphics.DrawString(text.Text, tools.FontOf(text), tools.BrushOf(text.Colour), text.X, text.Baseline);
                    break;
                case DrawBox box:
                    graphics.DrawRectangle(
                        box.Line is { } line ? DrawingTools.PenOf(line) : null,
                        box.Fill is { } fill ? tools.BrushOf(fill) : null,
                        Converted(box.Box));
                    break;
                case DrawLine drawn:
                    graphics.DrawLines(DrawingTools.PenOf(drawn.Line), [.. drawn.Points.Select(point => new XPoint(point.X, point.Y))]);
                    break;
                case DrawPhoto photo:
                    graphics.DrawImage(tools.PictureOf(photo.Photo), Converted(photo.Box));
                    break;
                case BeginTag tag:
                    tags.Begin(tag.Info, page.Height);
                    break;
                case EndTag:
                    tags.End();
                    break;
                case Bookmark bookmark:
                    outline.Add(bookmark, sheet, page.Height);
                    break;
                default:
                    throw new NotSupportedException($"The PDF renderer has no way to draw {operation.GetType().Name}.");
            }
        }

        tags.EndPage();
    }

    private static XRect Converted(Box box) => new(box.X, box.Y, box.Width, box.Height);
}
