using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

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

    /// <summary>The plot that fits into a view; null where there is no room for one.</summary>
    public static ChartAxes? In(View view)
    {
        var (columns, rows) = (view.Viewport.Width - Left - 1, view.Viewport.Height - Above - Below);
        return columns < 20 || rows < 3 ? null : new(columns, rows);
    }

    public int Columns => columns;

    public int Rows => rows;

    /// <summary>Where a part of the way across lies, in cells of the view.</summary>
    public int X(double part) => Left + 1 + (int)Math.Round(part * (columns - 1));

    /// <summary>Where a part of the way up lies, in rows of the view.</summary>
    public int Y(double part) => Above + (int)Math.Round((1 - part) * (rows - 1));

    public void PaintDots(View view, BrailleDots dots)
    {
        for (var y = 0; y < rows; y++) view.Paint(Left + 1, Above + y, dots.Row(y), Tone.Plain);
    }

    public void PaintUp(View view, double top, string heading)
    {
        var step = NiceStep(top, Math.Max(3, rows / 2.0));
        for (var y = 0; y < rows; y++) view.Paint(Left, Above + y, "│", Tone.Quiet);
        view.Paint(0, 0, heading, Tone.Quiet);
        for (var value = step; value <= top; value += step) view.Paint(0, Y(value / top), Number(value, step).PadLeft(Left - 1) + " ┤", Tone.Quiet);
    }

    public void PaintAcross(View view, double top, string unit)
    {
        view.Paint(Left, Above + rows, "└" + new string('─', columns), Tone.Quiet);
        var numbers = new string(' ', columns).ToCharArray();
        var step = NiceStep(top, columns / 7.0);
        var free = 0;
        for (var value = step; value <= top; value += step)
        {
            var number = Number(value, step);
            var isLast = value + step > top;
            var text = isLast ? $"{number} {unit}" : number;
            var x = Math.Min(X(value / top) - Left - 1 - (number.Length / 2), columns - text.Length);
            if (isLast && x < free) (text, x) = (unit, columns - unit.Length); // its number would stand on the one before
            text.CopyTo(0, numbers, x, text.Length);
            free = x + text.Length + 1;
        }

        view.Paint(Left + 1, Above + rows + 1, new string(numbers), Tone.Quiet);
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
