using System.Text;
using Terminal.Gui.App;
using Terminal.Gui.Configuration;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>Our own look, put over the library's. It is process-wide, because the library's is.</summary>
internal static class Theme
{
    private static readonly Lock Once = new();
    private static bool applied;

    public static Palette Palette { get; private set; } = Palette.Mono();

    public static bool NoColour => !string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));

    private static bool KnowsManyColours => Environment.GetEnvironmentVariable("COLORTERM") is "truecolor" or "24bit";

    public static void Apply()
    {
        lock (Once)
        {
            if (applied) return;
            applied = true;

            // From its defaults, not from what it has read: a stray file of settings cannot restyle the workbench. Given to it as settings to be read, these would cost a tenth of the start.
            DialogSettings.Current = DialogSettings.Default with { DefaultBorderStyle = LineStyle.Single, DefaultShadow = ShadowStyles.None };
            MessageBoxSettings.Current = MessageBoxSettings.Default with { DefaultBorderStyle = LineStyle.Single };
            ButtonSettings.Current = ButtonSettings.Default with { DefaultShadow = ShadowStyles.None };

            // Plain brackets on buttons: the library's are missing from many console fonts.
            var glyphs = GlyphSettings.Default with { LeftBracket = new Rune('['), RightBracket = new Rune(']') };
            GlyphSettings.Current = Characters.AreAscii ? InAscii(glyphs) : glyphs;

            Palette = PaletteFor(NoColour, KnowsManyColours, IsLight(Environment.GetEnvironmentVariable));
            foreach (var name in new[] { "Base", "Dialog", "Menu", "Error", "Accent" }) SchemeManager.AddScheme(name, SchemeOf(Palette));
        }
    }

    /// <summary>Keeps to the sixteen colours where the terminal has not said that it knows more.</summary>
    public static void ApplyTo(IApplication app) => app.Driver!.Force16Colors = NoColour || !KnowsManyColours;

    internal static Palette PaletteFor(bool noColour, bool manyColours, bool light) => (noColour, manyColours, light) switch
    {
        (true, _, _) => Palette.Mono(),
        (_, true, true) => Palette.RichLight(),
        (_, true, false) => Palette.Rich(),
        (_, false, true) => Palette.SixteenLight(),
        _ => Palette.Sixteen(),
    };

    /// <summary>Whether a bright background is asked for, or the terminal says it has one.</summary>
    /// <remarks>COLORFGBG is what several terminals set: foreground;background, where 7 and 15 are the two whites.</remarks>
    /// <param name="environment">Reads one variable.</param>
    internal static bool IsLight(Func<string, string?> environment)
        => environment("BUILDLOG_THEME") is { Length: > 0 } asked
            ? asked.Equals("light", StringComparison.OrdinalIgnoreCase)
            : environment("COLORFGBG")?.Split(';')[^1] is "7" or "15";

    // The frames the library draws by itself.
    private static GlyphSettings InAscii(GlyphSettings glyphs)
    {
        Rune corner = new('+'), level = new('-'), upright = new('|');
        return glyphs with
        {
            HLine = level,
            VLine = upright,
            ULCorner = corner,
            URCorner = corner,
            LLCorner = corner,
            LRCorner = corner,
            LeftTee = corner,
            RightTee = corner,
            TopTee = corner,
            BottomTee = corner,
            Cross = corner,
        };
    }

    private static Scheme SchemeOf(Palette palette) => new(palette.Plain)
    {
        HotNormal = palette.Heading,
        Focus = palette.Cursor,
        HotFocus = palette.Cursor,
        Active = palette.Chosen,
        HotActive = palette.Chosen,
        Highlight = palette.Strong,
        Editable = palette.Field,
        ReadOnly = palette.Quiet,
        Disabled = palette.Quiet,
    };
}
