using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Deadlines;

internal static class DeadlineMapping
{
    public static void Map(ModelBuilder model)
    {
        var deadline = model.Entry<Deadline>("Deadlines").Of<Deadline, Vehicle>(d => d.VehicleId);
        deadline.HasIndex(d => d.Day);
        deadline.Ignore(d => d.DoneDay);
        deadline.Filled("What").Day("Day").Day("Done").LooseDay(d => d.DoneAsTyped).Within("Done", "DoneAsTyped");
    }
}
