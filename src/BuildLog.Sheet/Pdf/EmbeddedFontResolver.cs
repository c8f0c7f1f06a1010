using BuildLog.Sheet.Fonts;
using PdfSharp.Fonts;

namespace BuildLog.Sheet.Pdf;

/// <summary>Gives PDFsharp the embedded faces. Each is its own family, so nothing is simulated and nothing looked up on the machine.</summary>
internal sealed class EmbeddedFontResolver : IFontResolver
{
    private static readonly Lock Gate = new();

    /// <summary>PDFsharp has one resolver a process.</summary>
    public static void Install()
    {
        lock (Gate) GlobalFontSettings.FontResolver ??= new EmbeddedFontResolver();
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        SheetFonts.Named(familyName) is null ? null : new FontResolverInfo(familyName);

    public byte[]? GetFont(string faceName) => SheetFonts.Named(faceName)?.File.ToArray();
}
