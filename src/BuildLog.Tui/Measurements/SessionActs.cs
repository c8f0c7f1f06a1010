using BuildLog.Data;

namespace BuildLog.Tui.Measurements;

/// <summary>Strikes a session that was entered by mistake.</summary>
public sealed class SessionActs(Shop shop)
{
    public string Strike(long vehicleId, long sessionId)
    {
        var session = shop.Sessions(shop.FindVehicle(vehicleId)).First(each => each.Id == sessionId);
        shop.Remove(session);
        return $"Struck: the {session.Method} of {session.Component.Name}. z brings it back.";
    }
}
