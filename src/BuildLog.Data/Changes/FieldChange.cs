using System.Globalization;
using BuildLog.Data.Costs;

namespace BuildLog.Data.Changes;

/// <summary>One value before and after.</summary>
/// <param name="Field">What it is called.</param>
/// <param name="Before">Null where there was none.</param>
/// <param name="After">Null where there is none now.</param>
public sealed record FieldChange(string Field, string? Before, string? After)
{
    private const string Text = "Text";

    // Stored as the code calls it, and read as the trade does: "rear axle", not "RearAxle".
    private static readonly HashSet<string> ColumnsOfWords =
        ["Construction", "Fate", "FrontDrive", "Identified", "Induction", "Limited", "OdometerUnit", "Ownership", "Per", "Pickup", "Position", "Quantity", "Spec", "State", "Step", "Trait", "Wheels", "Wish", "Yokes"];

    /// <summary>What a person typed or chose; keys, counters and what follows from a text are left out.</summary>
    internal static IEnumerable<FieldChange> Of(ChangeRow row)
    {
        var columns = RowDiff.Parse(row.Diff).Columns;
        var typed = columns.Where(change => change.Column.EndsWith(Text, StringComparison.Ordinal)).Select(change => change.Column[..^Text.Length]).ToHashSet();
        return columns.Where(change => IsTyped(change.Column, typed)).Select(change => Amount(row, columns, change.Column) ?? new FieldChange(Words(change.Column), Shown(change.Column, change.Before), Shown(change.Column, change.After)))
            .Distinct();
    }

    // Both halves of an amount give the same line.
    private static FieldChange? Amount(ChangeRow row, IReadOnlyList<(string Column, object? Before, object? After)> columns, string column)
    {
        if ((AmountColumns.NameIn(column, AmountColumns.Minor) ?? AmountColumns.NameIn(column, AmountColumns.Currency)) is not { } name) return null;

        var (minor, currency) = (Half(name + AmountColumns.Minor), Half(name + AmountColumns.Currency));
        return new(Words(name), Money(minor.Before, currency.Before), Money(minor.After, currency.After));

        (object? Before, object? After) Half(string half)
            => row.Stayed.TryGetValue(half, out var stayed) ? (stayed, stayed) : columns.Where(change => change.Column == half).Select(change => (change.Before, change.After)).FirstOrDefault();
    }

    private static string? Money(object? minor, object? currency) => minor is long amount && currency is string code ? new Money(amount, code).ToString() : null;

    private static bool IsTyped(string column, HashSet<string> typed)
        => column is not ("Id" or "Uid" or StoredRow.Version or "NameKey" or "Ordinal")
            && !column.EndsWith("Id", StringComparison.Ordinal)
            && !column.EndsWith("Si", StringComparison.Ordinal)
            && !column.EndsWith("Order", StringComparison.Ordinal)
            && !((string[])["Unit", "Metres", "Earliest", "Latest"]).Any(end => column.EndsWith(end, StringComparison.Ordinal) && typed.Contains(column[..^end.Length]));

    private static string Words(string column)
        => RecordWords.Column(column.Length > Text.Length && column.EndsWith(Text, StringComparison.Ordinal) ? column[..^Text.Length] : column);

    private static string? Shown(string column, object? value)
        => value is string word && (ColumnsOfWords.Contains(column) || column.EndsWith("Source", StringComparison.Ordinal)) && RecordWords.Column(word) is { Length: > 0 } words ? words : Shown(value);

    private static string? Shown(object? value) => value is "" ? null : Convert.ToString(value, CultureInfo.InvariantCulture) is { Length: > 0 } text ? text : null;
}
