using BuildLog.Tui.Forms;
using Terminal.Gui.App;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>A list to choose one of several from.</summary>
internal sealed class Chooser : Popup
{
    private readonly IReadOnlyList<ChoiceOption> options;
    private readonly IReadOnlyList<KeyHint> hints;
    private readonly RowList list = new() { X = 1, Width = Dim.Fill(1), Height = Dim.Fill(1), WhenEmpty = Spoken("Nothing to choose from.") };

    private Chooser(string title, IReadOnlyList<ChoiceOption> options, string? current, string? helpPage)
        : base(title)
    {
        this.options = options;
        HelpPage = helpPage;
        KeyHint[] help = helpPage is null ? [] : [new("F1", Spoken("help"))];
        hints = [new("↑↓", Spoken("move")), new("Enter", Spoken("choose")), .. help, new("Esc", Spoken("leave as it is"))];
        var at = options.Select((option, index) => (option, index)).FirstOrDefault(o => o.option.Value == current).index;
        list.Show([new RowColumn("")], [.. options.Select(option => new[] { new TextRun(option.Words) })], at);
        list.RowPicked += (_, _) =>
        {
            Chosen = options[list.Row].Value;
            App?.RequestStop(this);
        };
        Add(list);
        ShowKeys([.. hints]);
    }

    protected override int WantedHeight => Math.Max(1, options.Count) + 4;

    protected override int WantedWidth => Math.Max(KeyLine.WidthOf(hints) + 2, options.Select(option => TextFit.Width(option.Words)).DefaultIfEmpty(0).Max() + 8);

    protected override string? HelpPage { get; }

    private string? Chosen { get; set; }

    public static string? Choose(IApplication app, string title, IReadOnlyList<ChoiceOption> options, string? current = null, string? helpPage = null)
    {
        using var chooser = new Chooser(title, options, current, helpPage);
        app.Run(chooser);
        return chooser.Chosen;
    }
}
