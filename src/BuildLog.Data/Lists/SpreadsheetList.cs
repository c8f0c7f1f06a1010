using System.Globalization;
using BuildLog.Data.Days;
using BuildLog.Data.Vehicles;
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
    /// <param name="named">What it may name.</param>
    /// <param name="row">Its cells by column.</param>
    /// <exception cref="RefusedException">It is none.</exception>
    public abstract Entered Entry(NamedInRows named, IReadOnlyDictionary<string, string> row);

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
        var named = new NamedInRows(db, vehicle);
        var here = Rows(db, vehicle).Select(cells => Meaning(named, cells)).ToHashSet(StringComparer.Ordinal);
        var (number, taken) = (1, 0);
        foreach (var row in CsvTable.Read(input, Columns))
        {
            number++;
            if (here.Contains(Meaning(named, Columns.Select(column => row[column])))) continue;
            try
            {
                Entries.Add(db, Entry(named, row));
                db.SaveChanges();
                taken++;
            }
            catch (RefusedException refused)
            {
                throw CsvTable.Refused(number, Spoken($"cannot be: {refused.Message}"));
            }
        }

        db.Journal.Did(() => FormattableString.Invariant($"took in {taken} {(taken == 1 ? "row" : "rows")} of a list"));
        return taken;
    }

    protected static string InWords(LooseDay day) => day.IsExact ? InWords(day.Earliest) : day.Text;

    protected static string InWords(DateOnly? day) => day?.ToString(Day, CultureInfo.InvariantCulture) ?? "";

    protected static DateOnly? ReadDay(string text)
        => text.Trim().Length == 0 ? null
            : DateOnly.TryParseExact(text.Trim(), Day, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day
            : throw new RefusedException("date", Spoken($"{Shown.Quoted(text)} is no date of the form year-month-day."), "2026-05-03");

    /// <summary>One that has been, as far as it is known.</summary>
    protected static LooseDay? ReadLooseDay(string text) => text.Trim().Length > 0 && LooseDayText.Read(text).Understood(out var loose) && !loose.IsExact ? loose : ReadDay(text) is { } day ? LooseDay.On(day) : null;

    /// <summary>The same for two rows that say the same, however a spreadsheet or a hand spelt them.</summary>
    private string Meaning(NamedInRows named, IEnumerable<string> cells) => string.Join('\u001f', Columns.Zip(cells, (column, cell) => column switch
    {
        "price" or "amount" => named.Spelt(cell),
        "vehicle" or "kind" or "wanted" or "supplier" or "job" => cell.Trim().ToUpperInvariant(),
        _ => cell.Trim().ReplaceLineEndings("\n"),
    }));
}
