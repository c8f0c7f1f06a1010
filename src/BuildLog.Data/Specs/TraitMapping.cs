using BuildLog.Data.Components;
using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Specs;

/// <summary>Words that few parts have lie one to a row, under their heading; some headings have their own words only.</summary>
internal static class TraitMapping
{
    public static void Map(ModelBuilder model)
    {
        // Deleting is done by the program, row by row, where a log can see it.
        var component = model.Entity<Component>();
        component.HasMany(c => c.Traits).WithOne().HasForeignKey(row => row.ComponentId).OnDelete(DeleteBehavior.ClientCascade);
        component.Navigation(c => c.Traits).AutoInclude();

        var trait = model.Entity<TraitRow>().ToTable("Traits");
        trait.HasIndex(row => new { row.ComponentId, row.Trait }).IsUnique();
        trait.Words(row => row.Trait).Filled("Text");
        foreach (var heading in Enum.GetValues<Trait>().Where(heading => heading.Line().Choices.Count > 0))
            trait.Rule($"{heading}", $"\"Trait\" <> '{heading}' OR \"Text\" IN ({string.Join(", ", heading.Line().Choices.Select(word => $"'{word}'"))})");
    }
}
