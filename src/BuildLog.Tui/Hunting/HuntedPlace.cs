using BuildLog.Data;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Options;

namespace BuildLog.Tui.Hunting;

/// <summary>Where a hunted part would go.</summary>
internal static class HuntedPlace
{
    /// <summary>What is hunted for a place of a vehicle.</summary>
    public static IEnumerable<WantedPart> Hunts(Shop shop, VehicleOnBench bench, Position position)
        => shop.Wanted(bench.Vehicle).Where(wanted => wanted.State == WantedState.Hunting && Of(bench.Driveline, wanted) == position);

    /// <summary>An axle goes where its name says where the vehicle has one at either end, else it is the one that drives; null for what has no place in a driveline.</summary>
    public static Position? Of(Driveline driveline, WantedPart wanted) => wanted.Kind switch
    {
        WantedKind.Engine => Position.Engine,
        WantedKind.Transmission => Position.Transmission,
        WantedKind.Overdrive => Position.Overdrive,
        WantedKind.TransferCase => Position.TransferCase,
        WantedKind.Propshaft => Position.Propshaft,
        WantedKind.Axle => driveline.OtherAxle is not null && AxlePlace.Said(wanted.Title) == driveline.OtherPosition ? driveline.OtherPosition : driveline.DrivingPosition,
        WantedKind.Tyres or WantedKind.Wheels => Position.Tyres,
        WantedKind.Speedometer => Position.Speedometer,
        _ => null,
    };
}
