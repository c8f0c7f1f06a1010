namespace BuildLog.Data.Specs;

/// <summary>A number as it is stored: of a part or of a vehicle.</summary>
internal sealed class SpecRow
{
    public long Id { get; set; }

    public long? ComponentId { get; set; }

    public long? VehicleId { get; set; }

    public Spec Spec { get; set; }

    public required Noted Number { get; set; }
}

internal static class SpecRows
{
    public static Noted? Of(this List<SpecRow> rows, Spec spec) => rows.Find(row => row.Spec == spec)?.Number;

    public static void Put(this List<SpecRow> rows, Spec spec, Noted? number)
    {
        var row = rows.Find(row => row.Spec == spec);
        if (row is not null && number is null) rows.Remove(row);
        else if (row is not null) row.Number = number!;
        else if (number is not null) rows.Add(new() { Spec = spec, Number = number });
    }

    /// <exception cref="Gearing.Quantities.RefusedException">A number was noted under a heading where it cannot be.</exception>
    public static void Check(this List<SpecRow> rows)
    {
        foreach (var row in rows) _ = row.Spec.Line().Read(row.Number.Text).OrRefuse();
    }
}
