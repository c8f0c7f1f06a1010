using BuildLog.Tui.Shell;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>A list with the text of its chosen row: beside it where both have room and no column or word of the list is lost by it, else below.</summary>
internal sealed class ListAndText : View
{
    private const int SideBySideFrom = 100;
    private const int LeastBesideList = 54;
    private const int Gap = 2;
    private const int RowsForText = 13;

    private readonly TextPage text = new() { Width = Dim.Fill(), Height = Dim.Fill() };
    private Func<int, int, IReadOnlyList<TextLine>> textOfRow = (_, _) => [];
    private int rows;

    public ListAndText()
    {
        CanFocus = true;
        List.RowChosen += (_, _) => ShowText();
        Add(List, text);
        SubViewLayout += (_, _) => Arrange();
        FrameChanged += (_, _) => ShowText();
    }

    public RowList List { get; } = new();

    /// <summary>Whether the text stays below a list that wants the whole width.</summary>
    public bool StaysBelow { get; init; }

    /// <summary>Shows rows, and says how the text of a row is made for a width.</summary>
    public void Show(IReadOnlyList<RowColumn> columns, IReadOnlyList<IReadOnlyList<TextRun>> newRows, Func<int, int, IReadOnlyList<TextLine>> textOf, int? row = null)
    {
        rows = newRows.Count;
        textOfRow = textOf;
        List.Show(columns, newRows, row);
        ShowText();
        SetNeedsLayout();
    }

    // List and text write every cell but the margin.
    protected override bool OnClearingViewport()
    {
        if (SideBySide) return base.OnClearingViewport();
        for (var y = text.Frame.Y; y < Viewport.Height; y++) this.Paint(0, y, " ", Tone.Plain);
        return true;
    }

    /// <summary>Rows that the text has.</summary>
    public int TextRows => SideBySide ? Viewport.Height : Viewport.Height - ListHeight;

    private bool SideBySide => !StaysBelow && rows > 0 && Viewport.Width >= SideBySideFrom && List.WidthWithoutCuts(Viewport.Width) <= WidestBeside;

    private int WidestBeside => Viewport.Width - LeastBesideList - Gap;

    private int ListWidth => Math.Max(List.WidthWithoutCuts(Viewport.Width), Viewport.Width * 2 / 5);

    private void Arrange()
    {
        List.EndsInRule = !SideBySide;
        text.Visible = rows > 0;
        if (SideBySide)
        {
            List.Width = ListWidth;
            List.Height = Dim.Fill();
            text.X = ListWidth + Gap;
            text.Y = 0;
            return;
        }

        List.Width = Dim.Fill();
        List.Height = ListHeight;
        text.X = 1;
        text.Y = ListHeight;
    }

    // The list gets what it needs, but leaves the text at least as much, or what is enough for it.
    private int ListHeight
    {
        get
        {
            var most = Math.Max((Viewport.Height - 1) * 2 / 5, Viewport.Height - 1 - RowsForText);
            return rows == 0 ? Viewport.Height : Math.Clamp(rows + 1, 2, Math.Max(3, most)) + 1; // with its rule
        }
    }

    private void ShowText()
    {
        var width = SideBySide ? Viewport.Width - ListWidth - Gap - 1 : Viewport.Width - 3;
        text.Show(rows > 0 ? textOfRow(List.Row, width) : []);
    }
}
