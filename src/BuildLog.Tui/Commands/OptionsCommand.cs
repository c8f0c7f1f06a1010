using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Options;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog options VEHICLE</c>: what would work, fewest clashes, cheapest and fewest parts first.</summary>
internal sealed class OptionsCommand : Command
{
    private const int Columns = 80;
    private const int UsualTop = 20;

    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly Option<string?> pool = new("--pool") { Description = "Where parts may come from (all).", HelpName = "owned,offered,listed" };
    private readonly Option<string?> change = new("--change") { Description = "What may change (all).", HelpName = "axle,tyres,transmission,overdrive" };
    private readonly Option<int?> top = new("--top") { Description = "How many to show (20).", HelpName = "NUMBER" };

    public OptionsCommand(Edge edge) : base("options", "Search gearbox, overdrive, axle and tyres for what would work.")
    {
        vehicle.AddTo(this);
        Options.Add(pool);
        Options.Add(change);
        Options.Add(top);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var pools = Chosen(parse, pool, Enum.GetValues<Pool>().ToDictionary(entry => entry.InWords()));
        var positions = new Dictionary<string, Position>
        {
            ["axle"] = Position.RearAxle,
            ["tyres"] = Position.Tyres,
            ["transmission"] = Position.Transmission,
            ["overdrive"] = Position.Overdrive,
        };
        var chosen = Chosen(parse, change, positions);
        var most = parse.GetValue(top) ?? UsualTop;
        if (most < 1) throw Reading.Wrong(top.Name, new Refusal("top", $"{most} options cannot be shown: one or more.", "20"));

        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var changing = chosen.Select(position => position == Position.RearAxle ? bench.Driveline.DrivingPosition : position).ToHashSet();
        var parts = Reading.Blaming(pool.Name, () => new PartsToTry(shop, bench, pools, changing).All());
        var answer = OptionSearch.Run(bench.Driveline, bench.Goals, parts);
        var contradictions = DrivelineWindows.Of(bench.Driveline, bench.Goals, bench.Findings).Select(window => window.Contradiction).OfType<string>().ToList();
        var shown = answer with { Options = [.. answer.Options.Take(most)] };
        return new(ToJson(shown, parts.Currency, contradictions), [.. ToText(bench, shown, parts.Currency, contradictions).SelectMany(line => TextFit.Wrap(line, Columns, 5))]);
    }

    private static HashSet<T> Chosen<T>(ParseResult parse, Option<string?> option, Dictionary<string, T> words)
    {
        if (parse.GetValue(option) is not { } text) return [.. words.Values];

        return [.. text.Split(',', StringSplitOptions.TrimEntries).Select(word => words.TryGetValue(word, out var meant)
            ? meant
            : throw Reading.Wrong(option.Name, new Refusal("choice", $"'{word}' is not one of {string.Join(", ", words.Keys)}.", string.Join(',', words.Keys.Take(2)))))];
    }

    private static JsonObject ToJson(SearchAnswer answer, string? currency, IEnumerable<string> contradictions) => new()
    {
        ["tried"] = answer.Tried,
        ["elapsedMs"] = answer.Elapsed.TotalMilliseconds,
        ["judgedFully"] = answer.JudgedFully,
        ["contradictions"] = Json.Array(contradictions, says => says),
        ["thrownOut"] = Json.Array(answer.Exclusions, entry => new JsonObject { ["combinations"] = entry.Combinations, ["reason"] = entry.Reason }),
        ["options"] = Json.Array(answer.Options, option => new JsonObject
        {
            ["axleRatio"] = option.Axle.Part!.Ratio!.Value.Value,
            ["transmission"] = option.Gearbox.Name,
            ["tyre"] = option.Tyres.Name,
            ["overdrive"] = option.Overdrive.Part?.Name,
            ["changes"] = option.Changes,
            ["costMinor"] = option.CostMinor,
            ["currency"] = currency,
            ["cruiseRpm"] = option.CruiseEngineSpeed is { } n ? Units.RevolutionPerMinute.FromBase(n.Value) : null,
            ["clash"] = (int)option.Score.Clash,
            ["watch"] = (int)option.Score.Watch,
            ["open"] = (int)option.Score.Open,
            ["parts"] = Json.Array(OptionWords.Parts(option), part => part),
            ["robustness"] = option.Robustness,
        }),
    };

    private static IEnumerable<string> ToText(VehicleOnBench bench, SearchAnswer answer, string? currency, IReadOnlyList<string> contradictions)
    {
        yield return string.Create(
            CultureInfo.InvariantCulture, $"{bench.Vehicle.Name}: {answer.Tried:N0} combinations tried, {answer.JudgedFully} of them judged by every check.");
        foreach (var contradiction in contradictions) yield return $"With the other parts as they are: {contradiction}";
        if (answer.Options.Count == 0) yield return "No part on these lists makes it better than it is.";
        var place = 0;
        foreach (var group in answer.ByChanges)
        {
            yield return OptionWords.Heading(group.Key);
            foreach (var option in group)
            {
                yield return $"{++place,3}  {string.Join(" + ", OptionWords.Parts(option))}";
                yield return $"     {OptionWords.Figures(option, currency)}";
            }
        }

        foreach (var exclusion in answer.Exclusions) yield return exclusion.InWords;
    }
}
