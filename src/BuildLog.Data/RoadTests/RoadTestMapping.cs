using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.RoadTests;

internal static class RoadTestMapping
{
    public static void Map(ModelBuilder model)
    {
        var test = model.Entry<RoadTest>("RoadTests").Of<RoadTest, Vehicle>(t => t.VehicleId);
        test.HasIndex(t => new { t.VehicleId, t.Date });
        test.Dated().Odometer(t => t.Odometer, "").Noted(t => t.Speed, 0, 1000).Noted(t => t.EngineSpeed, 0, 1000);

        model.Entry<Retorque>("Retorques").Of<Retorque, Vehicle>(r => r.VehicleId)
            .Filled("What").Filled("Initials").Day("Date").Noted(r => r.Torque, 0, 5000);
    }
}
