using System.Buffers.Binary;
using System.Text;

namespace BuildLog.Sheet.Fonts;

/// <summary>Reads the big-endian numbers of an OpenType file, and finds its tables.</summary>
internal sealed class FontBytes
{
    private const int TableDirectory = 12;
    private const int TableRecord = 16;

    private readonly byte[] bytes;
    private readonly Dictionary<string, int> tables = [];

    public FontBytes(byte[] bytes)
    {
        this.bytes = bytes;
        int count = Unsigned16(4);
        for (var i = 0; i < count; i++)
        {
            var record = TableDirectory + TableRecord * i;
            tables[Encoding.ASCII.GetString(bytes, record, 4)] = (int)Unsigned32(record + 8);
        }
    }

    /// <summary>Where a table starts in the file.</summary>
    public int Table(string name) => tables[name];

    public ushort Unsigned16(int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at));

    public short Signed16(int at) => BinaryPrimitives.ReadInt16BigEndian(bytes.AsSpan(at));

    public uint Unsigned32(int at) => BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at));
}
