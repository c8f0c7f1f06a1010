using System.CommandLine;
using System.Text.Json;
using System.Text.Json.Nodes;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog what-if VEHICLE --set axle=3.36</c>: what other parts, another load or another wish would come to; stored only where it is kept as a plan.</summary>
internal sealed class WhatIfCommand : Command
{
    private const char Is = '=';

    /// <summary>Every part by the words that are typed.</summary>
    internal static readonly IReadOnlyDictionary<string, Position> Places = new Dictionary<string, Position>(StringComparer.OrdinalIgnoreCase)
    {
        ["engine"] = Position.Engine,
        ["transmission"] = Position.Transmission,
        ["gearbox"] = Position.Transmission, // as the card calls it
        ["overdrive"] = Position.Overdrive,
        ["transfer-case"] = Position.TransferCase,
        ["propshaft"] = Position.Propshaft,
        ["front-propshaft"] = Position.FrontPropshaft,
        ["axle"] = Position.RearAxle,
        ["front-axle"] = Position.FrontAxle,
        ["tyres"] = Position.Tyres,
        ["front-tyres"] = Position.FrontTyres,
        ["speedometer"] = Position.Speedometer,
    };

    private static readonly Dictionary<string, Wish> Wishes = WishSheet.All.ToDictionary(wish => JsonNamingPolicy.KebabCaseLower.ConvertName(wish.ToString()), StringComparer.OrdinalIgnoreCase);

    private readonly VehicleArgument vehicle = VehicleArgument.Today();
    private readonly Option<string[]> set = new("--set") { Description = Spoken($"What is tried, again and again: {string.Join(", ", Places.Keys.Concat(Wishes.Keys))}."), HelpName = "WHAT=VALUE" };
    private readonly Option<string?> keep = new("--keep") { Description = Spoken("Keep it as a plan of this name."), HelpName = "PLAN" };

    public WhatIfCommand(Edge edge) : base("what-if", Spoken("Try other parts, loads and wishes on paper: what they do to cruise and findings."))
    {
        vehicle.AddTo(this);
        Options.Add(set);
        Options.Add(keep);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var typed = (parse.GetValue(set) ?? []).Select(Split).ToList();
        if (typed.Count == 0) throw Reading.Wrong(set.Name, new Refusal("nothing-tried", Spoken("Nothing is tried: say what would be different."), "axle=3.36"));
        if (typed.GroupBy(each => each.What, StringComparer.OrdinalIgnoreCase).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw Reading.Wrong(set.Name, new Refusal("twice", Spoken($"{Shown.Quoted(twice.Key)} is tried twice: try one thing at a time."), $"{twice.Key}{Is}{twice.First().Value}"));

        using var shop = edge.OpenShop(parse);
        var bench = vehicle.Read(shop, edge, parse);
        foreach (var (what, value) in typed)
        {
            var refusal = Wishes.TryGetValue(what, out var wish) ? wish.Refuses(value) : PlannedDriveline.Read(bench.Driveline, Place(what, bench.Driveline), value).Refusal;
            if (refusal is { Example.Length: > 0 }) throw Reading.Wrong(set.Name, refusal with { Example = $"{what}{Is}{refusal.Example}" });
        }

        IReadOnlyList<PlannedChange> changes = [.. typed.Where(each => Places.ContainsKey(each.What)).Select(each => new PlannedChange(Place(each.What, bench.Driveline), each.Value)).OrderBy(change => change.Position)];
        var wishes = new TriedWishes([.. typed.Where(each => Wishes.ContainsKey(each.What)).Select(each => new PlannedWish(Wishes[each.What], each.Value))]);
        var tried = Reading.Blaming(set.Name, () => wishes.On(bench.With(shop, changes)));
        var rejected = changes.Count == 0 ? null : RejectedPlans.Of(shop, bench).Says(tried.Driveline, changes);
        if (parse.GetValue(keep) is { } name)
        {
            if (PlanName.Taken(shop, bench.Vehicle, name) is { } taken) throw Reading.Wrong(keep.Name, taken);
            Reading.Blaming(keep.Name, () => shop.Add(new Plan(bench.Vehicle) { Name = name, Date = edge.Today, Changes = changes, Wishes = wishes.All }));
        }

        return new(ToJson(bench, tried, rejected, parse.GetValue(keep)), Commands.Answer.Wrapped(ToText(bench, tried, rejected, parse.GetValue(keep), edge.Common.UnitsOf(parse))));
    }

    // As in a search, the axle is the one that drives.
    private static Position Place(string what, Driveline driveline) => Places[what] is var place && place == Position.RearAxle ? driveline.DrivingPosition : place;

    private (string What, string Value) Split(string text)
    {
        var at = text.IndexOf(Is, StringComparison.Ordinal);
        var (what, value) = at < 0 ? (text.Trim(), "") : (text[..at].Trim(), text[(at + 1)..].Trim());
        if (!Places.ContainsKey(what) && !Wishes.ContainsKey(what))
            throw Reading.Wrong(set.Name, new Refusal("choice", Spoken($"{Shown.Quoted(what)} is not one of {string.Join(", ", Places.Keys.Concat(Wishes.Keys))}."), "axle=3.36"));
        return value.Length > 0 ? (what, value) : throw Reading.Wrong(set.Name, new Refusal("nothing-tried", Spoken($"What is tried of {Shown.Quoted(what)} stands behind an equals sign."), "axle=3.36"));
    }

    private static JsonObject ToJson(VehicleOnBench before, VehicleOnBench after, RejectedBefore? rejected, string? kept) => new()
    {
        ["vehicle"] = before.Vehicle.Name,
        ["before"] = ToJson(before),
        ["after"] = ToJson(after),
        ["findings"] = Json.Array(after.Findings, finding => new JsonObject { ["check"] = finding.Check, ["verdict"] = finding.Verdict.InWords(), ["says"] = finding.Says }),
        ["rejected"] = rejected?.Says,
        ["keptAs"] = kept,
    };

    private static JsonObject ToJson(VehicleOnBench bench) => new()
    {
        ["cruiseRpm"] = WhatIfForm.EngineSpeed(bench) is { } n ? Units.RevolutionPerMinute.FromBase(n.Value) : null,
        ["cruiseRpmExpanded95"] = Json.Expanded95(WhatIfForm.EngineSpeed(bench), Units.RevolutionPerMinute),
        ["counts"] = Json.Counts(Gearing.Options.VerdictCounts.Of(bench.Findings)),
    };

    private static IEnumerable<string> ToText(VehicleOnBench before, VehicleOnBench after, RejectedBefore? rejected, string? kept, UnitSystem units)
    {
        if (WhatIfForm.CruiseIn(before, after, units) is { } cruise) yield return cruise;
        yield return Spoken($"Findings: {FindingsWords.Count(before.Findings).Summary()} becomes {FindingsWords.Count(after.Findings).Summary()}.");
        if (rejected is not null) yield return $"! {rejected.Says}";
        foreach (var finding in after.Findings.Where(finding => finding.Verdict != Verdict.Fits)) yield return $"{finding.Verdict.Sign()} {finding.Verdict.InWords()}  {finding.Says}";
        yield return kept is null ? Spoken("Nothing was stored.") : Spoken($"Kept as a plan: {kept}.");
    }
}
