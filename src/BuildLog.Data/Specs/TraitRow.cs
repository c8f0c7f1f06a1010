namespace BuildLog.Data.Specs;

/// <summary>Words as they are stored, of a part.</summary>
internal sealed class TraitRow
{
    public long Id { get; set; }

    public long ComponentId { get; set; }

    public Trait Trait { get; set; }

    public string Text { get; set; } = "";
}

internal static class TraitRows
{
    public static string? Of(this List<TraitRow> rows, Trait trait) => rows.Find(row => row.Trait == trait)?.Text;

    public static TWords? Of<TWords>(this List<TraitRow> rows, Trait trait)
        where TWords : struct, Enum
        => Enum.TryParse<TWords>(rows.Of(trait), out var word) ? word : null;

    public static void Put(this List<TraitRow> rows, Trait trait, string? text)
    {
        var row = rows.Find(row => row.Trait == trait);
        if (row is not null && text is null) rows.Remove(row);
        else if (row is not null) row.Text = text!.Trim();
        else if (text is not null) rows.Add(new() { Trait = trait, Text = text.Trim() });
    }

    public static void Put<TWords>(this List<TraitRow> rows, Trait trait, TWords? word)
        where TWords : struct, Enum
        => rows.Put(trait, word?.ToString());

    /// <exception cref="Gearing.Quantities.RefusedException">Words were noted under a heading where they cannot be.</exception>
    public static void Check(this List<TraitRow> rows)
    {
        foreach (var row in rows) _ = row.Trait.Line().Read(row.Text).OrRefuse();
    }
}
