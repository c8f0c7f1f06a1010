using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Forms;

/// <summary>How the thing is set up for measuring: a drawing in characters and the steps, before anything is asked.</summary>
internal sealed class SetUpScreen : BeforeFormScreen
{
    private SetUpScreen(string title, IReadOnlyList<string> setUp, string helpPage)
        : base(Spoken($"Set up: {title}"), [.. setUp.Select(Line)], new("Enter", Spoken("set up, go on")), helpPage)
        => AddCommand(Command.Accept, () => Onward());

    public static bool GoOn(IApplication app, string title, IReadOnlyList<string> setUp, string helpPage)
    {
        using var screen = new SetUpScreen(title, setUp, helpPage);
        return Run(app, screen);
    }

    // What is drawn stands indented.
    private static TextLine Line(string line) => TextLine.Of(line, line.StartsWith("  ", StringComparison.Ordinal) ? Tone.Strong : Tone.Plain);
}
