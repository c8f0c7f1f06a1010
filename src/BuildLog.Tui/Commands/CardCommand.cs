using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.YardCards;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog card VEHICLE</c>: what to count in the breaker's yard, as text or as a page for the pocket.</summary>
internal sealed class CardCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly PaperOptions paper = PaperOptions.ForCards();
    private readonly Option<string?> part = new("--part") { Description = "What is looked for: axle (if not said), gearbox, overdrive or tyres.", HelpName = "axle|gearbox|overdrive|tyres" };

    public CardCommand(Edge edge) : base("card", "Print the yard card: which counts mean that a part will do.")
    {
        vehicle.AddTo(this);
        Options.Add(part);
        paper.AddTo(this);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var wanted = Part(parse);
        var path = paper.FileIfNamed(parse);
        var size = paper.Card(parse);
        using var shop = edge.OpenShop(parse);
        var card = CardOfVehicle.Read(shop, vehicle.Read(shop, edge, parse), wanted);
        var content = Reading.Blaming("VEHICLE", () => card.Content(size, paper.Printed(edge, parse)));
        var json = ToJson(card);
        if (path is null) return new(json, CardText.Of(content));

        var written = paper.Write(parse, path, (file, overwrite) => PaperWriter.WriteFile(content, file, overwrite));
        json["file"] = path;
        return new(json, written.Text);
    }

    private CardPart Part(ParseResult parse)
    {
        if (parse.GetValue(part) is not { } text) return CardPart.Axle;

        var parts = Enum.GetValues<CardPart>();
        return parts.Any(each => each.InWords() == text)
            ? parts.First(each => each.InWords() == text)
            : throw Reading.Wrong(part.Name, new Refusal("part", $"There is no card for '{text}': {string.Join(", ", parts.Select(CardPartWords.InWords))}.", "tyres"));
    }

    private static JsonObject ToJson(CardOfVehicle card)
    {
        var window = card.Window;
        var json = new JsonObject
        {
            ["wanted"] = card.Part.InWords(),
            ["vehicle"] = card.Bench.Vehicle.Name,
            ["quantity"] = window.Quantity,
            ["window"] = Ends(window.Window),
            ["sureWindow"] = window.SureWindow is { } sure ? Ends(sure) : null,
            ["openedBy"] = window.OpenedBy,
            ["mustHaves"] = Json.Array(card.Musts, must => new JsonObject { ["what"] = must.What, ["text"] = must.Text }),
        };
        foreach (var (name, node) in card.Part switch
        {
            CardPart.Axle => OfAxle(card.Axle()),
            CardPart.Tyres => OfTyres(card.Tyres()),
            _ => OfGearbox(card.Gearbox()),
        }) json[name] = node;
        return json;
    }

    private static IEnumerable<(string Name, JsonNode? Node)> OfAxle(AxleCard card) =>
    [
        ("perWheelTurns", AxleCard.WheelTurns),
        ("oneHeld", Ends(card.Turns(Wheels.OneHeld))),
        ("together", Ends(card.Turns(Wheels.Together))),
        .. Edges("oneHeld", card.Edges(Wheels.OneHeld)),
        .. Edges("together", card.Edges(Wheels.Together)),
        ("hubReduction", card.Hub),
        ("teeth", Json.Array(card.Teeth, teeth => teeth.ToString())),
    ];

    private static IEnumerable<(string Name, JsonNode? Node)> OfGearbox(GearboxCard card) => [("perOutputTurns", GearboxCard.OutputTurns), .. Edges("input", card.Edges())];

    private static IEnumerable<(string Name, JsonNode? Node)> OfTyres(TyreCard card) =>
    [
        ("perTurns", TyreCard.Turns), .. Edges("looseM", card.Loose()), ("sizes", Json.Array(card.Sizes, size => size)),
    ];

    // Yes: within these, for sure. No: below or above these, for sure. Between: count further.
    private static IEnumerable<(string Name, JsonNode? Node)> Edges(string way, CountEdges edges) =>
    [
        ($"{way}Yes", edges.Yes is { } yes ? Ends(yes) : null),
        ($"{way}No", new JsonObject { ["below"] = Finite(edges.Possible.Low), ["above"] = Finite(edges.Possible.High) }),
    ];

    private static JsonNode? Finite(double value) => double.IsFinite(value) ? value : null;

    private static JsonObject Ends(Window window) => Json.Window(window, Units.One);
}
