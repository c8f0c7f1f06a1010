using Terminal.Gui.App;

namespace BuildLog.Tui.Shell;

/// <summary>F1: the help of one page.</summary>
internal static class HelpScreen
{
    public static void Show(IApplication app, string page) => Reader.Show(app, Spoken("Help: ") + HelpText.TitleOf(page), HelpText.Of(page));
}
