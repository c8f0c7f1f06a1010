using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace BuildLog.Sheet.Pdf;

/// <summary>Writes objects as a PDF 1.7 file with object streams and a cross-reference stream (ISO 32000-1, 7.5.7 and 7.5.8).</summary>
internal sealed partial class PackedPdf : IDisposable
{
    private const int ObjectsInAStream = 200;

    private readonly MemoryStream file = new();
    private readonly SortedDictionary<int, Place> places = [];
    private int next;

    private PackedPdf(int firstFreeNumber) => next = firstFreeNumber;

    public static byte[] Write(SavedPdf pdf)
    {
        using var packed = new PackedPdf(pdf.Count);
        packed.Put("%PDF-1.7\n%\u00E2\u00E3\u00CF\u00D3\n");   // four high bytes: transfer it as binary
        foreach (var item in pdf.Objects.Where(item => item.Stream is not null)) packed.PutObject(item);
        foreach (var group in pdf.Objects.Where(item => item.Stream is null).Chunk(ObjectsInAStream)) packed.PutObjectStream(group);
        packed.PutCrossReferences(pdf.Trailer);
        return packed.file.ToArray();
    }

    public void Dispose() => file.Dispose();

    private void Put(string text) => file.Write(Encoding.Latin1.GetBytes(text));

    private void PutObject(PdfObject item)
    {
        places[item.Number] = new Place(InFile: true, (int)file.Position, 0);
        Put(string.Create(CultureInfo.InvariantCulture, $"{item.Number} 0 obj\n{item.Value}\nstream\n"));
        file.Write(item.Stream);
        Put("\nendstream\nendobj\n");
    }

    private void PutObjectStream(PdfObject[] group)
    {
        var number = next++;
        var (index, values) = (new StringBuilder(), new StringBuilder());
        foreach (var (i, item) in group.Index())
        {
            places[item.Number] = new Place(InFile: false, number, i);
            index.Append(CultureInfo.InvariantCulture, $"{item.Number} {values.Length} ");
            values.Append(item.Value).Append('\n');
        }

        var data = Zlib.Compress(Encoding.Latin1.GetBytes($"{index}{values}"));
        PutObject(new PdfObject(number, string.Create(
            CultureInfo.InvariantCulture,
            $"<</Type/ObjStm/N {group.Length}/First {index.Length}/Filter/FlateDecode/Length {data.Length}>>"), data));
    }

    private void PutCrossReferences(string trailer)
    {
        var (number, start) = (next++, (int)file.Position);
        places[0] = new Place(InFile: false, 0, ushort.MaxValue);   // the head of the list of free numbers
        places[number] = new Place(InFile: true, start, 0);

        var table = Zlib.Compress([.. places.SelectMany(place => EntryOf(place.Key, place.Value))]);
        var kept = string.Concat(KeptEntries().Matches(trailer).Select(match => match.Value));
        PutObject(new PdfObject(number, string.Create(
            CultureInfo.InvariantCulture,
            $"<</Type/XRef/W[1 4 2]/Size {next}{kept}/Filter/FlateDecode/Length {table.Length}>>"), table));
        Put(string.Create(CultureInfo.InvariantCulture, $"startxref\n{start}\n%%EOF\n"));
    }

    /// <summary>Seven bytes: the kind, where (a position or an object stream's number), and the place in the stream.</summary>
    private static byte[] EntryOf(int number, Place place)
    {
        var kind = number == 0 ? 0 : place.InFile ? 1 : 2;
        return
        [
            (byte)kind,
            (byte)(place.Where >> 24), (byte)(place.Where >> 16), (byte)(place.Where >> 8), (byte)place.Where,
            (byte)(place.Index >> 8), (byte)place.Index,
        ];
    }

    [GeneratedRegex(@"/(Root|Info|ID)\s*(\[[^\]]*\]|\d+ \d+ R)")]
    private static partial Regex KeptEntries();

    private readonly record struct Place(bool InFile, int Where, int Index);
}
