using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Puts right what was read or typed wrongly of a session, or strikes one that never was. Each act returns what happened, or null if nothing did.</summary>
public sealed class SessionActs(Shop shop, TimeProvider clock, UnitSystem units)
{
    public string? Correct(IFormHost host, long vehicleId, long sessionId)
    {
        var session = Find(vehicleId, sessionId);
        return host.Fill(FormFor(session)) ? $"Corrected: the {session.Method} of {session.Component.Name}." : null;
    }

    public string Strike(long vehicleId, long sessionId)
    {
        var session = Find(vehicleId, sessionId);
        shop.Remove(session);
        return $"Struck: the {session.Method} of {session.Component.Name}. z brings it back.";
    }

    private Form FormFor(Session session) => session switch
    {
        TurnCountSession count => TurnCountForm.For(count.Component.Name, clock.Today(), edit => shop.Change(count, edit), known: count),
        GearCountSession count => GearCountForm.For(count.Component.Name, count.Gear, clock.Today(), edit => shop.Change(count, edit), known: count),
        RollOutSession roll => RollOutForm.For((WheelSetComponent)roll.Component, clock.Today(), units, edit => shop.Change(roll, edit), known: roll),
        _ => throw new ArgumentOutOfRangeException(nameof(session), session.Method, "A session that no form corrects."),
    };

    private Session Find(long vehicleId, long sessionId) => shop.Sessions(shop.FindVehicle(vehicleId)).First(each => each.Id == sessionId);
}
