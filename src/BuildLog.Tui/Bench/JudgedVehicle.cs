using BuildLog.Data;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;

namespace BuildLog.Tui.Bench;

/// <summary>A vehicle's driveline on one day and what the checks say of it: all that the list of vehicles needs.</summary>
public sealed record JudgedVehicle(Vehicle Vehicle, DrivelineOfDay Fitted, OwnersGoals Goals, IReadOnlyList<Finding> Findings)
{
    public static JudgedVehicle Read(Shop shop, Vehicle vehicle, DateOnly day)
    {
        var fitted = shop.DrivelineOn(vehicle, day);
        var goals = shop.GoalsOf(vehicle);
        return new(vehicle, fitted, goals, AllChecks.Look(fitted.Driveline, goals));
    }
}
