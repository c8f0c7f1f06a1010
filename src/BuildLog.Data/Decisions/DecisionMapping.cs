using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Decisions;

internal static class DecisionMapping
{
    public static void Map(ModelBuilder model)
    {
        var decision = model.Entry<Decision>("Decisions").Of<Decision, Vehicle>(d => d.VehicleId);
        decision.HasIndex(d => new { d.VehicleId, d.Date });
        decision.Filled("What").Dated();
    }
}
