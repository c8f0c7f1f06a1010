using System.Globalization;
using BuildLog.Data.Costs;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Lists;

/// <summary>A list that goes to a spreadsheet and comes back: its columns, its rows, and the entry that a row is.</summary>
internal abstract class SpreadsheetList
{
    private const string Day = "yyyy-MM-dd";

    public abstract IReadOnlyList<string> Columns { get; }

    /// <param name="db">The record.</param>
    /// <param name="vehicle">Only this vehicle's; null for all.</param>
    public abstract IEnumerable<IReadOnlyList<string>> Rows(ShopContext db, Vehicle? vehicle);

    /// <summary>The entry that a row describes.</summary>
    /// <exception cref="RefusedException">It is none.</exception>
    public abstract Entered Entry(ShopContext db, Vehicle? vehicle, IReadOnlyDictionary<string, string> row);

    public static SpreadsheetList Of(ListOf what) => what switch
    {
        ListOf.Parts => new PartsList(),
        ListOf.Offers => new OffersList(),
        ListOf.Costs => new CostsList(),
        _ => throw new ArgumentOutOfRangeException(nameof(what), what, "No such list."),
    };

    /// <summary>Stores the rows that are not in the record yet, all of them or none, and says how many those were.</summary>
    public int Take(ShopContext db, Vehicle? vehicle, TextReader input)
    {
        var here = Rows(db, vehicle).Select(Key).ToHashSet(StringComparer.Ordinal);
        var (number, taken) = (1, 0);
        foreach (var row in CsvTable.Read(input, Columns))
        {
            number++;
            if (here.Contains(Key(Columns.Select(column => row[column])))) continue;
            try
            {
                Entries.Add(db, Entry(db, vehicle, row));
                db.SaveChanges();
                taken++;
            }
            catch (RefusedException refused)
            {
                throw CsvTable.Refused(number, $"cannot be: {refused.Message}");
            }
        }

        db.Journal.Label = FormattableString.Invariant($"took in {taken} rows of a list");
        return taken;
    }

    protected static string InWords(DateOnly? day) => day?.ToString(Day, CultureInfo.InvariantCulture) ?? "";

    protected static DateOnly? ReadDay(string text)
        => text.Trim().Length == 0 ? null
            : DateOnly.TryParseExact(text.Trim(), Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day
            : throw new RefusedException("date", $"'{text}' is no date of the form year-month-day.", "2026-05-03");

    protected static Money? ReadMoney(ShopContext db, string text)
        => text.Trim().Length == 0 ? null : MoneyText.Read(text, db.Set<Workshop>().SingleOrDefault()?.Bare ?? Currency.Euro).OrRefuse();

    // Names repeat down a column: the first row that names a supplier makes it.
    protected static long? SupplierNamed(ShopContext db, string name)
    {
        if (name.Trim().Length == 0) return null;
        var known = db.Set<Supplier>().AsEnumerable().FirstOrDefault(supplier => string.Equals(supplier.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));
        if (known is not null) return known.Id;

        var added = Entries.Add(db, new Supplier { Name = name });
        db.SaveChanges();
        return added.Id;
    }

    private static string Key(IEnumerable<string> cells) => string.Join('\u001f', cells.Select(cell => cell.Trim()));
}
