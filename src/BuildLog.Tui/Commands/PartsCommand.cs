using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog parts</c>: every part and where it is.</summary>
internal sealed class PartsCommand : Command
{
    public PartsCommand(Edge edge) : base("parts", Spoken("List the parts, fitted and on the shelf.")) => edge.Answers(this, parse => Answer(edge, parse));

    private static Answer Answer(Edge edge, ParseResult parse)
    {
        using var shop = edge.OpenShop(parse);
        var parts = shop.Parts();
        var json = new JsonObject
        {
            ["parts"] = Json.Array(parts, place => new JsonObject
            {
                ["name"] = place.Component.Name,
                ["kind"] = place.Component.Kind.Text,
                ["vehicle"] = place.Fitment?.Vehicle.Name,
                ["position"] = place.Fitment?.Position.InWords(),
                ["shelf"] = place.Component.Shelf,
                ["ownership"] = place.Component.Ownership?.ToString(),
                ["serialNumber"] = place.Component.SerialNumber,
                ["donor"] = place.Component.Donor,
                ["uid"] = place.Component.Uid.ToString(),
            }),
        };
        return new(json, parts.Count == 0 ? [Spoken("No parts yet.")] : [.. parts.Select(place => $"{place.Component.Kind,-20}  {place.Component.Name,-36}  {Where(place)}")]);
    }

    private static string Where(PartPlace place)
        => place.Fitment is { } fitment ? Spoken($"on {fitment.Vehicle.Name}")
            : YardPart.IsNotBought(place.Component) ? Spoken("not bought, counted in the yard")
            : place.Component.Ownership == Ownership.Gone ? Ownership.Gone.InWords()
            : place.Component.Shelf.Length > 0 ? Spoken($"shelf: {place.Component.Shelf}")
            : Spoken("on the shelf");
}
