using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Sheets;

/// <summary>Where a sheet may go: to a file that says it is a PDF, so that no record or photo is ever written over.</summary>
public static class SheetFile
{
    public static Parsed<string> Read(string text)
        => Path.GetExtension(text.Trim()).Equals(".pdf", StringComparison.OrdinalIgnoreCase)
            ? Path.GetFullPath(AtHome(text.Trim()))
            : new Refusal("file", $"'{text.Trim()}' does not end in .pdf, and a build sheet is a PDF.", "kestrel.pdf");

    // A shell would do it; a form has none.
    private static string AtHome(string path)
        => path.StartsWith("~/", StringComparison.Ordinal)
            ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), path[2..])
            : path;
}
