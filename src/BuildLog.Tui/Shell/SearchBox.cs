using BuildLog.Tui.Forms;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>A list that narrows as one types; Enter takes the row under the cursor.</summary>
internal sealed class SearchBox : Popup
{
    private readonly Func<string, IReadOnlyList<SearchRow>> find;
    private readonly OneLineField typed = new() { X = 1, Width = Dim.Fill(1) };
    private readonly RowList list = new() { X = 1, Y = 1, Width = Dim.Fill(1), Height = Dim.Fill(1) };
    private readonly string whenEmpty;
    private readonly int nameWidth;
    private IReadOnlyList<SearchRow> rows = [];

    private SearchBox(string title, string whenEmpty, int nameWidth, Func<string, IReadOnlyList<SearchRow>> find, string? helpPage)
        : base(title)
    {
        HelpPage = helpPage;
        this.find = find;
        this.nameWidth = nameWidth;
        this.whenEmpty = whenEmpty;
        list.RowPicked += (_, _) => Take();
        typed.ValueChanged += (_, _) => ShowRows();
        typed.KeyDown += OnKey;
        Add(typed, list);
        ShowKeys([new("type", Spoken("narrow")), new("↑↓", Spoken("move")), new("Enter", Spoken("take")), .. helpPage is null ? Array.Empty<KeyHint>() : [new("F1", Spoken("help"))], new("Esc", Spoken("leave"))]);
        ShowRows();
    }

    protected override int WantedHeight => 22;

    protected override string? HelpPage { get; }

    private string? Taken { get; set; }

    /// <param name="whenEmpty">Said while nothing is typed, where nothing is offered then.</param>
    /// <param name="nameWidth">Cells of the first column.</param>
    /// <param name="find">The rows for what has been typed so far, which may be nothing.</param>
    /// <param name="helpPage">The help that F1 shows over it; null for none.</param>
    /// <returns>The value of the row that was taken; null when left.</returns>
    public static string? Ask(IApplication app, string title, string whenEmpty, int nameWidth, Func<string, IReadOnlyList<SearchRow>> find, string? helpPage = null)
    {
        using var box = new SearchBox(title, whenEmpty, nameWidth, find, helpPage);
        app.Run(box);
        return box.Taken;
    }

    // The field keeps the focus while the list is walked, so that typing can go on at any time.
    private void OnKey(object? sender, Key key)
    {
        if (key == Key.Enter) Take();
        else if (key == Key.CursorDown || key == Key.CursorUp || key == Key.PageDown || key == Key.PageUp) list.NewKeyDownEvent(key);
        else return;
        key.Handled = true;
    }

    private void Take()
    {
        if (rows.ElementAtOrDefault(list.Row) is not { } row) return;
        Taken = row.Value;
        App?.RequestStop(this);
    }

    private void ShowRows()
    {
        rows = find(typed.Text);
        list.WhenEmpty = typed.Text.Trim().Length == 0 ? whenEmpty : Spoken("Nothing is found by these words.");
        list.Show([new("", nameWidth), new("")], [.. rows.Select(row => new TextRun[] { new(row.Name, Tone.Strong), new(row.Says) })], row: 0);
    }
}

/// <summary>One row of a <see cref="SearchBox"/>.</summary>
/// <param name="Value">Handed back when it is taken.</param>
internal sealed record SearchRow(string Value, string Name, string Says);
