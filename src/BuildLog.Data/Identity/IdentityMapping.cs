using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Identity;

internal static class IdentityMapping
{
    public static void Map(ModelBuilder model)
    {
        var number = model.Entry<IdentityNumber>("IdentityNumbers");
        number.Of<IdentityNumber, Vehicle>(n => n.VehicleId).Of<IdentityNumber, Component>(n => n.ComponentId);
        number.Filled("Number").Words(n => n.Identified).LooseDay(n => n.Read)
            .Rule("Owner", """("VehicleId" IS NULL) + ("ComponentId" IS NULL) = 1""");
    }
}
