using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog plans VEHICLE</c>: what was kept of what-ifs and what it comes to today; <c>--reject</c> says that one is not to be.</summary>
internal sealed class PlansCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly Option<string?> reject = new("--reject") { Description = Spoken("Reject the plan of this name, or a beginning of it."), HelpName = "PLAN" };
    private readonly Option<string?> because = new("--because") { Description = Spoken("The rule that failed (the worst clash of the plan)."), HelpName = "RULE" };

    public PlansCommand(Edge edge) : base("plans", Spoken("List the plans and what each comes to today, or reject one."))
    {
        vehicle.AddTo(this);
        Options.Add(reject);
        Options.Add(because);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var (name, rule) = (parse.GetValue(reject), parse.GetValue(because) ?? "");
        if (name is null && rule.Length > 0)
            throw Reading.Wrong(because.Name, new Refusal("not-kept", Spoken("Without --reject nothing is rejected: name the plan too."), "too long for the shaft"));

        using var shop = edge.OpenShop(parse);
        var found = vehicle.Find(shop, parse);
        var acts = new PlansActs(shop, edge.Clock, new ForNow());
        IReadOnlyList<PlanRow> rows = name is null ? acts.Read(found.Id).Rows : [Reading.Blaming(reject.Name, () => acts.Reject(found.Id, name, rule))];
        return new(
            new JsonObject { ["vehicle"] = found.Name, ["plans"] = Json.Array(rows, ToJson) },
            rows.Count == 0 ? [Spoken($"No plan of {found.Name} yet.")] : Commands.Answer.Wrapped(rows.SelectMany(ToText)));
    }

    private static JsonObject ToJson(PlanRow row) => new()
    {
        ["name"] = row.Name,
        ["date"] = Json.Day(row.Day),
        ["state"] = row.State,
        ["reason"] = row.Reason,
        ["changes"] = row.Lines[0],
        ["cruiseRpm"] = row.EngineSpeed is { } n ? Units.RevolutionPerMinute.FromBase(n.Value) : null,
        ["cruiseRpmExpanded95"] = Json.Expanded95(row.EngineSpeed, Units.RevolutionPerMinute),
        ["whole"] = row.Whole is { } counts ? Json.Counts(counts) : null,
        ["inspectFirst"] = Json.Array(row.Doubts, doubt => doubt),
    };

    private static IEnumerable<string> ToText(PlanRow row)
    {
        yield return $"{row.Name} ({row.Date}): {string.Join("; ", ((string[])[row.State, row.Counts, row.Cruise]).Where(fact => fact.Length > 0))}";
        foreach (var line in row.Lines) yield return $"     {line}";
    }
}
