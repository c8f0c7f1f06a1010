using BuildLog.Data.Plans;
using BuildLog.Data.Vehicles;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Hunting;

internal static class HuntingMapping
{
    public static void Map(ModelBuilder model)
    {
        var wanted = model.Entry<WantedPart>("WantedParts").Of<WantedPart, Vehicle>(w => w.VehicleId).Of<WantedPart, Plan>(w => w.PlanId);
        wanted.Ignore(w => w.Windows);
        wanted.Ignore(w => w.MustHaves);
        wanted.Rows(w => w.WindowRows, row => row.WantedPartId).Rows(w => w.MustHaveRows, row => row.WantedPartId);
        wanted.Filled("Title").Words(w => w.Kind).Words(w => w.State).Day("Deadline").Money(w => w.Most)
            .Rule("Dropped", "\"State\" <> 'Dropped' OR length(trim(\"DroppedFor\")) > 0");

        var window = model.Entity<WindowRow>().ToTable("WantedWindows");
        window.HasIndex(row => new { row.WantedPartId, row.Ordinal }).IsUnique();
        window.Words(row => row.Quantity)
            .Rule("Ordinal", "\"Ordinal\" >= 1")
            .Rule("Sides", """("LowSi" IS NOT NULL OR "HighSi" IS NOT NULL) AND ("LowSi" IS NULL OR "HighSi" IS NULL OR "LowSi" <= "HighSi")""");

        var must = model.Entity<MustHaveRow>().ToTable("WantedMustHaves");
        must.HasIndex(row => new { row.WantedPartId, row.Ordinal }).IsUnique();
        must.Filled("What").Filled("Text").Rule("Ordinal", "\"Ordinal\" >= 1");

        var offer = model.Entry<Offer>("Offers").With(o => o.Wanted).With(o => o.Supplier);
        offer.Ignore(o => o.SeenDay);
        offer.Filled("What").Day("Seen").LooseDay(o => o.SeenAsTyped).Within("Seen", "SeenAsTyped").Day("Expires").Money(o => o.Price).Rule("Forward", "\"Expires\" >= \"Seen\"");
    }
}
