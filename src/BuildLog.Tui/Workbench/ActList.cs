using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The list of all acts with their keys, as far as the words typed occur in them.</summary>
internal static class ActList
{
    /// <param name="onPage">The acts of the page in view.</param>
    public static IReadOnlyList<SearchRow> Matching(IReadOnlyList<PageAct> onPage, IReadOnlyList<KeyAct> everywhere, string typed)
    {
        var words = typed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return
        [
            .. onPage.Select((act, i) => new SearchRow(FormattableString.Invariant($"page {i}"), act.Hint.Key, act.Says))
                .Concat(everywhere.Select((act, i) => new SearchRow(FormattableString.Invariant($"all {i}"), act.KeyName, act.Says)))
                .Where(row => words.All(word => row.Says.Contains(word, StringComparison.CurrentCultureIgnoreCase) || row.Name.Equals(word, StringComparison.Ordinal))),
        ];
    }
}
