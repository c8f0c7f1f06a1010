using BuildLog.Sheet.Fonts;
using BuildLog.Sheet.Photos;

namespace BuildLog.Sheet.Drawing;

/// <summary>The seam between layout and renderer: a page is a plain list of these, in painting and reading order.</summary>
internal abstract record Operation;

/// <summary>A run of text in one face, set from its baseline's left end.</summary>
internal sealed record DrawText(double X, double Baseline, FontFace Face, string Text, double Size, Colour Colour) : Operation
{
    /// <summary>Where the ink ends.</summary>
    public double Right => X + Face.Width(Text.TrimEnd(' '), Size);
}

internal sealed record DrawBox(Box Box, Colour? Fill, Stroke? Line) : Operation;

/// <summary>A line through the points, open.</summary>
internal sealed record DrawLine(IReadOnlyList<PagePoint> Points, Stroke Line) : Operation;

/// <summary>A photo that fills a box of its own shape.</summary>
internal sealed record DrawPhoto(Box Box, PreparedPhoto Photo) : Operation;

internal sealed record BeginTag(TagInfo Info) : Operation;

internal sealed record EndTag : Operation
{
    public static readonly EndTag Instance = new();
}

/// <summary>An entry of the file's outline, pointing at a height on this page; level 0 is outermost.</summary>
internal sealed record Bookmark(int Level, string Title, double Y) : Operation;
