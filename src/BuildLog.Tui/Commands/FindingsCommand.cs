using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog findings VEHICLE</c>: the checks on the driveline of a day.</summary>
internal sealed class FindingsCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.OnAnyDay();

    private readonly Option<string?> failOn = new("--fail-on")
    {
        Description = "Exit with 1 if a finding is this bad or worse; from bad to good: clash, open, watch.",
        HelpName = "clash|open|watch",
    };

    public FindingsCommand(Edge edge) : base("findings", "Judge the driveline: fits, watch, clash or open, with numbers and cures.")
    {
        vehicle.AddTo(this);
        Options.Add(failOn);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var limit = Limit(parse);
        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var met = limit is not null && bench.Findings.Any(finding => finding.Verdict <= limit);
        return new(ToJson(bench), [.. ToText(bench, edge.Common.UnitsOf(parse))], met ? ExitCodes.FailOnMet : ExitCodes.Done);
    }

    private Verdict? Limit(ParseResult parse) => parse.GetValue(failOn) switch
    {
        null => null,
        "clash" => Verdict.Clash,
        "open" => Verdict.Open,
        "watch" => Verdict.Watch,
        var other => throw Reading.Wrong(failOn.Name, new Refusal("fail-on", $"'{other}' is not clash, open or watch.", "clash")),
    };

    private static JsonObject ToJson(VehicleOnBench bench)
    {
        var counts = FindingsWords.Count(bench.Findings);
        return new()
        {
            ["vehicle"] = bench.Vehicle.Name,
            ["onDate"] = bench.Fitted.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            ["counts"] = new JsonObject { ["fits"] = counts.Fits, ["watch"] = counts.Watch, ["clash"] = counts.Clash, ["open"] = counts.Open },
            ["findings"] = Json.Array(bench.Findings, ToJson),
        };
    }

    private static JsonObject ToJson(Finding finding) => new()
    {
        ["check"] = finding.Check,
        ["verdict"] = finding.Verdict.InWords(),
        ["between"] = Json.Array(finding.Between, position => position.InWords()),
        ["says"] = finding.Says,
        ["value"] = finding.Value is { } value ? finding.Unit.FromBase(value.Value) : null,
        ["unit"] = finding.Unit == Units.One ? "1" : finding.Unit.Symbol,
        ["standardUncertainty"] = finding.Value is { } measured ? finding.Unit.FromBase(measured.StandardUncertainty) : null,
        ["interval95"] = finding.Value is { } known ? Json.Interval95(known, finding.Unit) : null,
        ["wanted"] = finding.Wanted is { } wanted ? Json.Window(wanted, finding.Unit) : null,
        ["because"] = finding.Because.InWords(),
        ["source"] = finding.Source,
        ["cures"] = Json.Array(finding.Cures, cure => cure),
        ["windows"] = Json.Array(finding.Windows, window => new JsonObject
        {
            ["position"] = window.Position.InWords(),
            ["quantity"] = window.Quantity,
            ["unit"] = window.Unit == Units.One ? "1" : window.Unit.Symbol,
            ["window"] = Json.Window(window.Window, window.Unit),
            ["sureWindow"] = window.SureWindow is { } sure ? Json.Window(sure, window.Unit) : null,
            ["openedBy"] = window.OpenedBy,
        }),
        ["settledBy"] = finding.SettledBy,
    };

    private static IEnumerable<string> ToText(VehicleOnBench bench, UnitSystem units)
    {
        yield return $"{bench.Vehicle.Name}, {bench.Fitted.Day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}: {FindingsWords.Count(bench.Findings).Summary()}";
        foreach (var finding in bench.Findings)
        {
            yield return $"{finding.Verdict.InWords().ToUpperInvariant(),-6} {finding.Title}: {finding.Says}";
            foreach (var cure in finding.CuresIn(units.Shown)) yield return $"       cure: {cure}";
            if (finding.SettledBy is { } settledBy) yield return $"       to settle it: {settledBy}";
        }
    }
}
