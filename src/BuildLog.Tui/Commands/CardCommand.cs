using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.YardCards;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog card VEHICLE</c>: what to count in the breaker's yard, on forty columns for a narrow printer or a telephone.</summary>
internal sealed class CardCommand : Command
{
    private const int Columns = 40;
    private readonly VehicleArgument vehicle = VehicleArgument.Today();

    public CardCommand(Edge edge) : base("card", "Print the yard card: which counts mean that an axle will do.")
    {
        vehicle.AddTo(this);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var window = DrivelineWindows.Of(bench.Driveline, bench.Goals, bench.Findings).FirstOrDefault(part => part.Position == bench.Driveline.DrivingPosition)
            ?? throw new WrongInputException(new Refusal("window", $"Nothing wanted of {bench.Vehicle.Name} depends on the axle yet, or its gears or tyres are not known: set a cruise goal and enter them.", ""), "VEHICLE");
        var card = Reading.Blaming("VEHICLE", () => AxleCard.Of(window, bench.Driveline.DrivingAxle?.HubReduction?.Value.Value ?? 1));
        return new(ToJson(card, bench), [.. ToText(card, bench).SelectMany(line => TextFit.Wrap(line, Columns, 2))]);
    }

    private static JsonObject ToJson(AxleCard card, VehicleOnBench bench) => new()
    {
        ["wanted"] = "axle",
        ["vehicle"] = bench.Vehicle.Name,
        ["window"] = Ends(card.Wanted.Window),
        ["sureWindow"] = card.Wanted.SureWindow is { } sure ? Ends(sure) : null,
        ["openedBy"] = card.Wanted.OpenedBy,
        ["perWheelTurns"] = AxleCard.WheelTurns,
        ["oneHeld"] = Ends(card.Turns(Wheels.OneHeld)),
        ["together"] = Ends(card.Turns(Wheels.Together)),
        ["oneHeldYes"] = Yes(card, Wheels.OneHeld),
        ["oneHeldPossible"] = Ends(card.Edges(Wheels.OneHeld).Possible),
        ["togetherYes"] = Yes(card, Wheels.Together),
        ["togetherPossible"] = Ends(card.Edges(Wheels.Together).Possible),
        ["hubReduction"] = card.Hub,
        ["teeth"] = Json.Array(card.Teeth, teeth => teeth.ToString()),
    };

    private static JsonObject? Yes(AxleCard card, Wheels wheels) => card.Edges(wheels).Yes is { } yes ? Ends(yes) : null;

    private static JsonObject Ends(Window window) => Json.Window(window, Units.One);

    private static IEnumerable<string> ToText(AxleCard card, VehicleOnBench bench)
    {
        yield return $"YARD CARD  axle for {bench.Vehicle.Name}";
        yield return $"wanted: {card.Wanted.InWords()}";
        if (card.Wanted.Lowest is { } lowest) yield return $"  not lower: {lowest.InWords}";
        if (card.Wanted.Highest is { } highest) yield return $"  not higher: {highest.InWords}";
        yield return "";
        foreach (var line in Count(card, "ONE WHEEL HELD (open differential)", Wheels.OneHeld)) yield return line;
        yield return "";
        foreach (var line in Count(card, "BOTH WHEELS TURNED ALIKE", Wheels.Together)) yield return line;
        yield return "";
        yield return "First: turn one wheel, look at the other. It turns backwards: open, hold it. It turns the same way: locked or limited slip, turn both.";
        if (card.Wanted.SureWindow is null) yield return $"No count means a sure yes yet: {card.Wanted.OpenedBy ?? "too little is known of the other parts"}.";
        yield return "";
        if (card.Teeth.Count > 0) yield return $"Teeth that would do{(card.Hub == 1 ? "" : $", with {Rounded.Exact(card.Hub)} in the hubs")}: {string.Join(" ", card.Teeth)}";
        yield return "Tags and stampings are hearsay: count.";
        yield return "";
        yield return "counted ____ : ____   teeth ____ / ____";
        foreach (var what in AlsoMeasure(bench.Driveline)) yield return what;
        yield return "";
        yield return "Never under a car on a jack. Stands, chocks, key out; not alone.";
    }

    private static IEnumerable<string> Count(AxleCard card, string title, Wheels wheels)
    {
        yield return title;
        foreach (var turns in (int[])[AxleCard.WheelTurns, AxleCard.MoreWheelTurns])
        {
            var edges = card.Edges(wheels, turns);
            yield return FormattableString.Invariant($"{turns} wheel turns, propshaft turns:");
            if (edges.Yes is { } yes && Quarters(yes, inwards: true) is { IsEmpty: false } sure) yield return $"  yes      {InWords(sure)}";
            yield return $"  no       {Outside(Quarters(edges.Possible, inwards: false))}";
            yield return "  between  count further";
        }
    }

    // Read to a quarter turn: yes rounds inwards and no outwards, so that neither says too much.
    private static Window Quarters(Window turns, bool inwards) => inwards
        ? new(Math.Ceiling(turns.Low * 4) / 4, Math.Floor(turns.High * 4) / 4)
        : new(Math.Floor(turns.Low * 4) / 4, Math.Ceiling(turns.High * 4) / 4);

    private static string InWords(Window turns) => (double.IsFinite(turns.Low), double.IsFinite(turns.High)) switch
    {
        (true, true) => FormattableString.Invariant($"{turns.Low:0.00} to {turns.High:0.00}"),
        (true, false) => FormattableString.Invariant($"{turns.Low:0.00} or more"),
        _ => FormattableString.Invariant($"{turns.High:0.00} or less"),
    };

    private static string Outside(Window turns) => (double.IsFinite(turns.Low) && turns.Low > 0, double.IsFinite(turns.High)) switch
    {
        (true, true) => FormattableString.Invariant($"under {turns.Low:0.00}, over {turns.High:0.00}"),
        (true, false) => FormattableString.Invariant($"under {turns.Low:0.00}"),
        _ => FormattableString.Invariant($"over {turns.High:0.00}"),
    };

    private static IEnumerable<string> AlsoMeasure(Driveline driveline)
    {
        yield return "flange to flange ____ mm";
        yield return $"perch to perch ____ mm{Ours(driveline.DrivingAxle?.Perches?.Value)}";
        yield return "bolt circle ____ x ____ mm";
        yield return "pinion flange or spline ____";
        yield return "parking brake: cable / drum / none";
    }

    private static string Ours(Gearing.Measurements.Measured? own) => own is null ? "" : $" (ours {Rounded.Value(own, Units.Millimetre)})";
}
