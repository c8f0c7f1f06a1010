using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Puts right what was read or typed wrongly of a session or a road test, or strikes one that never was. Each act returns what happened, or null if nothing did.</summary>
public sealed class SessionActs(Shop shop, TimeProvider clock, ForNow forNow)
{
    public string? Correct(IFormHost host, long vehicleId, long sessionId)
    {
        var session = Find(vehicleId, sessionId);
        return host.Fill(FormFor(session)) ? Spoken($"Corrected: the {session.Method} of {session.Subject}.") : null;
    }

    public string Strike(long vehicleId, long sessionId)
    {
        var session = Find(vehicleId, sessionId);
        shop.Remove(session);
        return Spoken($"Struck: the {session.Method} of {session.Subject}. z brings it back.");
    }

    public string? CorrectDrive(IFormHost host, long vehicleId, long testId)
    {
        var (vehicle, test) = FindDrive(vehicleId, testId);
        return host.Fill(RoadTestForm.For(vehicle, day => shop.DrivelineWhen(vehicle, day)?.Driveline, clock.Today(), edit => shop.Change(test, edit), test, forNow.Units)) ? Spoken($"Corrected: the {Spoken("road test")} of {vehicle.Name}.") : null;
    }

    public string StrikeDrive(long vehicleId, long testId)
    {
        var (vehicle, test) = FindDrive(vehicleId, testId);
        shop.Remove(test);
        return Spoken($"Struck: the {Spoken("road test")} of {vehicle.Name}. z brings it back.");
    }

    private (Vehicle Vehicle, RoadTest Test) FindDrive(long vehicleId, long testId)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        return (vehicle, shop.RoadTests(vehicle).First(test => test.Id == testId));
    }

    private Form FormFor(Session session) => session switch
    {
        TurnCountSession count => TurnCountForm.For(count.Subject, clock.Today(), edit => shop.Change(count, edit), known: count),
        GearCountSession count => GearCountForm.For(count.Subject, count.Gear, clock.Today(), edit => shop.Change(count, edit), known: count),
        RollOutSession roll => RollOutForm.For((WheelSetComponent)roll.Component!, clock.Today(), forNow.Units, edit => shop.Change(roll, edit), known: roll),
        TeethSession teeth => TeethForm.For((AxleComponent)teeth.Component!, clock.Today(), edit => shop.Change(teeth, edit), teeth),
        LoadedRadiusSession radius => LoadedRadiusForm.For((WheelSetComponent)radius.Component!, clock.Today(), edit => shop.Change(radius, edit), radius, forNow.Units),
        BoltCircleSession circle => BoltCircleForm.For((BoltedComponent)circle.Component!, clock.Today(), edit => shop.Change(circle, edit), circle),
        ShaftAnglesSession angles => PropshaftAnglesForm.For((PropshaftComponent)angles.Component!, clock.Today(), edit => shop.Change(angles, edit), angles),
        WeighbridgeSession weighing => WeighbridgeForm.For(weighing.Vehicle!, clock.Today(), edit => shop.Change(weighing, edit), weighing, forNow.Units),
        SpeedometerRunSession run => SpeedometerRunForm.For(run.Vehicle!, clock.Today(), edit => shop.Change(run, edit), run),
        _ => throw new ArgumentOutOfRangeException(nameof(session), session.Method, "A session that no form corrects."),
    };

    private Session Find(long vehicleId, long sessionId) => shop.Sessions(shop.FindVehicle(vehicleId)).First(each => each.Id == sessionId);
}
