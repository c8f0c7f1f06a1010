using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Workbench;

/// <summary>A page that is a list with the text of its chosen row.</summary>
internal abstract class ListPage : VehiclePage
{
    private readonly ListAndText content = new() { Width = Dim.Fill(), Height = Dim.Fill() };
    private TableText? table;

    protected ListPage(string helpPage, string title, string whenEmpty)
        : base(helpPage, title)
    {
        WhenEmpty = whenEmpty;
        content.List.RowPicked += (_, _) => AskFor(Key.Enter);
        Add(content);
    }

    public override TableText? Table => table;

    public override void GoToBeginning() => content.List.SetFocus();

    /// <summary>Index of the chosen row; 0 in an empty list.</summary>
    protected int Row => content.List.Row;

    /// <summary>Said instead of rows while there are none.</summary>
    protected string WhenEmpty
    {
        get => content.List.WhenEmpty;
        set => content.List.WhenEmpty = value;
    }

    /// <summary>Shows rows, and says how the text of a row is made for a width; <paramref name="at"/> is chosen then, or the row that was.</summary>
    protected void Show<T>(IReadOnlyList<RowColumn> columns, IReadOnlyList<T> rows, Func<T, TextRun[]> cells, Func<T, int, IReadOnlyList<TextLine>> text, bool fromTop, int? at = null)
    {
        IReadOnlyList<TextRun[]> runs = [.. rows.Select(cells)];
        table = new([.. columns.Select(column => column.Heading)], [.. runs.Select(row => row.Select(run => run.Text).ToArray())]);
        content.Show(columns, runs, (row, width) => text(rows[row], width), fromTop ? 0 : at);
    }

    private void AskFor(Key key)
    {
        if (Acts.FirstOrDefault(act => act.Key == key) is { } act) Ask(act);
    }
}
