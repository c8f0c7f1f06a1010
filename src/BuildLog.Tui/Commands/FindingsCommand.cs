using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog findings VEHICLE</c>: the checks on the driveline of a day.</summary>
internal sealed class FindingsCommand : Command
{
    private const int UsualSeed = 1;

    private readonly VehicleArgument vehicle = VehicleArgument.OnAnyDay();

    private readonly Option<string?> failOn = new("--fail-on")
    {
        Description = Spoken("Exit with 1 if a finding is this bad or worse; from bad to good: clash, open, watch."),
        HelpName = "clash|open|watch",
    };

    private readonly Option<bool> monteCarlo = new("--monte-carlo")
    {
        Description = Spoken("Compute each number again from drawn inputs, and say where its interval does not hold (JCGM 101). Takes some seconds."),
    };

    private readonly Option<string?> seed = new("--seed")
    {
        Description = Spoken($"A whole number; one seed draws the same every time. Without it: {UsualSeed}."),
        HelpName = "N",
    };

    public FindingsCommand(Edge edge) : base("findings", Spoken("Judge the driveline: fits, watch, clash or open, with numbers and cures."))
    {
        vehicle.AddTo(this);
        Options.Add(failOn);
        Options.Add(monteCarlo);
        Options.Add(seed);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var limit = Limit(parse);
        var draws = Draws(parse);
        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        var met = limit is not null && bench.Findings.Any(finding => finding.Verdict <= limit);
        List<JudgedFinding> findings = [.. bench.Findings.Select(finding => new JudgedFinding(finding, draws is { } n && finding.Value is { } value ? Validation.Of(value, n) : null))];
        return new(ToJson(bench, findings), [.. ToText(bench, findings, edge.Common.UnitsOf(parse))], met ? ExitCodes.FailOnMet : ExitCodes.Done);
    }

    private Verdict? Limit(ParseResult parse) => parse.GetValue(failOn) switch
    {
        null => null,
        "clash" => Verdict.Clash,
        "open" => Verdict.Open,
        "watch" => Verdict.Watch,
        var other => throw Reading.Wrong(failOn.Name, new Refusal("fail-on", Spoken($"'{other}' is not clash, open or watch."), "clash")),
    };

    // The seed to draw with; null where nothing is to be drawn.
    private int? Draws(ParseResult parse)
    {
        if (parse.GetValue(seed) is not { } typed) return parse.GetValue(monteCarlo) ? UsualSeed : null;
        if (!int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var n))
            throw Reading.Wrong(seed.Name, new Refusal("seed", Spoken($"'{typed}' is no seed: a whole number from 0 to {int.MaxValue}."), "1"));
        return parse.GetValue(monteCarlo) ? n : throw Reading.Wrong(seed.Name, new Refusal("seed", Spoken("A seed is for drawing: give --monte-carlo as well."), "--monte-carlo --seed 1"));
    }

    private sealed record JudgedFinding(Finding Finding, Validation? Validation);

    private static JsonObject ToJson(VehicleOnBench bench, IReadOnlyList<JudgedFinding> findings)
    {
        var counts = FindingsWords.Count(bench.Findings);
        return new()
        {
            ["vehicle"] = bench.Vehicle.Name,
            ["onDate"] = DayText.Iso(bench.Fitted.Day),
            ["uncertain"] = Json.Array(bench.Fitted.Doubts, doubt => doubt),
            ["counts"] = new JsonObject { ["fits"] = counts.Fits, ["watch"] = counts.Watch, ["clash"] = counts.Clash, ["open"] = counts.Open },
            ["findings"] = Json.Array(findings, judged => ToJson(judged.Finding, judged.Validation)),
        };
    }

    private static JsonObject ToJson(Finding finding, Validation? validation) => new()
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
        ["monteCarlo"] = validation is null ? null : ToJson(validation, finding.Unit),
    };

    private static JsonObject ToJson(Validation validation, Unit unit) => new()
    {
        ["agrees"] = validation.Agrees,
        ["tolerance"] = unit.FromBase(validation.Tolerance),
        ["trials"] = validation.Drawn?.Trials,
        ["settled"] = validation.Drawn?.Settled,
        ["mean"] = validation.Drawn is { } drawn ? unit.FromBase(drawn.Mean) : null,
        ["standardUncertainty"] = validation.Drawn is { } spread ? unit.FromBase(spread.StandardUncertainty) : null,
        ["interval95"] = validation.Drawn is { } known ? Json.Interval(known.Interval95, unit) : null,
        ["says"] = ValidationWords.Of(validation, unit),
    };

    private static IEnumerable<string> ToText(VehicleOnBench bench, IReadOnlyList<JudgedFinding> findings, UnitSystem units)
    {
        yield return $"{bench.Vehicle.Name}, {DayText.Iso(bench.Fitted.Day)}: {FindingsWords.Count(bench.Findings).Summary()}";
        foreach (var doubt in bench.Fitted.Doubts) yield return doubt;
        foreach (var (finding, validation) in findings)
        {
            yield return $"{finding.Verdict.InWords().ToUpperInvariant(),-6} {finding.Title}: {finding.SaysIn(units.Shown)}";
            foreach (var cure in finding.CuresIn(units.Shown)) yield return Spoken($"       cure: {cure}");
            if (finding.SettledBy is { } settledBy) yield return Spoken($"       to settle it: {settledBy}");
            if (validation is not null) yield return Spoken($"       drawn: {ValidationWords.Of(validation, finding.Unit)}");
        }
    }
}
