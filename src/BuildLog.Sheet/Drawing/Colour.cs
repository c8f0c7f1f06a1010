namespace BuildLog.Sheet.Drawing;

internal readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    public static Colour Hex(int rgb) => new((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);

    public override string ToString() => $"#{Red:X2}{Green:X2}{Blue:X2}";
}

/// <summary>A drawn line; dash lengths in points, none for a solid line.</summary>
internal sealed record Stroke(Colour Colour, double Width, params IReadOnlyList<double> Dash);
