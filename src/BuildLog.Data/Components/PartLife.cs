using BuildLog.Data.Costs;
using BuildLog.Data.Fitments;
using BuildLog.Data.Identity;
using BuildLog.Data.Rows;
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
    internal static PartLife Of(Snapshot record, Component component)
    {
        record.Components.Load([component.Id]);
        if (!record.Components.Holds(component.Id)) throw new RefusedException("component", Spoken($"The {component} is not in the record any more."), "");

        var stored = record.Components[component.Id];
        return new(
            stored,
            [.. FitmentReader.Of(record, stored).Select(fitment => new TimeFitted(fitment, OdometerLine.Of(record, fitment.VehicleId).Under(fitment)))],
            SessionList.Of(record, stored),
            IdentityReader.Of(record, stored),
            CostList.Of(record, stored));
    }
}

/// <summary>A time fitted, and how far the part went then; null where the odometer was not read.</summary>
public sealed record TimeFitted(Fitment Fitment, Distance? Distance);
