using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Forms;

/// <summary>A page that is read before a form asks anything: a key of its own goes on, Esc leaves.</summary>
internal abstract class BeforeFormScreen : Popup
{
    private readonly IReadOnlyList<TextLine> lines;
    private readonly TextPage page = new() { X = 1, Y = 1, Width = Dim.Fill(1), Height = Dim.Fill(2) };
    private readonly string helpPage;
    private bool goesOn;

    protected BeforeFormScreen(string title, IReadOnlyList<TextLine> lines, KeyHint onward, string helpPage)
        : base(title)
    {
        this.lines = lines;
        this.helpPage = helpPage;
        page.Show(lines);
        Add(page);
        ShowKeys(onward, new KeyHint("↑↓", Spoken("scroll")), new KeyHint("F1", Spoken("help")), new KeyHint("Esc", Spoken("leave")));
    }

    protected override string? HelpPage => helpPage;

    protected override int WantedHeight => TextPage.HeightOf(lines, InnerWidth - 3) + 5;

    /// <returns>Whether its key was pressed.</returns>
    protected static bool Run(IApplication app, BeforeFormScreen screen)
    {
        app.Run(screen);
        return screen.goesOn;
    }

    /// <summary>Goes on; where there is more to read first, to that.</summary>
    protected bool Onward()
    {
        if (!page.ShowsItsEnd)
        {
            page.InvokeCommand(Command.PageDown);
            return true;
        }

        goesOn = true;
        App?.RequestStop(this);
        return true;
    }
}
