using System.Globalization;
using BuildLog.Tui.Shell;
using Terminal.Gui.App;

namespace BuildLog.Tui.Workbench;

/// <summary>The list of all acts with their keys, as far as the words typed occur in them.</summary>
internal static class ActList
{
    private const int KeyWidth = 7;

    /// <param name="app">Whose terminal.</param>
    /// <param name="onPage">The acts of the page in view; they come first.</param>
    /// <param name="everywhere">Those that work in every pane.</param>
    /// <returns>The act that was taken, of one kind or the other; neither when left.</returns>
    public static (PageAct? OnPage, KeyAct? Everywhere) Ask(IApplication app, IReadOnlyList<PageAct> onPage, IReadOnlyList<KeyAct> everywhere)
    {
        if (SearchBox.Ask(app, Spoken("All acts and their keys"), Spoken("No act is called so."), KeyWidth, typed => Matching(onPage, everywhere, typed)) is not { } taken)
            return default;

        var index = int.Parse(taken, CultureInfo.InvariantCulture);
        return index < onPage.Count ? (onPage[index], null) : (null, everywhere[index - onPage.Count]);
    }

    private static IReadOnlyList<SearchRow> Matching(IReadOnlyList<PageAct> onPage, IReadOnlyList<KeyAct> everywhere, string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return
        [
            .. onPage.Select(act => (act.Hint.Key, act.Says)).Concat(everywhere.Select(act => (Key: act.KeyName, act.Says)))
                .Select((act, i) => new SearchRow(FormattableString.Invariant($"{i}"), act.Key, act.Says))
                .Where(row => words.All(word => row.Says.Contains(word, StringComparison.CurrentCultureIgnoreCase) || row.Name.Equals(word, StringComparison.Ordinal))),
        ];
    }
}
