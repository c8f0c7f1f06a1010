using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>A list of rows under headings, with one chosen row. Draws only what is visible.</summary>
internal sealed class RowList : View
{
    private IReadOnlyList<RowColumn> columns = [];
    private IReadOnlyList<IReadOnlyList<TextRun>> rows = [];
    private int top;

    public RowList()
    {
        CanFocus = true;
        AddCommand(Command.Up, () => MoveTo(Row - 1));
        AddCommand(Command.Down, () => MoveTo(Row + 1));
        AddCommand(Command.PageUp, () => MoveTo(Row - PageRows));
        AddCommand(Command.PageDown, () => MoveTo(Row + PageRows));
        AddCommand(Command.Start, () => MoveTo(0));
        AddCommand(Command.End, () => MoveTo(int.MaxValue));
        AddCommand(Command.Accept, Pick);
        this.BindMoves();
    }

    /// <summary>Another row has been chosen, by key or mouse.</summary>
    public event EventHandler? RowChosen;

    /// <summary>Enter or a double click on the chosen row.</summary>
    public event EventHandler? RowPicked;

    /// <summary>Index of the chosen row; 0 in an empty list.</summary>
    public int Row { get; private set; }

    /// <summary>Said instead of rows while there are none.</summary>
    public string WhenEmpty { get; set; } = "";

    private int FirstRow => rows.Count > 0 && columns.Any(column => column.Heading.Length > 0) ? 1 : 0;

    private int PageRows => Math.Max(1, Viewport.Height - FirstRow);

    /// <summary>Puts new rows in; the chosen row stays where it is as far as there are rows.</summary>
    public void Show(IReadOnlyList<RowColumn> newColumns, IReadOnlyList<IReadOnlyList<TextRun>> newRows, int? row = null)
    {
        columns = newColumns;
        rows = newRows;
        Choose(row ?? Row);
        SetNeedsDraw();
    }

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        KeepRowInView();
        var width = Viewport.Width;
        var shown = columns.Select((column, index) => (column, index)).Where(c => width >= c.column.FromWidth && width < c.column.BelowWidth).ToList();
        var widths = Widths(shown.ConvertAll(c => c.column), width);

        if (FirstRow == 1)
        {
            var headings = shown.Select((c, i) => TextFit.Exactly(c.column.Heading, widths[i], c.column.Right));
            this.Paint(0, 0, TextFit.Exactly(" " + string.Join(' ', headings), width), Tone.Quiet);
        }

        for (var y = FirstRow; y < Viewport.Height; y++)
        {
            var row = top + y - FirstRow;
            if (row >= rows.Count)
            {
                PaintBelow(y, width);
                break;
            }

            var runs = new List<TextRun>(shown.Count * 2);
            runs.Add(new TextRun(row == Row ? "›" : " "));
            for (var i = 0; i < shown.Count; i++)
            {
                var cell = rows[row][shown[i].index];
                runs.Add(cell with { Text = TextFit.Exactly(cell.Text, widths[i], shown[i].column.Right) + " " });
            }

            if (row == Row) PaintChosen(y, width, string.Concat(runs.Select(run => run.Text)));
            else this.Paint(0, y, width, new TextLine(runs));
        }

        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is not { } at || !(mouse.IsSingleClicked || mouse.IsDoubleClicked)) return base.OnMouseEvent(mouse);
        SetFocus();
        var row = top + at.Y - FirstRow;
        if (at.Y < FirstRow || row >= rows.Count) return true;
        MoveTo(row);
        if (mouse.IsDoubleClicked) Pick();
        return true;
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView) => SetNeedsDraw();

    private static int[] Widths(List<RowColumn> shown, int width)
    {
        var free = width - 1 - shown.Sum(column => column.Width) - shown.Count;
        var fillers = Math.Max(1, shown.Count(column => column.Width == 0));
        return [.. shown.Select(column => column.Width > 0 ? column.Width : Math.Max(0, free / fillers))];
    }

    private void PaintChosen(int y, int width, string text) =>
        this.Paint(0, y, TextFit.Exactly(text, width), HasFocus ? Theme.Palette.Cursor : Theme.Palette.Chosen);

    private void PaintBelow(int y, int width)
    {
        this.PaintEmptyRows(y);
        if (rows.Count > 0) return;
        foreach (var line in WhenEmpty.Split('\n').SelectMany(each => TextFit.Wrap(each, width - 2))) this.Paint(1, y++, width - 1, TextLine.Of(line, Tone.Quiet));
    }

    private bool MoveTo(int row)
    {
        var before = Row;
        Choose(row);
        SetNeedsDraw();
        if (Row != before) RowChosen?.Invoke(this, EventArgs.Empty);
        return true;
    }

    private bool? Pick()
    {
        if (rows.Count > 0) RowPicked?.Invoke(this, EventArgs.Empty);
        return true;
    }

    private void Choose(int row) => Row = Math.Clamp(row, 0, Math.Max(0, rows.Count - 1));

    private void KeepRowInView()
    {
        if (Row < top) top = Row;
        if (Row >= top + PageRows) top = Row - PageRows + 1;
        top = Math.Clamp(top, 0, Math.Max(0, rows.Count - PageRows));
    }
}
