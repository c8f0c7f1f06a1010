using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Options;

/// <summary>Asks where the parts of a search may come from and in what state, and which parts may change.</summary>
internal static class SearchForm
{
    private const string Doubtful = "doubtful";

    private static readonly IReadOnlyList<(Pool Pool, Later Caption, Later Hint)> Pools =
    [
        (Pool.Owned, new Later("Owned parts"), new Later("on the shelf, free to be fitted")),
        (Pool.Elsewhere, new Later("From vehicles"), new Later("parts of the shop that another vehicle would have to give up")),
        (Pool.Offered, new Later("Offered parts"), new Later("what the page Wanted has on offer")),
        (Pool.Listed, new Later("Listed parts"), new Later("gear sets, ratios and sizes that are sold somewhere")),
    ];

    /// <param name="wish">What is searched now, and takes what is wanted.</param>
    public static Form For(SearchWish wish) => new()
    {
        Title = Spoken("What to search"),
        HelpPage = "Options",
        SaveCaption = Spoken("Search"),
        Entries =
        [
            .. Pools.Select(asked => Asked(asked.Pool.ToString(), asked.Caption, wish.Pools.Contains(asked.Pool)) with { Hint = asked.Hint }),
            Asked(Doubtful, Spoken("To inspect first"), wish.TriesDoubtful) with { Hint = Spoken("what came off for a fault, is noted as damaged or is somebody else's; it is put last") },
            .. SearchWish.Searched.Select(position => Asked(position.ToString(), Spoken($"May change: {position.InWords()}"), wish.Changing.Contains(position))),
        ],
        Save = values =>
        {
            var pools = Enum.GetValues<Pool>().Where(pool => values.IsYes(pool.ToString())).ToHashSet();
            var changing = SearchWish.Searched.Where(position => values.IsYes(position.ToString())).ToHashSet();
            if (pools.Count == 0) return SaveOutcome.Refuse(Spoken("Parts come from nowhere so: say yes to owned, offered or listed ones, or those on other vehicles."));
            if (changing.Count == 0) return SaveOutcome.Refuse(Spoken("Nothing may change so: say yes to at least one part, such as the axle."));

            (wish.Pools, wish.Changing, wish.TriesDoubtful) = (pools, changing, values.IsYes(Doubtful));
            return SaveOutcome.Done;
        },
    };

    private static YesNoEntry Asked(string id, string caption, bool isWanted) => new(id, caption) { IsYes = isWanted };
}
