namespace BuildLog.Sheet.Pdf;

/// <summary>The objects and the trailer of a file that PDFsharp saved: one plain cross-reference table, no updates. They are parts of the file's bytes, not copies.</summary>
internal sealed record SavedPdf(IReadOnlyList<PdfObject> Objects, string Trailer)
{
    private const int CrossReferenceEntry = 20;
    private const int Offset = 10;

    /// <summary>How many object numbers are in use, number 0 included.</summary>
    public int Count => Objects.Count + 1;

    public static SavedPdf Read(ReadOnlyMemory<byte> file)
    {
        var bytes = file.Span;
        var closing = bytes.LastIndexOf("startxref"u8);
        var table = Known(PdfSyntax.NumberAfter("startxref"u8, bytes[Known(closing)..]));
        var count = Known(PdfSyntax.NumberAfter("xref\n0"u8, bytes[table..]));
        var trailer = table + Known(bytes[table..].IndexOf("trailer"u8));

        var entries = bytes[(trailer - count * CrossReferenceEntry)..trailer];
        var objects = new PdfObject[count - 1];
        for (var number = count - 1; number > 0; number--)
        {
            var end = number == count - 1 ? table : StartOf(number + 1, entries);
            objects[number - 1] = ReadObject(number, file[StartOf(number, entries)..end]);
        }

        return new SavedPdf(objects, PdfSyntax.Text(file[(trailer + "trailer".Length)..closing]));
    }

    private static int StartOf(int number, ReadOnlySpan<byte> entries) =>
        Known(PdfSyntax.Number(entries.Slice(number * CrossReferenceEntry, Offset)));

    /// <summary>An object's place in the file: number, value, perhaps a stream, and the words around them.</summary>
    private static PdfObject ReadObject(int number, ReadOnlyMemory<byte> place)
    {
        var inside = Without(place[(Known(place.Span.IndexOf("obj"u8)) + "obj".Length)..].Trim(PdfSyntax.Blanks), "endobj"u8);
        if (!inside.Span.EndsWith("endstream"u8)) return new PdfObject(number, inside, null);

        // A stream may hold any word, so it is found from its end: the value before it tells its length.
        var length = Known(PdfSyntax.NumberAfter("/Length"u8, inside.Span));
        var upToStream = inside[..^"\nendstream".Length];
        return new PdfObject(number, Without(upToStream[..^length].TrimEnd(PdfSyntax.Blanks), "stream"u8), upToStream[^length..]);
    }

    private static ReadOnlyMemory<byte> Without(ReadOnlyMemory<byte> text, ReadOnlySpan<byte> lastWord) =>
        text.Span.EndsWith(lastWord) ? text[..^lastWord.Length].TrimEnd(PdfSyntax.Blanks) : throw UnknownForm();

    private static int Known(int? found) => found is { } at and >= 0 ? at : throw UnknownForm();

    private static InvalidDataException UnknownForm() => new("PDFsharp saved the file in a form that the finisher does not know.");
}
