using System.Globalization;
using BuildLog.Tui.Shell;
using Terminal.Gui.App;

namespace BuildLog.Tui.Search;

/// <summary>Finds words anywhere in the shop as they are typed.</summary>
internal static class FindBox
{
    private const int KindWidth = 14;

    /// <param name="app">Whose terminal.</param>
    /// <param name="find">What the record finds for the words typed so far.</param>
    /// <param name="help">The help page that F1 shows over it.</param>
    /// <returns>The place that was taken; null when left.</returns>
    public static FoundPlace? Ask(IApplication app, Func<string, IReadOnlyList<FoundPlace>> find, string help)
    {
        IReadOnlyList<FoundPlace> found = [];
        var taken = SearchBox.Ask(app, Spoken("Find in the whole shop"), Spoken("Type words that occur in it; the last may be only begun."), KindWidth, typed =>
        {
            found = find(typed);
            return [.. found.Select((place, i) => new SearchRow(FormattableString.Invariant($"{i}"), place.Kind, place.Says))];
        }, help);
        return taken is null ? null : found[int.Parse(taken, CultureInfo.InvariantCulture)];
    }
}
