using BuildLog.Tui.Forms;
using Terminal.Gui.App;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>A list to choose one of several from.</summary>
internal sealed class Chooser : Popup
{
    private readonly IReadOnlyList<ChoiceOption> options;
    private readonly RowList list = new() { X = 1, Width = Dim.Fill(1), Height = Dim.Fill(1), WhenEmpty = Spoken("Nothing to choose from.") };

    private Chooser(string title, IReadOnlyList<ChoiceOption> options, string? current)
        : base(title)
    {
        this.options = options;
        var at = options.Select((option, index) => (option, index)).FirstOrDefault(o => o.option.Value == current).index;
        list.Show([new RowColumn("")], [.. options.Select(option => new[] { new TextRun(option.Words) })], at);
        list.RowPicked += (_, _) =>
        {
            Chosen = options[list.Row].Value;
            App?.RequestStop(this);
        };
        Add(list);
        ShowKeys(new KeyHint("↑↓", Spoken("move")), new KeyHint("Enter", Spoken("choose")), new KeyHint("Esc", Spoken("leave as it is")));
    }

    protected override int WantedHeight => Math.Max(1, options.Count) + 4;

    protected override int WantedWidth => Math.Max(44, options.Select(option => TextFit.Width(option.Words)).DefaultIfEmpty(0).Max() + 8);

    private string? Chosen { get; set; }

    public static string? Choose(IApplication app, string title, IReadOnlyList<ChoiceOption> options, string? current = null)
    {
        using var chooser = new Chooser(title, options, current);
        app.Run(chooser);
        return chooser.Chosen;
    }
}
