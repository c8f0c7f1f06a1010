using System.Buffers;
using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace BuildLog.Sheet.Pdf;

/// <summary>Writes objects as a PDF 1.7 file with object streams and a cross-reference stream (ISO 32000-1, 7.5.7 and 7.5.8).</summary>
internal sealed partial class PackedPdf
{
    private const int ObjectsInAStream = 200;
    private const int CrossReferenceEntry = 7;

    private readonly ArrayBufferWriter<byte> file;
    private readonly List<Place> places;                   // by object number

    private PackedPdf(SavedPdf pdf)
    {
        file = new ArrayBufferWriter<byte>(pdf.Objects.Sum(item => item.Value.Length + (item.Stream?.Length ?? 0)));
        places = [.. new Place[pdf.Count]];
    }

    public static ReadOnlyMemory<byte> Write(SavedPdf pdf)
    {
        var packed = new PackedPdf(pdf);
        Put(packed.file, "%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n");   // four high bytes: transfer it as binary
        foreach (var item in pdf.Objects.Where(item => item.Stream is not null)) packed.PutObject(item);
        foreach (var group in pdf.Objects.Where(item => item.Stream is null).Chunk(ObjectsInAStream)) packed.PutObjectStream(group);
        packed.PutCrossReferences(pdf.Trailer);
        return packed.file.WrittenMemory;
    }

    private static void Put(ArrayBufferWriter<byte> to, string text) => to.Advance(Encoding.Latin1.GetBytes(text, to.GetSpan(text.Length)));

    private void PutObject(PdfObject item)
    {
        places[item.Number] = new Place(InFile: true, file.WrittenCount, 0);
        Put(file, string.Create(CultureInfo.InvariantCulture, $"{item.Number} 0 obj\n"));
        file.Write(item.Value.Span);
        Put(file, "\nstream\n");
        file.Write(item.Stream!.Value.Span);
        Put(file, "\nendstream\nendobj\n");
    }

    private void PutObjectStream(PdfObject[] group)
    {
        var number = NextNumber();
        var (index, at) = (new StringBuilder(), 0);
        foreach (var (i, item) in group.Index())
        {
            places[item.Number] = new Place(InFile: false, number, i);
            index.Append(CultureInfo.InvariantCulture, $"{item.Number} {at} ");
            at += item.Value.Length + 1;
        }

        var data = new ArrayBufferWriter<byte>(index.Length + at);
        Put(data, index.ToString());
        foreach (var item in group)
        {
            data.Write(item.Value.Span);
            data.Write("\n"u8);
        }

        PutPacked(number, string.Create(CultureInfo.InvariantCulture, $"/Type/ObjStm/N {group.Length}/First {index.Length}"), data.WrittenSpan);
    }

    private void PutCrossReferences(string trailer)
    {
        var (number, start) = (NextNumber(), file.WrittenCount);
        places[number] = new Place(InFile: true, start, 0);

        var table = new byte[places.Count * CrossReferenceEntry];
        for (var n = 0; n < places.Count; n++) WriteEntry(table.AsSpan(n * CrossReferenceEntry), n, places[n]);
        var kept = string.Concat(KeptEntries().Matches(trailer).Select(match => match.Value));
        PutPacked(number, string.Create(CultureInfo.InvariantCulture, $"/Type/XRef/W[1 4 2]/Size {places.Count}{kept}"), table);
        Put(file, string.Create(CultureInfo.InvariantCulture, $"startxref\n{start}\n%%EOF\n"));
    }

    private void PutPacked(int number, string entries, ReadOnlySpan<byte> data)
    {
        var packed = Zlib.Packed(data);
        var value = string.Create(CultureInfo.InvariantCulture, $"<<{entries}/Filter/FlateDecode/Length {packed.Length}>>");
        PutObject(new PdfObject(number, PdfSyntax.Bytes(value), packed));
    }

    private int NextNumber()
    {
        places.Add(default);
        return places.Count - 1;
    }

    /// <summary>Seven bytes: the kind, where (a position or an object stream's number), and the place in the stream.</summary>
    private static void WriteEntry(Span<byte> entry, int number, Place place)
    {
        var headOfFree = number == 0;                      // the list of free numbers, which is empty
        entry[0] = (byte)(headOfFree ? 0 : place.InFile ? 1 : 2);
        BinaryPrimitives.WriteInt32BigEndian(entry[1..], place.Where);
        BinaryPrimitives.WriteUInt16BigEndian(entry[5..], headOfFree ? ushort.MaxValue : (ushort)place.Index);
    }

    [GeneratedRegex(@"/(Root|Info|ID)\s*(\[[^\]]*\]|\d+ \d+ R)")]
    private static partial Regex KeptEntries();

    private readonly record struct Place(bool InFile, int Where, int Index);
}
