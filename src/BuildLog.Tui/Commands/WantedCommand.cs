using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Hunting;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog wanted VEHICLE</c>: what is hunted for it, between which values it will do, and what became of each offer.</summary>
internal sealed class WantedCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();

    public WantedCommand(Edge edge) : base("wanted", Spoken("List the wanted parts with their windows, and every offer and yard count with its verdict."))
    {
        vehicle.AddTo(this);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        using var shop = edge.OpenShop(parse);
        var found = vehicle.Find(shop, parse);
        var rows = new WantedActs(shop, edge.Clock, new() { Units = edge.Common.UnitsOf(parse) }).Read(found.Id).Rows;
        var hunts = rows.GroupBy(row => row.WantedId).ToList();
        return new(
            new JsonObject { ["vehicle"] = found.Name, ["wanted"] = Json.Array(hunts, hunt => ToJson([.. hunt])) },
            rows.Count == 0 ? [Spoken($"Nothing is hunted for {found.Name}.")] : Commands.Answer.Wrapped(rows.SelectMany(ToText)));
    }

    // The part itself comes before its offers and counts.
    private static JsonObject ToJson(IReadOnlyList<WantedRow> hunt) => new()
    {
        ["name"] = hunt[0].What,
        ["state"] = hunt[0].State,
        ["plan"] = hunt[0].Plan,
        ["windows"] = Json.Array(hunt[0].Windows, window => new JsonObject
        {
            ["quantity"] = window.Quantity,
            ["unit"] = window.Unit.Symbol,
            ["window"] = Json.Window(window.Window, window.Unit),
            ["keptWithHunt"] = window.IsKept,
        }),
        ["mayCostMinor"] = hunt[0].Money?.Minor,
        ["currency"] = hunt[0].Money?.Currency,
        ["neededBy"] = Json.Day(hunt[0].Until),
        ["overdue"] = hunt[0].IsOverdue,
        ["says"] = Json.Array(hunt[0].Lines, line => line),
        ["offers"] = Json.Array(hunt.Skip(1), offer => ToJson(offer, Claim.Read(offer.Says))),
    };

    private static JsonObject ToJson(WantedRow offer, Claim claim) => new()
    {
        ["what"] = offer.What,
        ["claimed"] = claim.Said,
        ["counted"] = claim.Counted,
        ["costMinor"] = offer.Money?.Minor,
        ["currency"] = offer.Money?.Currency,
        ["seen"] = Json.Day(offer.Seen),
        ["expires"] = Json.Day(offer.Until),
        ["state"] = offer.State,
        ["verdict"] = offer.Verdict is { } verdict ? verdict.InWords() : null,
        ["reason"] = offer.Judged?.Reason,
        ["tooDear"] = offer.Judged?.IsTooDear,
        ["rejected"] = offer.Judged?.Rejected?.Says,
        ["whole"] = offer.Judged?.Whole is { } counts ? Json.Counts(counts) : null,
    };

    private static IEnumerable<string> ToText(WantedRow row)
    {
        var isOffer = row.OfferId is not null || row.CountedId is not null;
        var facts = string.Join("; ", ((string[])[AsWritten.Numbers(row.Says), row.Price, row.State]).Where(fact => fact.Length > 0));
        yield return $"{(isOffer ? "  " : "")}{row.What}: {facts}";
        foreach (var line in row.Lines) yield return $"     {line}";
    }
}
