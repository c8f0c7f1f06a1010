namespace BuildLog.Sheet.Fonts;

/// <summary>The faces embedded in this assembly; nothing is looked up on the machine.</summary>
internal static class SheetFonts
{
    private static readonly FontFace RegularFace = Embedded("IBMPlexSans-Regular");
    private static readonly FontFace SemiBoldFace = Embedded("IBMPlexSans-SemiBold");
    private static readonly FontFace ItalicFace = Embedded("IBMPlexSans-Italic");
    private static readonly FontFace SignsFace = Embedded("DejaVuSans");

    public static FontStack Regular { get; } = new(RegularFace, SignsFace);

    public static FontStack SemiBold { get; } = new(SemiBoldFace, SignsFace);

    public static FontStack Italic { get; } = new(ItalicFace, SignsFace);

    public static FontFace? Named(string name) =>
        Array.Find([RegularFace, SemiBoldFace, ItalicFace, SignsFace], face => face.Name == name);

    private static FontFace Embedded(string name)
    {
        using var resource = typeof(SheetFonts).Assembly.GetManifestResourceStream("font:" + name)
            ?? throw new InvalidOperationException($"The font {name} is not embedded in this assembly.");
        var file = new byte[resource.Length];
        resource.ReadExactly(file);
        return new FontFace(name, file);
    }
}
