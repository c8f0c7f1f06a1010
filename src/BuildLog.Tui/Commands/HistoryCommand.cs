using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Drivelines;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog history VEHICLE</c>: the swaps, and what each changed.</summary>
internal sealed class HistoryCommand : Command
{
    private readonly VehicleArgument vehicle = VehicleArgument.Today();

    public HistoryCommand(Edge edge) : base("history", Spoken("List the swaps and what each changed."))
    {
        vehicle.AddTo(this);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        using var shop = edge.OpenShop(parse);
        var found = vehicle.Find(shop, parse);
        var (goals, units) = (shop.GoalsOf(found), edge.Common.UnitsOf(parse));
        var swaps = shop.History(found);
        return new(
            new JsonObject { ["entries"] = Json.Array(swaps, swap => ToJson(swap, goals)) },
            swaps.Count == 0 ? [Spoken($"Nothing has been fitted to {found.Name} yet.")] : [.. swaps.Select(swap => ToText(swap, goals, units))]);
    }

    private static JsonObject ToJson(Swap swap, OwnersGoals goals)
    {
        var effect = swap.Effect(goals);
        return new()
        {
            ["date"] = Iso(swap.Date),
            ["dateAsTyped"] = swap.Day.Text,
            ["earliest"] = Iso(swap.Day.Earliest),
            ["latest"] = Iso(swap.Day.Latest),
            ["position"] = swap.Position.InWords(),
            ["removed"] = swap.Removed?.Name,
            ["fitted"] = swap.Fitted?.Name,
            ["reason"] = swap.Reason,
            ["odometer"] = swap.Odometer?.InWords,
            ["cruiseRpmBefore"] = Rpm(effect.Before),
            ["cruiseRpmAfter"] = Rpm(effect.After),
            ["shownAt100KmhBefore"] = Kmh(effect.Moves.ShownBefore),
            ["shownAt100KmhAfter"] = Kmh(effect.Moves.ShownAfter),
            ["trackChangeMm"] = effect.Moves.Track is { } track ? Units.Millimetre.FromBase(track.Value) : null,
            ["clashBefore"] = effect.Before.Clashes,
            ["clashAfter"] = effect.After.Clashes,
        };
    }

    private static string ToText(Swap swap, OwnersGoals goals, UnitSystem units)
    {
        var effect = swap.Effect(goals);
        var (before, after) = (HistoryWords.Cruise(effect.Before.CruiseEngineSpeed), HistoryWords.Cruise(effect.After.CruiseEngineSpeed));
        var change = (swap.Removed, swap.Fitted) switch
        {
            (null, { } fitted) => Spoken($"fitted {fitted.Name}"),
            ({ } removed, null) => Spoken($"took off {removed.Name}"),
            var (removed, fitted) => Spoken($"{removed?.Name} out, {fitted?.Name} in"),
        };
        var reason = swap.Reason.Length > 0 ? $" ({swap.Reason})" : "";
        var cruise = after.Length == 0 ? "" : before.Length == 0 ? Spoken($"; cruise {after}") : Spoken($"; cruise {before} -> {after}");
        return $"{(swap.Day.IsExact ? Iso(swap.Date) : Spoken($"{swap.Day.Text} (not certain to the day; reckoned from {Iso(swap.Date)})"))}  {swap.Position.InWords()}: {change}{reason}{cruise}{string.Concat(SwapWords.Of(effect.Moves, units).Select(moved => $"; {moved}"))}";
    }

    private static double? Rpm(GoalState state) => state.CruiseEngineSpeed is { } n ? Units.RevolutionPerMinute.FromBase(n.Value) : null;

    private static double? Kmh(Measured? speed) => speed is { } v ? Units.KilometrePerHour.FromBase(v.Value) : null;

    private static string? Iso(DateOnly? day) => day is { } known ? DayText.Iso(known) : null;
}
