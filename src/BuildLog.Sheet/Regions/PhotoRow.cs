using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;
using BuildLog.Sheet.Photos;

namespace BuildLog.Sheet.Regions;

/// <summary>Photos beside each other with their captions.</summary>
internal sealed class PhotoRow(IReadOnlyList<SheetPhoto> photos, Album album, int columns) : Block
{
    private const double Gap = 12;
    private const double CaptionGap = 3;
    private const int MostCaptionLines = 3;

    public override IEnumerable<FlowItem> Items(double width)
    {
        var each = (width - Gap * (columns - 1)) / columns;
        var height = photos.Max(photo => HeightOf(photo, each));
        var captions = photos.Select(photo => LineBreaker.Lines(CaptionOf(photo), TypeScale.Label, each, MostCaptionLines)).ToList();
        var captionHeight = captions.Max(lines => lines.Count) * TypeScale.Label.LineHeight;
        yield return new FlowItem(height + CaptionGap + captionHeight, (pen, x, y) =>
        {
            foreach (var (i, photo) in photos.Index()) Draw(pen, new Box(x + i * (each + Gap), y, each, height), photo, captions[i]);
        })
        {
            SpaceBefore = SpaceBefore,
        };
    }

    private void Draw(Pen pen, Box box, SheetPhoto photo, IReadOnlyList<string> caption)
    {
        var words = CaptionOf(photo);
        if (album.PrintOf(photo) is { } print) new Plate(Spoken($"Photo: {PlainText.Line(words)}"), (at, place) => at.Photo(place, print)).Place(pen, box);
        else NamePlate.Place(pen, box, photo.Name);

        pen.Tagged(new TagInfo(Tag.P), () =>
        {
            foreach (var (i, line) in caption.Index())
                pen.Text(box.X, box.Bottom + CaptionGap + i * TypeScale.Label.LineHeight + TypeScale.Label.BaselineDrop, line, TypeScale.Label, Align.Centre, box.Width);
        });
    }

    /// <summary>The height at full width, but no more than the album's.</summary>
    private double HeightOf(SheetPhoto photo, double width) =>
        album.PrintOf(photo) is { } print ? Math.Min(Album.HalfHeight, width * print.Height / print.Width) : NamePlate.Height;

    private static string CaptionOf(SheetPhoto photo)
    {
        var told = string.IsNullOrWhiteSpace(photo.Caption) ? photo.Name : photo.Caption;
        return photo.When switch
        {
            PhotoMoment.Before => Spoken($"Before: {told}"),
            PhotoMoment.After => Spoken($"After: {told}"),
            _ => told,
        };
    }
}
