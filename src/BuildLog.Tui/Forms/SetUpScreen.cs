using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Forms;

/// <summary>How the thing is set up for measuring: a drawing in characters and the steps, before anything is asked.</summary>
internal sealed class SetUpScreen : Popup
{
    private readonly List<TextLine> lines;
    private readonly TextPage page = new() { X = 1, Y = 1, Width = Dim.Fill(1), Height = Dim.Fill(2) };
    private readonly string helpPage;

    private SetUpScreen(string title, IReadOnlyList<string> setUp, string helpPage)
        : base($"Set up: {title}")
    {
        this.helpPage = helpPage;
        lines = [.. setUp.Select(line => TextLine.Of(line, line.StartsWith("  ", StringComparison.Ordinal) ? Tone.Strong : Tone.Plain))];
        page.Show(lines);
        Add(page);
        ShowKeys(new KeyHint("Enter", "set up, go on"), new KeyHint("↑↓", "scroll"), new KeyHint("F1", "help"), new KeyHint("Esc", "leave"));
        AddCommand(Command.Accept, Ready);
        KeyBindings.Add(Key.Enter, Command.Accept);
    }

    protected override int WantedHeight => TextPage.HeightOf(lines, InnerWidth - 3) + 5;

    private bool IsReady { get; set; }

    public static bool GoOn(IApplication app, string title, IReadOnlyList<string> setUp, string helpPage)
    {
        using var screen = new SetUpScreen(title, setUp, helpPage);
        app.Run(screen);
        return screen.IsReady;
    }

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (key != Key.F1) return base.OnKeyDownNotHandled(key);
        HelpScreen.Show(App!, helpPage);
        return true;
    }

    private bool? Ready()
    {
        IsReady = true;
        App?.RequestStop(this);
        return true;
    }
}
