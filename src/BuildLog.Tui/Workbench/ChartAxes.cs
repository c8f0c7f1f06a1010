using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The two axes of a chart in characters: round numbers up the left and along the bottom.</summary>
/// <param name="columns">Cells of the plot across.</param>
/// <param name="rows">Cells of the plot down.</param>
internal sealed class ChartAxes(int columns, int rows)
{
    /// <summary>Cells left of the plot: "4000 ┤".</summary>
    public const int Left = 6;

    /// <summary>Rows above the plot, for names.</summary>
    public const int Above = 1;

    /// <summary>Rows below the plot: the line and its numbers.</summary>
    public const int Below = 2;

    /// <summary>The plot that fits into so many cells; null where there is no room for one.</summary>
    public static ChartAxes? In(int width, int height)
    {
        var (columns, rows) = (width - Left - 1, height - Above - Below);
        return columns < 20 || rows < 3 ? null : new(columns, rows);
    }

    public int Columns => columns;

    public int Rows => rows;

    /// <summary>The column of the chart whose cells hold the dots at a part of the way across.</summary>
    public int X(double part) => Left + 1 + (BrailleDots.Dot(part, columns * BrailleDots.Across) / BrailleDots.Across);

    /// <summary>The row of the chart whose cells hold the dots at a part of the way up.</summary>
    public int Y(double part) => Above + (BrailleDots.Dot(1 - part, rows * BrailleDots.Down) / BrailleDots.Down);

    public void PutDots(ChartCells cells, BrailleDots dots)
    {
        for (var y = 0; y < rows; y++)
        {
            foreach (var (x, sign) in dots.Row(y).Index().Where(cell => cell.Item != ' ')) cells.Put(Left + 1 + x, Above + y, sign.ToString(), Tone.Plain);
        }
    }

    /// <param name="cells">Where to.</param>
    /// <param name="low">Zero, or below it: then zero has a line of its own.</param>
    /// <param name="top">What the highest row stands for.</param>
    /// <param name="heading">What stands over the axis.</param>
    public void PutUp(ChartCells cells, double low, double top, string heading)
    {
        var step = NiceStep(top - low, Math.Max(3, rows / 2.0));
        for (var y = 0; y < rows; y++) cells.Put(Left, Above + y, "│", Tone.Quiet);
        cells.Put(0, 0, heading, Tone.Quiet);
        if (low < 0) cells.Put(Left + 1, Y(-low / (top - low)), new string('─', columns), Tone.Quiet);
        for (var k = (int)Math.Ceiling(low / step); k * step <= top; k++)
        {
            if (k != 0 || low < 0) cells.Put(0, Y(((k * step) - low) / (top - low)), Number(k * step, step).PadLeft(Left - 1) + " ┤", Tone.Quiet);
        }
    }

    public void PutAcross(ChartCells cells, double top, string unit)
    {
        cells.Put(Left, Above + rows, "└" + new string('─', columns), Tone.Quiet);
        var numbers = new string(' ', columns).ToCharArray();
        var step = NiceStep(top, columns / 7.0);
        var free = 0;
        for (var value = step; value <= top; value += step)
        {
            var number = Number(value, step);
            var isLast = value + step > top;
            var text = isLast ? $"{number} {unit}".TrimEnd() : number;
            var x = Math.Min(X(value / top) - Left - 1 - (number.Length / 2), columns - text.Length);
            if (isLast && x < free) (text, x) = (unit, columns - unit.Length); // its number would stand on the one before
            text.CopyTo(0, numbers, x, text.Length);
            free = x + text.Length + 1;
        }

        cells.Put(Left + 1, Above + rows + 1, new string(numbers), Tone.Quiet);
    }

    private static string Number(double value, double step) => value.ToString(step < 1 ? "0.0" : "0", Language.Spoken.Culture);

    /// <summary>The smallest of 1, 2, 5 times a power of ten that gives at most so many marks.</summary>
    private static double NiceStep(double top, double marks)
    {
        var rough = top / Math.Max(1, marks);
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return (rough / power) switch
        {
            <= 1 => power,
            <= 2 => 2 * power,
            <= 5 => 5 * power,
            _ => 10 * power,
        };
    }
}
