using System.Globalization;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Fitments;
using BuildLog.Gearing.Measurements;
using SQLitePCL;

namespace BuildLog.Data.Rows;

/// <summary>The row that a reader has come to, by the names of its columns; what takes several columns has the name that <see cref="TableRules"/> makes theirs of.</summary>
internal sealed class Row(sqlite3_stmt statement, Dictionary<string, int> columns)
{
    public bool Has(string column) => raw.sqlite3_column_type(statement, At(column)) != raw.SQLITE_NULL;

    public string Text(string column) => raw.sqlite3_column_text(statement, Filled(column)).utf8_to_string();

    public string? TextIfAny(string column) => Has(column) ? Text(column) : null;

    public long Key(string column) => raw.sqlite3_column_int64(statement, Filled(column));

    public long? KeyIfAny(string column) => Has(column) ? Key(column) : null;

    public int Count(string column) => checked((int)Key(column));

    public int? CountIfAny(string column) => Has(column) ? Count(column) : null;

    public double Number(string column) => raw.sqlite3_column_double(statement, Filled(column));

    public double? NumberIfAny(string column) => Has(column) ? Number(column) : null;

    public bool Flag(string column) => Key(column) != 0;

    public bool? FlagIfAny(string column) => Has(column) ? Flag(column) : null;

    public Guid Uid(string column) => Guid.Parse(Text(column));

    public DateOnly Day(string column) => DateOnly.ParseExact(Text(column), "yyyy-MM-dd", CultureInfo.InvariantCulture);

    public DateOnly? DayIfAny(string column) => Has(column) ? Day(column) : null;

    public TWord Word<TWord>(string column)
        where TWord : struct, Enum
        => Enum.TryParse(typeof(TWord), Text(column), out var word) ? (TWord)word : throw new FormatException($"'{Text(column)}' is no word for {column}.");

    public TWord? WordIfAny<TWord>(string column)
        where TWord : struct, Enum
        => Has(column) ? Word<TWord>(column) : null;

    public Noted? Noted(string name)
        => Has($"{name}Text") ? new(Number($"{name}Si"), Text($"{name}Unit"), Text($"{name}Text"), Word<Source>($"{name}Source")) : null;

    public Money? Money(string name) => Has($"{name}Minor") ? new(Key($"{name}Minor"), Text($"{name}Currency")) : null;

    public LooseDay? LooseDay(string name) => Has($"{name}Text") ? new(Text($"{name}Text"), DayIfAny($"{name}Earliest"), DayIfAny($"{name}Latest")) : null;

    public OdometerReading? Odometer(string end)
        => Has($"{end}OdometerText") ? new(Number($"{end}OdometerMetres"), Text($"{end}OdometerUnit"), Text($"{end}OdometerText")) : null;

    /// <summary>The record with what every record has.</summary>
    public T Kept<T>(T record)
        where T : Kept
    {
        record.Id = Key("Id");
        record.Uid = Uid("Uid");
        record.Version = Key("Version");
        return record;
    }

    // Only in an unsound file nothing stands where the program needs something.
    private int Filled(string column) => Has(column) ? At(column) : throw new FormatException($"Nothing stands in {column}.");

    // Only of an unsound file the program does not know the columns.
    private int At(string column) => columns.TryGetValue(column, out var at) ? at : throw new FormatException($"There is no column {column}.");
}
