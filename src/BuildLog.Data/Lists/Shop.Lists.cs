using BuildLog.Data.Lists;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data;

/// <summary>Lists for a spreadsheet.</summary>
public sealed partial class Shop
{
    /// <summary>Writes a list as CSV.</summary>
    /// <param name="what">Which.</param>
    /// <param name="output">Where to.</param>
    /// <param name="vehicle">Only this vehicle's; null for all.</param>
    public void WriteList(ListOf what, TextWriter output, Vehicle? vehicle = null) => store.Read(db =>
    {
        var list = SpreadsheetList.Of(what);
        CsvTable.Write(output, list.Columns, list.Rows(db, vehicle));
        return true;
    });

    /// <summary>Adds the rows of a CSV that are not in the record yet, all or none, and says how many those were.</summary>
    /// <exception cref="Gearing.Quantities.RefusedException">A row is none; the sentence names it, and nothing is stored.</exception>
    public int ReadList(ListOf what, TextReader input, Vehicle? vehicle = null) => store.Write(db => SpreadsheetList.Of(what).Take(db, vehicle, input));
}
