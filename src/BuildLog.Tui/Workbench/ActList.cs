using System.Globalization;
using BuildLog.Tui.Shell;
using Terminal.Gui.App;

namespace BuildLog.Tui.Workbench;

/// <summary>The list of all acts with their keys, as far as the words typed occur in them.</summary>
internal static class ActList
{
    private const int KeyWidth = 7;

    /// <param name="app">Whose terminal.</param>
    /// <param name="acts">The acts, those that work now first.</param>
    /// <param name="help">The help page that F1 shows over it.</param>
    /// <returns>The act that was taken; null when left.</returns>
    public static ListedAct? Ask(IApplication app, IReadOnlyList<ListedAct> acts, string help)
        => SearchBox.Ask(app, Spoken("All acts and their keys"), Spoken("No act is called so."), KeyWidth, typed => Matching(acts, typed), help) is { } taken
            ? acts[int.Parse(taken, CultureInfo.InvariantCulture)]
            : null;

    private static IReadOnlyList<SearchRow> Matching(IReadOnlyList<ListedAct> acts, string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return
        [
            .. acts.Select((act, i) => (Act: act, Row: new SearchRow(FormattableString.Invariant($"{i}"), act.Key, act.Says)))
                .Where(listed => words.All(word => Holds(listed.Act, word)))
                .Select(listed => listed.Row),
        ];
    }

    private static bool Holds(ListedAct act, string word)
        => $"{act.Says} {act.AlsoCalled}".Contains(word, StringComparison.CurrentCultureIgnoreCase) || act.Key.Equals(word, StringComparison.Ordinal);
}

/// <summary>One line of the list of all acts.</summary>
/// <param name="Key">The key that does it from here; empty where none does.</param>
/// <param name="Says">What it does.</param>
/// <param name="AlsoCalled">Other words people look for it by.</param>
/// <param name="Do">Does it.</param>
internal sealed record ListedAct(string Key, string Says, string AlsoCalled, Action Do);
