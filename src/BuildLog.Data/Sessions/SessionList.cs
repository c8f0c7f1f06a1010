using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Sessions;

/// <summary>Which sessions speak of a vehicle or a part; the latest first.</summary>
internal static class SessionList
{
    public static IReadOnlyList<Session> Of(ShopContext db, Vehicle vehicle)
        => Latest(db.Sessions.Where(session => session.VehicleId == vehicle.Id
            || db.Fitments.Any(fitment => fitment.VehicleId == vehicle.Id && fitment.ComponentId == session.ComponentId)));

    public static IReadOnlyList<Session> Of(ShopContext db, Component component) => Of(db, [component.Id]);

    public static IReadOnlyList<Session> Of(ShopContext db, IReadOnlyCollection<long> components)
        => Latest(db.Sessions.Where(session => components.Contains(session.ComponentId)));

    private static List<Session> Latest(IQueryable<Session> sessions)
        => [.. sessions.OrderByDescending(session => session.Date).ThenByDescending(session => session.Id)];
}
