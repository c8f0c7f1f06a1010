using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Forms;

/// <summary>Step 1 of a form that sends someone under a vehicle: what must be true first, acknowledged by a key of its own.</summary>
internal sealed class CautionsScreen : BeforeFormScreen
{
    private CautionsScreen(string title, IReadOnlyList<string> cautions, string helpPage)
        : base(Spoken($"Before you start: {title}"), [.. cautions.Select(Numbered)], new("a", Spoken("all of this is so, go on")), helpPage) { }

    public static bool Acknowledge(IApplication app, string title, IReadOnlyList<string> cautions, string helpPage)
    {
        using var screen = new CautionsScreen(title, cautions, helpPage);
        return Run(app, screen);
    }

    protected override bool OnKeyDownNotHandled(Key key) => key == (Key)'a' ? Onward() : base.OnKeyDownNotHandled(key);

    // Enter is pressed without reading; whoever acknowledges means to.
    protected override string WhyNothing(string key) => Spoken($"{key} does not say that all of this is so: a does, and Esc leaves.");

    private static TextLine Numbered(string caution, int i) => TextLine.Of(new TextRun($"{i + 1}. ", Tone.Heading), new TextRun(caution));
}
