using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Changes;

/// <summary>An amount of money is two columns, and the log holds only the one that changed: what the other was at the time stands earlier in the log.</summary>
internal static class AmountColumns
{
    public const string Minor = "Minor";
    public const string Currency = "Currency";

    /// <summary>The other column of the same amount; null for a column that is half of none.</summary>
    public static string? PartnerOf(string column)
        => NameIn(column, Minor) is { } amount ? amount + Currency : NameIn(column, Currency) is { } priced ? priced + Minor : null;

    /// <summary><c>Price</c> for <c>PriceMinor</c>; null for a column of another ending.</summary>
    public static string? NameIn(string column, string ending)
        => column.Length > ending.Length && column.EndsWith(ending, StringComparison.Ordinal) ? column[..^ending.Length] : null;

    /// <summary>Tells each row what stayed of an amount of which it changed one half.</summary>
    public static void Complete(ShopContext db, IEnumerable<ChangeRow> rows)
    {
        // What was added or taken out is told whole.
        foreach (var row in rows.Where(row => row.Op == RowOp.Update))
        {
            var columns = RowDiff.Parse(row.Diff).Columns.Select(change => change.Column).ToHashSet();
            foreach (var partner in columns.Select(PartnerOf).OfType<string>().Where(partner => !columns.Contains(partner))) row.Stayed[partner] = Before(db, row, partner);
        }
    }

    private static object? Before(ShopContext db, ChangeRow row, string column)
        => db.Set<ChangeRow>().AsNoTracking()
            .Where(earlier => earlier.TableName == row.TableName && earlier.RowId == row.RowId && earlier.Id < row.Id && earlier.Diff.Contains($"\"{column}\":"))
            .OrderByDescending(earlier => earlier.Id)
            .Select(earlier => earlier.Diff)
            .FirstOrDefault() is { } diff ? RowDiff.Parse(diff).Columns.FirstOrDefault(change => change.Column == column).After : null;
}
