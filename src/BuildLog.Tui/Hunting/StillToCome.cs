using BuildLog.Data;
using BuildLog.Data.Fitments;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Hunting;

/// <summary>The parts of a plan that are not on the vehicle yet.</summary>
/// <remarks>
/// What is hunted for it is taken as planned; once it was bought, as it was bought, and once that is fitted, as it is fitted: with what was measured of it. What
/// nobody hunts has come where something was fitted there after the plan was made.
/// </remarks>
internal static class StillToCome
{
    public static IReadOnlyList<PlannedChange> Of(Shop shop, VehicleOnBench bench, Plan plan)
    {
        var (places, hunts) = (shop.Parts(), shop.Wanted(bench.Vehicle).Where(wanted => wanted.PlanId == plan.Id).ToList());
        return [.. plan.Changes.Select(change => Now(change, hunts.FirstOrDefault(hunt => HuntedPlace.Of(bench.Driveline, hunt) == change.Position))).OfType<PlannedChange>()];

        // Null for what is on the vehicle.
        PlannedChange? Now(PlannedChange change, WantedPart? hunt)
        {
            var here = bench.Fitted.At(change.Position);
            if (change.IsNone()) return here is null ? null : change;
            if (change.ComponentId is { } own) return here?.Id == own ? null : change;
            if (hunt is { State: WantedState.Hunting }) return change;
            if (Bought(hunt) is { } bought) return here?.Id == bought.Component.Id ? null : new(change.Position, bought.Component);

            var since = places.FirstOrDefault(place => place.Component.Id == here?.Id)?.Fitment?.From;
            return since > plan.Date || (since == plan.Date && hunt is { State: WantedState.Found }) ? null : change;
        }

        PartPlace? Bought(WantedPart? hunt) => hunt is null ? null : shop.Offers(hunt).Select(offer => BoughtPart.Of(shop, hunt, offer)).OfType<PartPlace>().FirstOrDefault();
    }
}
