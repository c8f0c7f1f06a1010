using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Sheets;

/// <summary>Where a paper may go: to a file whose name says what it is, so that no record or photo is ever written over.</summary>
public static class SheetFile
{
    private const string Pdf = ".pdf";
    private const string Csv = ".csv";
    private const string Zip = ".zip";

    public static Parsed<string> Read(string text) => Read(text, Spoken("a paper is a PDF"), "kestrel.pdf", Pdf);

    /// <summary>The build sheet alone, or with all that goes with the vehicle.</summary>
    public static Parsed<string> ReadSheet(string text) => Read(text, Spoken("a sheet is a PDF, a handover a zip"), "kestrel.pdf", Pdf, Zip);

    /// <summary>Hours and costs go to paper or to a spreadsheet.</summary>
    public static Parsed<string> ReadAccount(string text) => Read(text, Spoken("an account is a PDF or a CSV"), "kestrel-costs.csv", Pdf, Csv);

    /// <summary>What goes with a vehicle is one zip.</summary>
    public static Parsed<string> ReadBundle(string text) => Read(text, Spoken("a handover is a zip"), "kestrel-handover.zip", Zip);

    /// <summary>The name to propose: <c>kestrel-build-sheet.pdf</c>.</summary>
    public static string Usual(Vehicle vehicle, string what)
        => $"{string.Concat(vehicle.Name.Select(c => char.IsLetterOrDigit(c) ? char.ToLowerInvariant(c) : '-')).Trim('-')}-{what}{Pdf}";

    public static bool IsBundle(string path) => EndsIn(path, Zip);

    public static bool IsCsv(string path) => EndsIn(path, Csv);

    private static Parsed<string> Read(string text, string why, string example, params ReadOnlySpan<string> endings)
    {
        foreach (var ending in endings)
        {
            if (EndsIn(text.Trim(), ending)) return TypedPath.Read(text, example);
        }

        return new Refusal("file", Spoken($"{Shown.Quoted(text)} does not end in {string.Join(Spoken(" or "), endings.ToArray())}, and {why}."), example);
    }

    private static bool EndsIn(string path, string ending) => Path.GetExtension(path).Equals(ending, StringComparison.OrdinalIgnoreCase);
}
