using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Workshops;

internal static class WorkshopMapping
{
    public static void Map(ModelBuilder model)
    {
        var workshop = model.Entry<Workshop>("Workshops");
        workshop.Ignore(w => w.Bare);
        workshop.Rule("Currency", "\"Currency\" GLOB '[A-Z][A-Z][A-Z]'");
    }
}
