namespace BuildLog.Tui.Workbench;

/// <summary>Braille cells: two dots across and four down in each.</summary>
internal sealed class BrailleDots(int columns, int rows)
{
    /// <summary>Dots across a cell.</summary>
    public const int Across = 2;

    /// <summary>Dots down a cell.</summary>
    public const int Down = 4;

    private const int DotsApart = 4;

    private readonly byte[] cells = new byte[columns * rows];

    /// <summary>Sets the dot nearest to a point; x and y run from 0 at the lower left to 1.</summary>
    public void Plot(double x, double y)
    {
        var (column, row) = (Dot(x, columns * Across), Dot(1 - y, rows * Down));
        if (column < 0 || row < 0 || column >= columns * Across || row >= rows * Down) return;
        cells[(row / Down * columns) + (column / Across)] |= Bit(column % Across, row % Down);
    }

    /// <summary>Which of so many dots in a line lies at a part of the way along it.</summary>
    public static int Dot(double part, int dots) => (int)Math.Round(part * (dots - 1));

    /// <summary>A straight line between two points.</summary>
    public void Line(double fromX, double fromY, double toX, double toY)
    {
        var steps = Math.Max(columns * Across, rows * Down) * 2;
        for (var i = 0; i <= steps; i++)
        {
            var part = (double)i / steps;
            Plot(fromX + ((toX - fromX) * part), fromY + ((toY - fromY) * part));
        }
    }

    /// <summary>Single dots along a line through all the points, so far apart that it is no line.</summary>
    public void Dotted(IReadOnlyList<(double X, double Y)> points)
    {
        var toNext = 0.0; // of the way to the next dot, left over from the stretch before
        foreach (var (from, to) in points.Zip(points.Skip(1)))
        {
            var length = Math.Max(Math.Abs(to.X - from.X) * columns * Across, Math.Abs(to.Y - from.Y) * rows * Down);
            for (; toNext <= length && length > 0; toNext += DotsApart) Plot(from.X + ((to.X - from.X) * toNext / length), from.Y + ((to.Y - from.Y) * toNext / length));
            toNext -= length;
        }
    }

    /// <summary>One row of cells as text, empty cells as spaces.</summary>
    public string Row(int row) =>
        string.Concat(cells.AsSpan(row * columns, columns).ToArray().Select(dots => dots == 0 ? ' ' : (char)(0x2800 + dots)));

    // The lowest pair of dots was added to the script later and has the two highest bits.
    private static byte Bit(int across, int down) => (byte)(down == 3 ? 0x40 << across : 1 << (down + (across * 3)));
}
