using System.Globalization;
using BuildLog.Gearing.Quantities;
using CsvHelper;
using CsvHelper.Configuration;

namespace BuildLog.Data.Lists;

/// <summary>A table as CSV (RFC 4180): the first row names the columns.</summary>
/// <remarks>
/// A spreadsheet takes a cell that begins with =, + or @ for a formula and runs it. Such a cell gets an apostrophe in front, which a spreadsheet
/// does not show, and loses it again when it is read here. Reading takes the comma, the semicolon and the tab as separators.
/// </remarks>
public static class CsvTable
{
    private const int MostRows = 100_000;
    private const int LongestCell = 20_000;
    private const char Harmless = '\'';
    private static readonly char[] Formula = ['=', '+', '-', '@', '\t', '\r'];

    public static void Write(TextWriter output, IReadOnlyList<string> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        using var csv = new CsvWriter(output, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" }, leaveOpen: true);
        foreach (var row in rows.Prepend(columns))
        {
            foreach (var cell in row) csv.WriteField(Guarded(cell));
            csv.NextRecord();
        }
    }

    /// <exception cref="RefusedException">It is no such table; the sentence names the row.</exception>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(TextReader input, IReadOnlyList<string> columns)
    {
        var settings = new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            DetectDelimiter = true,
            DetectDelimiterValues = [",", ";", "\t"],
            MaxFieldSize = LongestCell,
            PrepareHeaderForMatch = header => header.Header.Trim().ToUpperInvariant(),
        };
        using var csv = new CsvReader(input, settings, leaveOpen: true);
        try
        {
            return Read(csv, columns);
        }
        catch (CsvHelperException broken)
        {
            throw Refused(csv.Context.Parser?.Row ?? 1, broken is MaxFieldSizeException ? Spoken("holds a cell longer than anything BuildLog writes") : Spoken("is no row of a table with separators"));
        }
    }

    private static List<IReadOnlyDictionary<string, string>> Read(CsvReader csv, IReadOnlyList<string> columns)
    {
        if (!csv.Read() || !csv.ReadHeader()) throw new RefusedException("csv", Spoken("The file is empty."), string.Join(',', columns));

        var unknown = csv.HeaderRecord!.Where(header => !columns.Contains(header.Trim(), StringComparer.OrdinalIgnoreCase)).ToList();
        if (unknown.Count > 0)
            throw new RefusedException("csv", Spoken($"The file has a column {Shown.Quoted(unknown[0])} that belongs in no such list; there are {string.Join(", ", columns)}."), string.Join(',', columns));

        var rows = new List<IReadOnlyDictionary<string, string>>();
        while (csv.Read())
        {
            if (rows.Count == MostRows) throw Refused(csv.Context.Parser!.Row, Spoken($"is one too many: a list has {MostRows:N0} rows at most"));
            var row = columns.ToDictionary(column => column, column => Unguarded(csv.TryGetField<string>(column, out var cell) ? cell ?? "" : ""));
            if (!row.Values.All(TextRules.IsText)) throw Refused(csv.Context.Parser!.Row, Spoken("holds signs that are no text"));
            rows.Add(row);
        }

        return rows;
    }

    internal static RefusedException Refused(int row, string what) => new("csv", Spoken($"Nothing was taken in: row {row} {what.TrimEnd('.')}."), "");

    private static string Guarded(string cell) => cell.Length > 0 && (Formula.Contains(cell[0]) || cell[0] == Harmless) ? Harmless + cell : cell;

    private static string Unguarded(string cell) => cell.Length > 1 && cell[0] == Harmless && (Formula.Contains(cell[1]) || cell[1] == Harmless) ? cell[1..] : cell;
}
