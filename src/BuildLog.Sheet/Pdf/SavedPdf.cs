using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace BuildLog.Sheet.Pdf;

/// <summary>The objects and the trailer of a file that PDFsharp saved: one plain cross-reference table, no updates.</summary>
internal sealed partial record SavedPdf(IReadOnlyList<PdfObject> Objects, string Trailer)
{
    private const int CrossReferenceEntry = 20;

    /// <summary>How many object numbers are in use, number 0 included.</summary>
    public int Count => Objects.Count + 1;

    public static SavedPdf Read(byte[] file)
    {
        var text = Encoding.Latin1.GetString(file);        // one character a byte, so positions agree
        var table = Number(StartOfTable().Match(text[text.LastIndexOf("startxref", StringComparison.Ordinal)..]));
        var head = TableHead().Match(text, table);
        var count = Number(head);

        var objects = new List<PdfObject>(count);
        for (var number = 1; number < count; number++)
        {
            var entry = head.Index + head.Length + CrossReferenceEntry * number;
            var start = int.Parse(text.AsSpan(entry, 10), CultureInfo.InvariantCulture);
            objects.Add(ReadObject(file, text, number, start));
        }

        var trailer = text.IndexOf("<<", text.IndexOf("trailer", table, StringComparison.Ordinal), StringComparison.Ordinal);
        return new SavedPdf(objects, text[trailer..PdfSyntax.EndOfValue(text, trailer)]);
    }

    private static PdfObject ReadObject(byte[] file, string text, int number, int start)
    {
        var from = text.IndexOf("obj", start, StringComparison.Ordinal) + "obj".Length;
        var to = PdfSyntax.EndOfValue(text, from);
        var value = text[from..to].Trim();

        var stream = StreamStart().Match(text, to);
        if (!stream.Success) return new PdfObject(number, value, null);

        var data = stream.Index + stream.Length;
        return new PdfObject(number, value, file[data..(data + Number(PdfSyntax.Length().Match(value)))]);
    }

    private static int Number(Match match) =>
        match.Success
            ? int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture)
            : throw new InvalidDataException("PDFsharp saved the file in a form that the finisher does not know.");

    [GeneratedRegex(@"startxref\s+(\d+)")]
    private static partial Regex StartOfTable();

    [GeneratedRegex(@"\Gxref\s+0\s+(\d+)\s*\n")]
    private static partial Regex TableHead();

    [GeneratedRegex(@"\G\s*stream\r?\n")]
    private static partial Regex StreamStart();
}
