using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data;

/// <summary>Lives of parts, and ways of vehicles.</summary>
public sealed partial class Shop
{
    /// <summary>A part's whole life, on whichever vehicles it was.</summary>
    public PartLife LifeOf(Component component) => store.Look(record => PartLife.Of(record, component));

    /// <summary>When the odometer of a vehicle was replaced or reset, from the first to the last.</summary>
    public IReadOnlyList<OdometerChange> OdometerChanges(Vehicle vehicle) => store.Look(record => OdometerReader.Of(record, vehicle.Id));
}
