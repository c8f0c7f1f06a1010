using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Forms;

/// <summary>Step 1 of a form that sends someone under a vehicle: what must be true first, acknowledged by a key of its own.</summary>
internal sealed class CautionsScreen : Popup
{
    private readonly IReadOnlyList<TextLine> lines;
    private readonly TextPage page = new() { X = 1, Y = 1, Width = Dim.Fill(1), Height = Dim.Fill(2) };

    private readonly string helpPage;

    private CautionsScreen(string title, IReadOnlyList<string> cautions, string helpPage)
        : base($"Before you start: {title}")
    {
        this.helpPage = helpPage;
        lines = [.. cautions.Select((caution, i) => TextLine.Of(new TextRun($"{i + 1}. ", Tone.Heading), new TextRun(caution)))];
        page.Show(lines);
        Add(page);
        ShowKeys(new KeyHint("a", "all of this is so, go on"), new KeyHint("↑↓", "scroll"), new KeyHint("F1", "help"), new KeyHint("Esc", "leave"));
    }

    protected override int WantedHeight => TextPage.HeightOf(lines, InnerWidth - 3) + 5;

    private bool Acknowledged { get; set; }

    public static bool Acknowledge(IApplication app, string title, IReadOnlyList<string> cautions, string helpPage)
    {
        using var screen = new CautionsScreen(title, cautions, helpPage);
        app.Run(screen);
        return screen.Acknowledged;
    }

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (key == Key.F1)
        {
            HelpScreen.Show(App!, helpPage);
            return true;
        }

        if (key != (Key)'a') return base.OnKeyDownNotHandled(key);
        Acknowledged = true;
        App?.RequestStop(this);
        return true;
    }
}
