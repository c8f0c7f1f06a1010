using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Photos;

/// <summary>The prints of one sheet, and why a photo has none.</summary>
internal sealed class Album
{
    // In points: what the title block and a half of the page's width leave.
    public const double TitleWidth = 168;
    public const double TitleHeight = 112;
    public const double HalfWidth = 246;
    public const double HalfHeight = 164;

    private readonly Dictionary<SheetPhoto, PreparedPhoto> prints = [];
    private readonly List<string> skipped = [];

    private Album() { }

    /// <summary>One sentence a photo that could not be printed.</summary>
    public IReadOnlyList<string> Skipped => skipped;

    public static Album Of(SheetContent sheet)
    {
        var album = new Album();
        if (sheet.TitlePhoto is { } title) album.Add(title, TitleWidth, TitleHeight);
        foreach (var photo in sheet.Photos) album.Add(photo, HalfWidth, HalfHeight);
        return album;
    }

    /// <summary>Null where there is none to print.</summary>
    public PreparedPhoto? PrintOf(SheetPhoto? photo) => photo is null ? null : prints.GetValueOrDefault(photo);

    private void Add(SheetPhoto photo, double width, double height)
    {
        var print = Darkroom.Print(photo, width, height);
        if (print.Understood(out var prepared)) prints[photo] = prepared;
        else skipped.Add(print.Refusal!.Message);
    }
}
