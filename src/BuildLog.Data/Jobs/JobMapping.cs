using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Jobs;

internal static class JobMapping
{
    public static void Map(ModelBuilder model)
    {
        var job = model.Entry<Job>("Jobs").Of<Job, Vehicle>(j => j.VehicleId).With(j => j.WaitsFor);
        job.Ignore(j => j.IsOpen);
        job.Ignore(j => j.IsBlocked);
        job.Filled("Title").Words(j => j.State).Day("Due");

        var work = model.Entry<WorkEntry>("WorkEntries").Of<WorkEntry, Job>(w => w.JobId);
        work.HasIndex(w => new { w.JobId, w.Date });
        work.Filled("Hours").Dated().Rule("Minutes", "\"Minutes\" BETWEEN 1 AND 1440");

        var outside = model.Entry<OutsideWork>("OutsideWorks").Of<OutsideWork, Job>(w => w.JobId).With(w => w.Supplier);
        outside.Ignore(w => w.SentDay).Ignore(w => w.BackDay);
        outside.Filled("What").Day("Sent").Day("Promised").Day("Back")
            .LooseDay(w => w.SentAsTyped).LooseDay(w => w.BackAsTyped).Within("Sent", "SentAsTyped").Within("Back", "BackAsTyped")
            .Rule("Forward", """("Promised" IS NULL OR "Promised" >= "Sent") AND ("Back" IS NULL OR "Back" >= "Sent")""");
    }
}
