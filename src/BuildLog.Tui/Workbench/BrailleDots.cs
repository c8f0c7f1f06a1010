namespace BuildLog.Tui.Workbench;

/// <summary>Braille cells: two dots across and four down in each.</summary>
internal sealed class BrailleDots(int columns, int rows)
{
    private const int DotsApart = 4;

    private readonly byte[] cells = new byte[columns * rows];

    /// <summary>Sets the dot nearest to a point; x and y run from 0 at the lower left to 1.</summary>
    public void Plot(double x, double y)
    {
        var column = (int)Math.Round(x * ((columns * 2) - 1));
        var row = (int)Math.Round((1 - y) * ((rows * 4) - 1));
        if (column < 0 || row < 0 || column >= columns * 2 || row >= rows * 4) return;
        cells[(row / 4 * columns) + (column / 2)] |= Bit(column % 2, row % 4);
    }

    /// <summary>A straight line between two points.</summary>
    public void Line(double fromX, double fromY, double toX, double toY) => Along(fromX, fromY, toX, toY, Math.Max(columns * 2, rows * 4) * 2);

    /// <summary>The same as single dots, four apart.</summary>
    public void Dotted(double fromX, double fromY, double toX, double toY)
        => Along(fromX, fromY, toX, toY, (int)Math.Max(Math.Abs(toX - fromX) * columns * 2, Math.Abs(toY - fromY) * rows * 4) / DotsApart);

    private void Along(double fromX, double fromY, double toX, double toY, int steps)
    {
        for (var i = 0; i <= steps; i++)
        {
            var part = steps == 0 ? 0 : (double)i / steps;
            Plot(fromX + ((toX - fromX) * part), fromY + ((toY - fromY) * part));
        }
    }

    /// <summary>One row of cells as text, empty cells as spaces.</summary>
    public string Row(int row) =>
        string.Concat(cells.AsSpan(row * columns, columns).ToArray().Select(dots => dots == 0 ? ' ' : (char)(0x2800 + dots)));

    // The lowest pair of dots was added to the script later and has the two highest bits.
    private static byte Bit(int across, int down) => (byte)(down == 3 ? 0x40 << across : 1 << (down + (across * 3)));
}
