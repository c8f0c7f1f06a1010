namespace BuildLog.Sheet.Fonts;

/// <summary>One font file: its bytes for the renderer, its measures for layout. Heights are in ems.</summary>
internal sealed class FontFace
{
    private readonly CharacterMap characters;
    private readonly double[] advances;

    public FontFace(string name, byte[] file)
    {
        (Name, File) = (name, file);
        var font = new FontBytes(file);
        double unitsPerEm = font.Unsigned16(font.Table("head") + 18);
        int hhea = font.Table("hhea"), os2 = font.Table("OS/2");

        Ascent = font.Signed16(hhea + 4) / unitsPerEm;
        Descent = -font.Signed16(hhea + 6) / unitsPerEm;
        CapHeight = font.Unsigned16(os2) >= 2 ? font.Signed16(os2 + 88) / unitsPerEm : TypicalCapHeight;
        characters = new CharacterMap(font);
        advances = ReadAdvances(font, unitsPerEm);
    }

    // Fonts older than OS/2 version 2 do not state it; capitals are commonly seven tenths of an em.
    private const double TypicalCapHeight = 0.7;

    public string Name { get; }

    public ReadOnlyMemory<byte> File { get; }

    public double Ascent { get; }

    public double Descent { get; }

    public double CapHeight { get; }

    public bool Has(int character) => characters.Has(character);

    /// <summary>How far a character moves the pen, in ems.</summary>
    public double Advance(int character) => advances[characters.Glyph(character)];

    public double Width(string text, double size)
    {
        var ems = 0.0;
        foreach (var rune in text.EnumerateRunes()) ems += Advance(rune.Value);
        return ems * size;
    }

    private static double[] ReadAdvances(FontBytes font, double unitsPerEm)
    {
        int hmtx = font.Table("hmtx"), glyphs = font.Unsigned16(font.Table("maxp") + 4);
        int stated = font.Unsigned16(font.Table("hhea") + 34);  // the glyphs after these share the last width
        var widths = new double[glyphs];
        for (var g = 0; g < glyphs; g++) widths[g] = font.Unsigned16(hmtx + 4 * Math.Min(g, stated - 1)) / unitsPerEm;
        return widths;
    }
}
