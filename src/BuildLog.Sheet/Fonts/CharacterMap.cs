namespace BuildLog.Sheet.Fonts;

/// <summary>Which glyph draws a character: a font's <c>cmap</c> table, formats 4 and 12 (OpenType specification).</summary>
internal sealed class CharacterMap
{
    // Latin letters, figures and the usual signs are nearly all of a sheet, and layout asks for each of them several times.
    private const int Usual = 0x250;

    private readonly Dictionary<int, ushort> glyphs = [];
    private readonly ushort[] usual;

    public CharacterMap(FontBytes font)
    {
        var table = font.Table("cmap");
        var (format4, format12) = (0, 0);
        int count = font.Unsigned16(table + 2);
        for (var i = 0; i < count; i++)
        {
            var subtable = table + (int)font.Unsigned32(table + 8 + 8 * i);
            if (font.Unsigned16(subtable) == 4) format4 = subtable;
            if (font.Unsigned16(subtable) == 12) format12 = subtable;
        }

        if (format12 != 0) ReadGroups(font, format12);     // knows more than format 4, which stops at U+FFFF
        else ReadSegments(font, format4);
        usual = [.. Enumerable.Range(0, Usual).Select(character => glyphs.GetValueOrDefault(character))];
    }

    public bool Has(int character) => character < Usual ? usual[character] != 0 : glyphs.ContainsKey(character);

    /// <summary>The glyph, or glyph 0, "not defined".</summary>
    public ushort Glyph(int character) => character < Usual ? usual[character] : glyphs.GetValueOrDefault(character);

    private void ReadGroups(FontBytes font, int at)
    {
        var count = font.Unsigned32(at + 12);
        for (var i = 0; i < count; i++)
        {
            var group = at + 16 + 12 * i;
            var (first, last, glyph) = (font.Unsigned32(group), font.Unsigned32(group + 4), font.Unsigned32(group + 8));
            for (var c = first; c <= last; c++) glyphs[(int)c] = (ushort)(glyph + c - first);
        }
    }

    private void ReadSegments(FontBytes font, int at)
    {
        int size = font.Unsigned16(at + 6);                // two bytes a segment, in each of four parallel arrays
        var (ends, starts) = (at + 14, at + 16 + size);
        var (deltas, offsets) = (starts + size, starts + 2 * size);
        for (var i = 0; i < size; i += 2)
        {
            int first = font.Unsigned16(starts + i), last = font.Unsigned16(ends + i), delta = font.Signed16(deltas + i);
            int offset = font.Unsigned16(offsets + i);
            for (var c = first; c <= last && c != 0xFFFF; c++)
            {
                var listed = offset == 0 ? c : font.Unsigned16(offsets + i + offset + 2 * (c - first));
                var glyph = offset != 0 && listed == 0 ? 0 : (listed + delta) & 0xFFFF;
                if (glyph != 0) glyphs[c] = (ushort)glyph;
            }
        }
    }
}
