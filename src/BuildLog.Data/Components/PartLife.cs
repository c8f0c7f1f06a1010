using BuildLog.Data.Costs;
using BuildLog.Data.Fitments;
using BuildLog.Data.Identity;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Components;

/// <summary>Everything the record knows of one part, on whichever vehicles it was.</summary>
/// <param name="Component">The part, with its donor and supplier.</param>
/// <param name="Service">Where it was fitted, from the first to the last.</param>
/// <param name="Sessions">What was measured on it, the latest first.</param>
/// <param name="Numbers">The numbers read off it.</param>
/// <param name="Costs">What it cost on any vehicle, the latest first.</param>
public sealed record PartLife(
    Component Component, IReadOnlyList<TimeFitted> Service, IReadOnlyList<Session> Sessions, IReadOnlyList<IdentityNumber> Numbers, IReadOnlyList<Cost> Costs)
{
    internal static PartLife Of(ShopContext db, Component component)
    {
        var stored = db.Components.SingleOrDefault(c => c.Id == component.Id) ?? throw new RefusedException("component", $"The {component} is not in the record any more.", "");
        var fitments = db.Fitments.Where(fitment => fitment.ComponentId == stored.Id).AsEnumerable().OrderBy(fitment => fitment.Start).ToList();
        return new(
            stored,
            [.. fitments.Select(fitment => new TimeFitted(fitment, OdometerLine.Of(db, fitment.VehicleId).Under(fitment)))],
            SessionList.Of(db, stored),
            [.. db.Set<IdentityNumber>().Where(number => number.ComponentId == stored.Id).OrderBy(number => number.Id)],
            [.. db.Set<Cost>().Where(cost => cost.ComponentId == stored.Id).OrderByDescending(cost => cost.Date).ThenByDescending(cost => cost.Id)]);
    }
}

/// <summary>A time fitted, and how far the part went then; null where the odometer was not read.</summary>
public sealed record TimeFitted(Fitment Fitment, Distance? Distance);
