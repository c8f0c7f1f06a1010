using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog options VEHICLE</c>: what would work, what leaves no clash before what only helps, cheapest and fewest parts first.</summary>
internal sealed class OptionsCommand : Command
{
    private const int UsualTop = 20;

    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly Option<string?> pool = new("--pool") { Description = Spoken("Where parts may come from: owned is what lies on the shelf, elsewhere what other vehicles would have to give up (owned,offered,listed)."), HelpName = "owned,offered,listed,elsewhere" };
    private readonly Option<string?> change = new("--change") { Description = Spoken("What may change (all)."), HelpName = "axle,tyres,transmission,overdrive" };
    private readonly Option<bool> sound = new("--sound-only") { Description = Spoken("Throw out parts that have to be inspected first: those that came off for a fault, are noted as damaged or are somebody else's.") };
    private readonly Option<bool> map = new("--map") { Description = Spoken("Add the map of axle ratio against tyre circumference.") };
    private readonly Option<string?> top = new("--top") { Description = Spoken("How many of the best to show (20), by clash, open, watch and cost; their numbers are those of the whole list."), HelpName = "NUMBER" };

    public OptionsCommand(Edge edge) : base("options", Spoken("Search gearbox, overdrive, axle and tyres for what would work."))
    {
        vehicle.AddTo(this);
        Options.Add(pool);
        Options.Add(change);
        Options.Add(sound);
        Options.Add(top);
        Options.Add(map);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var pools = parse.GetValue(pool) is null
            ? SearchWish.Usual.ToHashSet()
            : Chosen(parse, pool, new Dictionary<string, Pool> { ["owned"] = Pool.Owned, ["offered"] = Pool.Offered, ["listed"] = Pool.Listed, ["elsewhere"] = Pool.Elsewhere });
        var positions = new Dictionary<string, Position>
        {
            ["axle"] = Position.RearAxle,
            ["tyres"] = Position.Tyres,
            ["transmission"] = Position.Transmission,
            ["gearbox"] = Position.Transmission, // as the card calls it
            ["overdrive"] = Position.Overdrive,
        };
        var wish = new SearchWish { Pools = pools, Changing = Chosen(parse, change, positions), TriesDoubtful = !parse.GetValue(sound) };
        var most = parse.GetValue(top) is { } wished ? Reading.Of(top.Name, wished, ReadTop) : UsualTop;

        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        using var search = new SearchOnTerminal(edge, parse);
        var found = Reading.Blaming(pool.Name, () => WaysOut.Of(shop, bench, wish, edge.Today, search.Progress, search.Cancel));
        var region = parse.GetValue(map) ? Reading.Blaming(map.Name, () => MapWords.Of(bench, edge.Common.UnitsOf(parse))) : null;
        return new(ToJson(found, most, region), [.. Commands.Answer.Wrapped(ToText(bench, wish, found, most, edge.Common.UnitsOf(parse))), .. region is null ? [] : region.Lines.Prepend("")]);
    }

    private static Parsed<int> ReadTop(string text)
        => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var most) && most > 0
            ? most
            : new Refusal("top", Spoken($"{Shown.Quoted(text)} options cannot be shown: a whole number, one or more."), "20");

    private static HashSet<T> Chosen<T>(ParseResult parse, Option<string?> option, Dictionary<string, T> words)
    {
        if (parse.GetValue(option) is not { } text) return [.. words.Values];

        return [.. text.Split(',', StringSplitOptions.TrimEntries).Select(word => words.TryGetValue(word, out var meant)
            ? meant
            : throw Reading.Wrong(option.Name, new Refusal("choice", Spoken($"'{word}' is not one of {string.Join(", ", words.Keys)}."), string.Join(',', words.Keys.Take(2)))))];
    }

    private static JsonObject ToJson(WaysOut found, int most, MapWords? region) => new()
    {
        ["tried"] = found.Answer.Tried,
        ["thrownOutBefore"] = found.Answer.ThrownOut,
        ["elapsedMs"] = found.Answer.Elapsed.TotalMilliseconds,
        ["judgedFully"] = found.Answer.JudgedFully,
        ["mightBeBetter"] = found.Answer.MightBeBetter,
        ["windows"] = Json.Array(found.Windows, window => new JsonObject
        {
            ["part"] = window.Position.InWords(),
            ["quantity"] = window.Quantity,
            ["unit"] = window.Unit.Symbol,
            ["window"] = Json.Window(window.Window, window.Unit),
            ["sureWindow"] = window.SureWindow is { } sure ? Json.Window(sure, window.Unit) : null,
            ["openedBy"] = window.OpenedBy,
        }),
        ["contradictions"] = Json.Array(found.Windows.Where(window => window.Contradiction is not null), window => window.Contradiction),
        ["thrownOut"] = Json.Array(found.Answer.Exclusions, entry => new JsonObject { ["combinations"] = entry.Combinations, ["reason"] = entry.Reason }),
        ["unclearOffers"] = Json.Array(found.Unclear, name => name),
        ["map"] = Json.Map(region),
        ["uncured"] = Json.Array(found.Uncured, clash => new JsonObject { ["check"] = clash.Check, ["says"] = clash.Says, ["cures"] = Json.Array(clash.Cures, cure => cure) }),
        ["options"] = Json.Array(OptionRows.Shown(found, most), each => ToJson(found, each.Option, each.Place)),
    };

    private static JsonObject ToJson(WaysOut found, Gearing.Options.Option option, int place) => new()
    {
        ["place"] = place,
        ["axleRatio"] = option.Axle.Part!.Ratio!.Value.Value,
        ["axleRatioExpanded95"] = Json.Expanded95(option.Axle.Part!.Ratio!.Value, Units.One),
        ["otherAxleRatio"] = option.Axle.Beside?.Ratio!.Value.Value,
        ["transmission"] = option.Gearbox.Name,
        ["tyre"] = option.Tyres.Name,
        ["overdrive"] = option.Overdrive.Part?.Name,
        ["changes"] = option.Changes,
        ["stillClashes"] = option.StillClashes,
        ["drivenGearTeeth"] = option.Dial?.DrivenTeeth,
        ["speedometerCorrection"] = option.Dial is { DrivenTeeth: null } dial ? dial.Drive.Correction.Value : null,
        ["costMinor"] = option.CostMinor,
        ["currency"] = found.Currency,
        ["offersPassedOver"] = Json.Array(found.PassedOver, offer => offer.Name),
        ["cruiseRpm"] = option.CruiseEngineSpeed is { } n ? Units.RevolutionPerMinute.FromBase(n.Value) : null,
        ["cruiseRpmExpanded95"] = Json.Expanded95(option.CruiseEngineSpeed, Units.RevolutionPerMinute),
        ["circumferenceM"] = option.Driveline.DrivingTyres?.RollingCircumference?.Value.Value,
        ["circumferenceMExpanded95"] = Json.Expanded95(option.Driveline.DrivingTyres?.RollingCircumference?.Value, Units.Metre),
        ["clash"] = (int)option.Score.Clash,
        ["watch"] = (int)option.Score.Watch,
        ["open"] = (int)option.Score.Open,
        ["parts"] = Json.Array(OptionWords.Parts(option), part => part),
        ["rejected"] = found.Before(option) is { AreTheseParts: true } these ? these.Says : null,
        ["sameNumberAsRejected"] = found.Before(option) is { AreTheseParts: false } number ? number.Says : null,
        ["inspectFirst"] = Json.Array(OptionWords.InspectFirst(option), told => told),
        ["robustness"] = option.Robustness,
        ["onlySellersWord"] = OptionWords.IsWordAlone(option),
        ["outsideTheHunt"] = option.IsOutsideTheHunt,
        ["fromVehicles"] = Json.Array(OptionWords.Takes(option), name => name),
    };

    private static IEnumerable<string> ToText(VehicleOnBench bench, SearchWish wish, WaysOut found, int most, UnitSystem units)
    {
        var answer = found.Answer;
        yield return $"{bench.Vehicle.Name}: {OptionWords.Tried(answer)}";
        foreach (var unsettled in OptionWords.MightBeBetter(answer)) yield return unsettled;
        yield return wish.InWords;
        yield return OptionWords.AsItIs(bench);
        foreach (var clash in OptionWords.Clashes(found, units)) yield return clash;
        if (found.Windows.Count > 0) yield return WindowWords.Heading;
        foreach (var window in found.Windows) yield return $"     {WindowWords.Of(window, units)}";
        if (answer.Options.Count == 0) yield return Spoken("Nothing that was searched makes it better than it is.");
        bool? section = null;
        foreach (var group in OptionRows.Shown(found, most).GroupBy(each => (each.Option.StillClashes, each.Option.Changes)))
        {
            if (section != group.Key.StillClashes) yield return OptionWords.Section(group.Key.StillClashes);
            section = group.Key.StillClashes;
            yield return OptionWords.Heading(group.Key.Changes);
            foreach (var (option, place) in group)
            {
                yield return $"{place,3}  {string.Join(" + ", OptionWords.Parts(option))}";
                yield return $"     {OptionWords.Figures(option, found.Currency)}";
                if (found.Before(option) is { } rejected) yield return $"     {rejected.Says}";
            }
        }

        if (answer.Options.Any(option => OptionWords.Sure(option).Length > 0)) yield return OptionWords.SureMeans;
        if (answer.Options.Count - most is > 0 and var more) yield return Spoken($"{more} more: --top {answer.Options.Count}");
        foreach (var exclusion in answer.Exclusions) yield return exclusion.InWords;
        if (OptionWords.PassedOver(found) is { Length: > 0 } passed) yield return passed;
        if (found.Unclear.Count > 0) yield return Spoken($"Not searched, since the claim says no number: {string.Join(", ", found.Unclear)}");
    }
}
