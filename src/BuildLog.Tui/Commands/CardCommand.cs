using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.YardCards;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog card VEHICLE</c>: what to count in the breaker's yard, as text or as a page for the pocket.</summary>
internal sealed class CardCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly PaperOptions paper = new(PaperKind.Card);
    private readonly Option<string?> part = new("--for") { Description = Spoken("What is looked for: axle (if not said), front-axle of a four-wheel drive, gearbox, overdrive or tyres."), HelpName = CardPartWords.All };

    public CardCommand(Edge edge) : base("card", Spoken("Print the yard card: which counts mean that an axle, a gearbox, an overdrive or tyres will do."))
    {
        vehicle.AddTo(this);
        Options.Add(part);
        paper.AddTo(this);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var wanted = parse.GetValue(part) is { } text ? Reading.Of(part.Name, text, CardPartWords.Read) : CardPart.Axle;
        var path = paper.FileIfNamed(parse);
        var size = paper.Paper(parse);
        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var hunt = CardOfVehicle.Hunted(shop, bench, wanted).ToList() is [var only] ? HuntBench.Of(shop, bench, only) : null;
        var card = Reading.Blaming("VEHICLE", () => CardOfVehicle.Read(shop, hunt?.Bench ?? bench, wanted, edge.Common.UnitsOf(parse), hunt));
        var content = Reading.Blaming("VEHICLE", () => card.Content(size, paper.Printed(edge, parse)));
        return path is null
            ? new(ToJson(card), CardText.Of(content))
            : paper.Write(parse, path, (file, overwrite) => PaperWriter.WriteFile(content, file, overwrite));
    }

    private static JsonObject ToJson(CardOfVehicle card)
    {
        var json = new JsonObject { ["wanted"] = card.Part.InWords(), ["vehicle"] = card.Bench.Vehicle.Name };
        json["bothAxles"] = card.Part is CardPart.Axle or CardPart.FrontAxle && DrivenWheels.JoinsBothAxles(card.Bench.Driveline);
        if (card.Part is CardPart.Gearbox or CardPart.Overdrive) AddGearbox(json, card);
        else if (card.Part == CardPart.Tyres) AddTyres(json, card);
        else AddAxle(json, card);
        json["judgedWith"] = card.JudgedWith;
        json["mayCostMinor"] = card.Hunt?.Most?.Minor;
        json["currency"] = card.Hunt?.Most?.Currency;
        json["neededBy"] = Json.Day(card.Hunt?.Deadline);
        json["mustHaves"] = Json.Array(card.Musts, must => new JsonObject { ["what"] = must.What, ["text"] = must.Text });
        return json;
    }

    private static void AddAxle(JsonObject json, CardOfVehicle asked)
    {
        var card = asked.Axle();
        AddWindows(json, asked.Allowed[0], asked.Windows[0]);
        json["perWheelTurns"] = AxleCard.WheelTurns;
        json["oneHeld"] = Ends(AxleCard.Turns(asked.Allowed[0].Window, Wheels.OneHeld));
        json["together"] = Ends(AxleCard.Turns(asked.Allowed[0].Window, Wheels.Together));
        AddEdges(json, "oneHeld", card.Edges(Wheels.OneHeld).Yes, card.Edges(Wheels.OneHeld).Possible);
        AddEdges(json, "together", card.Edges(Wheels.Together).Yes, card.Edges(Wheels.Together).Possible);
        json["hubReduction"] = card.Hub;
        json["teeth"] = Json.Array(card.Teeth, teeth => teeth.ToString());
        json["teethPerhaps"] = Json.Array(card.Perhaps, teeth => teeth.ToString());
    }

    private static void AddGearbox(JsonObject json, CardOfVehicle asked)
    {
        json["perOutputTurns"] = GearboxCard.OutputTurns;
        json["gears"] = Json.Array(asked.Allowed.Zip(asked.Gearbox().Gears), each =>
        {
            var (allowed, gear) = each;
            var of = new JsonObject { ["quantity"] = gear.Quantity };
            AddWindows(of, allowed, gear);
            AddEdges(of, "input", GearboxCard.Edges(gear).Yes, GearboxCard.Edges(gear).Possible);
            of["outputTurnsToAYes"] = GearboxCardWords.TurnsToAYes(gear);
            return of;
        });
    }

    private static void AddTyres(JsonObject json, CardOfVehicle asked)
    {
        var card = asked.Tyres();
        AddWindows(json, asked.Allowed[0], asked.Windows[0]);
        json["unit"] = Units.Metre.Symbol;
        json["perWheelTurns"] = TyreCard.Turns;
        AddEdges(json, "standing", card.Edges(loaded: true).Yes, card.Edges(loaded: true).Possible);
        AddEdges(json, "loose", card.Edges(loaded: false).Yes, card.Edges(loaded: false).Possible);
        json["sizes"] = Json.Array(card.Sizes, size => size);
        json["leastLoadIndex"] = card.LeastLoadIndex;
        json["slowestSpeedSymbol"] = card.SlowestSymbol;
    }

    // The windows of the goals, unrounded; and what yes and no are held against: the same within the owner's own limit.
    private static void AddWindows(JsonObject json, WindowOfPart allowed, WindowOfPart judged)
    {
        json["window"] = Ends(allowed.Window);
        json["sureWindow"] = allowed.SureWindow is { } sure ? Ends(sure) : null;
        json["openedBy"] = allowed.OpenedBy;
        json["judgedBy"] = Ends(judged.Window);
    }

    private static void AddEdges(JsonObject json, string way, Window? yes, Window possible)
    {
        json[$"{way}Yes"] = yes is { } sure ? Ends(sure) : null;
        json[$"{way}Possible"] = Ends(possible);
    }

    private static JsonObject Ends(Window window) => Json.Window(window, Units.One);
}
