using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>A list of rows under headings, with one chosen row. Draws only what is visible; its last line then says how many rows are not.</summary>
internal sealed class RowList : View
{
    private IReadOnlyList<RowColumn> columns = [];
    private IReadOnlyList<IReadOnlyList<TextRun>> rows = [];
    private int[] needed = []; // by each column, to cut nothing
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

    /// <summary>A rule that sets it apart from what follows is its last line, also where every row is in view.</summary>
    public bool EndsInRule { get; set; }

    private int FirstRow => rows.Count > 0 && columns.Any(column => column.Heading.Length > 0) ? 1 : 0;

    private int PageRows => Math.Max(1, Viewport.Height - FirstRow - (HasLastLine ? 1 : 0));

    private bool HasLastLine => Viewport.Height - FirstRow is >= 2 and var room && rows.Count > 0 && (EndsInRule || rows.Count > room);

    /// <summary>Puts new rows in; the chosen row stays where it is as far as there are rows.</summary>
    public void Show(IReadOnlyList<RowColumn> newColumns, IReadOnlyList<IReadOnlyList<TextRun>> newRows, int? row = null)
    {
        columns = newColumns;
        rows = newRows;
        needed = [.. columns.Select((column, c) => rows.Select(cells => TextFit.Width(cells[c].Text)).Append(TextFit.Width(column.Heading)).Max())];
        Choose(row ?? Row);
        SetNeedsDraw();
    }

    /// <summary>The width in which nothing is cut of the columns that <paramref name="atMost"/> cells show; it may be more than that.</summary>
    public int WidthWithoutCuts(int atMost)
    {
        var shown = Shown(atMost);
        return Math.Max(1 + shown.Sum(c => Math.Max(c.Column.Width, needed[c.Index]) + 1), shown.Select(c => c.Column.FromWidth).DefaultIfEmpty(0).Max());
    }

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        KeepRowInView();
        var width = Viewport.Width;
        var shown = Shown(width);
        var widths = Widths(shown, width);

        if (FirstRow == 1)
        {
            var headings = shown.Select((c, i) => TextFit.Exactly(c.Column.Heading, widths[i], c.Column.Right));
            this.Paint(0, 0, TextFit.Exactly(" " + string.Join(' ', headings), width), Tone.Quiet);
        }

        var end = HasLastLine ? Viewport.Height - 1 : Viewport.Height;
        for (var y = FirstRow; y < end; y++)
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
                var cell = rows[row][shown[i].Index];
                runs.Add(cell with { Text = TextFit.Exactly(cell.Text, widths[i], shown[i].Column.Right) + " " });
            }

            if (row == Row) PaintChosen(y, width, string.Concat(runs.Select(run => run.Text)));
            else this.Paint(0, y, width, new TextLine(runs));
        }

        if (HasLastLine) new OutOfView(top, rows.Count - top - PageRows).PaintRule(this, end);
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is not { } at || !(mouse.IsSingleClicked || mouse.IsDoubleClicked)) return base.OnMouseEvent(mouse);
        SetFocus();
        var row = top + at.Y - FirstRow;
        if (at.Y < FirstRow || at.Y >= FirstRow + PageRows || row >= rows.Count) return true;
        MoveTo(row);
        if (mouse.IsDoubleClicked) Pick();
        return true;
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView) => SetNeedsDraw();

    private List<ShownColumn> Shown(int width)
        => [.. columns.Select((column, index) => new ShownColumn(column, index)).Where(c => width >= c.Column.FromWidth && width < c.Column.BelowWidth)];

    // The column that takes the rest gives of it to those that would be cut: what it does not need, or all above half of the list.
    private int[] Widths(List<ShownColumn> shown, int width)
    {
        int[] widths = [.. shown.Select(c => c.Column.Width)];
        var filler = shown.FindIndex(c => c.Column.Width == 0);
        if (filler < 0) return widths;

        widths[filler] = Math.Max(0, width - 1 - widths.Sum() - shown.Count);
        var spare = Math.Max(0, widths[filler] - Math.Min(needed[shown[filler].Index], width / 2));
        for (var i = 0; i < shown.Count; i++)
        {
            var more = i == filler ? 0 : Math.Clamp(needed[shown[i].Index] - widths[i], 0, spare);
            widths[i] += more;
            widths[filler] -= more;
            spare -= more;
        }

        return widths;
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

    private readonly record struct ShownColumn(RowColumn Column, int Index);
}
