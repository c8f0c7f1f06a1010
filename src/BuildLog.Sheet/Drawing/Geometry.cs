namespace BuildLog.Sheet.Drawing;

/// <summary>A place on the page in points (1/72 in) from the top left corner, y downwards.</summary>
internal readonly record struct PagePoint(double X, double Y);

internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public bool Overlaps(Box other) =>
        X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;
}
