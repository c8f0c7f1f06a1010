using Terminal.Gui.App;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Shell;

/// <summary>F1: the help of one page, and where F1 leads on, F1 again.</summary>
internal static class HelpScreen
{
    /// <summary>The help of the whole workbench, where that of a box leads on to.</summary>
    public const string OfTheWhole = "Workbench";

    private const int MostOfATitle = 28; // in the line of keys

    /// <param name="app">Over whose screen.</param>
    /// <param name="page">Whose help.</param>
    /// <param name="other">Where F1 leads on to, and from there back; null, or the page itself, for nowhere.</param>
    public static void Show(IApplication app, string page, string? other = null)
    {
        if (other is null || other == page) Reader.Show(app, Title(page), HelpText.Of(page));
        else if (Reader.Show(app, Title(page), HelpText.Of(page), Key.F1, new("F1", TextFit.Cut(HelpText.TitleOf(other), MostOfATitle)))) Show(app, other, page);
    }

    private static string Title(string page) => Spoken("Help: ") + HelpText.TitleOf(page);
}
