using Terminal.Gui.Drawing;
using TgAttribute = Terminal.Gui.Drawing.Attribute;

namespace BuildLog.Tui.Shell;

/// <summary>The attributes everything is drawn with, for one kind of terminal.</summary>
internal sealed record Palette
{
    public required TgAttribute Plain { get; init; }
    public required TgAttribute Quiet { get; init; }
    public required TgAttribute Strong { get; init; }
    public required TgAttribute Heading { get; init; }
    public required TgAttribute Fits { get; init; }
    public required TgAttribute Watch { get; init; }
    public required TgAttribute Open { get; init; }
    public required TgAttribute Clash { get; init; }

    /// <summary>The row, box or button under the cursor.</summary>
    public required TgAttribute Cursor { get; init; }

    /// <summary>What is chosen in a pane that has not the focus.</summary>
    public required TgAttribute Chosen { get; init; }

    /// <summary>A field to type in, and the same with the focus.</summary>
    public required TgAttribute Field { get; init; }

    public required TgAttribute FieldFocused { get; init; }

    /// <summary>The top line and the line of keys.</summary>
    public required TgAttribute Bar { get; init; }

    /// <summary>A key's name in the line of keys.</summary>
    public required TgAttribute BarKey { get; init; }

    public TgAttribute Of(Tone tone) => tone switch
    {
        Tone.Quiet => Quiet,
        Tone.Strong => Strong,
        Tone.Heading => Heading,
        Tone.Fits => Fits,
        Tone.Watch => Watch,
        Tone.Open => Open,
        Tone.Clash => Clash,
        _ => Plain,
    };

    /// <summary>For terminals that say they know 24-bit colours: oiled steel, chalk and brass.</summary>
    public static Palette Rich()
    {
        var steel = new Color(24, 28, 33);
        var chalk = new Color(214, 210, 200);
        var slate = new Color(44, 50, 58);
        var brass = new Color(222, 168, 72);
        return new Palette
        {
            Plain = new TgAttribute(chalk, steel),
            Quiet = new TgAttribute(new Color(132, 138, 145), steel),
            Strong = new TgAttribute(new Color(250, 247, 238), steel, TextStyle.Bold),
            Heading = new TgAttribute(brass, steel),
            Fits = new TgAttribute(new Color(124, 190, 128), steel),
            Watch = new TgAttribute(new Color(232, 200, 96), steel),
            Open = new TgAttribute(new Color(120, 176, 222), steel),
            Clash = new TgAttribute(new Color(240, 116, 98), steel, TextStyle.Bold),
            Cursor = new TgAttribute(new Color(20, 22, 26), brass),
            Chosen = new TgAttribute(new Color(250, 247, 238), new Color(58, 65, 74)),
            Field = new TgAttribute(chalk, slate),
            FieldFocused = new TgAttribute(new Color(255, 252, 242), new Color(62, 72, 84)),
            Bar = new TgAttribute(new Color(176, 178, 176), slate),
            BarKey = new TgAttribute(brass, slate, TextStyle.Bold),
        };
    }

    /// <summary>The same for a bright room: paper, ink and a darker brass.</summary>
    public static Palette RichLight()
    {
        var paper = new Color(247, 244, 236);
        var ink = new Color(44, 48, 52);
        var board = new Color(226, 221, 208);
        var brass = new Color(134, 86, 8);
        return new Palette
        {
            Plain = new TgAttribute(ink, paper),
            Quiet = new TgAttribute(new Color(104, 106, 104), paper),
            Strong = new TgAttribute(new Color(12, 14, 18), paper, TextStyle.Bold),
            Heading = new TgAttribute(brass, paper),
            Fits = new TgAttribute(new Color(26, 104, 44), paper),
            Watch = new TgAttribute(new Color(126, 84, 0), paper),
            Open = new TgAttribute(new Color(20, 84, 148), paper),
            Clash = new TgAttribute(new Color(172, 32, 20), paper, TextStyle.Bold),
            Cursor = new TgAttribute(new Color(255, 252, 242), brass),
            Chosen = new TgAttribute(new Color(12, 14, 18), new Color(208, 201, 184)),
            Field = new TgAttribute(ink, board),
            FieldFocused = new TgAttribute(new Color(12, 14, 18), new Color(255, 236, 184)),
            Bar = new TgAttribute(new Color(72, 74, 74), board),
            BarKey = new TgAttribute(brass, board, TextStyle.Bold),
        };
    }

    /// <summary>Sixteen colours on a bright terminal.</summary>
    public static Palette SixteenLight()
    {
        Color black = ColorName16.Black, gray = ColorName16.Gray, white = ColorName16.White, dark = ColorName16.DarkGray;
        return new Palette
        {
            Plain = new TgAttribute(black, white),
            Quiet = new TgAttribute(dark, white),
            Strong = new TgAttribute(black, white, TextStyle.Bold),
            Heading = new TgAttribute(ColorName16.Blue, white),
            Fits = new TgAttribute(ColorName16.Green, white),
            Watch = new TgAttribute(ColorName16.Magenta, white),
            Open = new TgAttribute(ColorName16.Cyan, white),
            Clash = new TgAttribute(ColorName16.Red, white),
            Cursor = new TgAttribute(white, ColorName16.Blue),
            Chosen = new TgAttribute(black, gray),
            Field = new TgAttribute(black, gray),
            FieldFocused = new TgAttribute(white, dark),
            Bar = new TgAttribute(white, dark),
            BarKey = new TgAttribute(ColorName16.BrightYellow, dark),
        };
    }

    /// <summary>For every other terminal with colours: the sixteen that all of them have.</summary>
    public static Palette Sixteen()
    {
        Color black = ColorName16.Black, gray = ColorName16.Gray, white = ColorName16.White, dark = ColorName16.DarkGray, yellow = ColorName16.BrightYellow;
        return new Palette
        {
            Plain = new TgAttribute(gray, black),
            Quiet = new TgAttribute(dark, black),
            Strong = new TgAttribute(white, black),
            Heading = new TgAttribute(ColorName16.Yellow, black),
            Fits = new TgAttribute(ColorName16.BrightGreen, black),
            Watch = new TgAttribute(yellow, black),
            Open = new TgAttribute(ColorName16.BrightCyan, black),
            Clash = new TgAttribute(ColorName16.BrightRed, black),
            Cursor = new TgAttribute(black, ColorName16.Yellow),
            Chosen = new TgAttribute(white, dark),
            Field = new TgAttribute(white, ColorName16.Blue),
            FieldFocused = new TgAttribute(yellow, ColorName16.Blue),
            Bar = new TgAttribute(black, gray),
            BarKey = new TgAttribute(ColorName16.Blue, gray),
        };
    }

    /// <summary>For NO_COLOR: the terminal's own two colours and nothing but styles.</summary>
    public static Palette Mono()
    {
        static TgAttribute Style(TextStyle style) => new(Color.None, Color.None, style);
        return new Palette
        {
            Plain = Style(TextStyle.None),
            Quiet = Style(TextStyle.None),
            Strong = Style(TextStyle.Bold),
            Heading = Style(TextStyle.Bold),
            Fits = Style(TextStyle.None),
            Watch = Style(TextStyle.Bold),
            Open = Style(TextStyle.Bold),
            Clash = Style(TextStyle.Bold | TextStyle.Underline),
            Cursor = Style(TextStyle.Reverse),
            Chosen = Style(TextStyle.Bold),
            Field = Style(TextStyle.Underline),
            FieldFocused = Style(TextStyle.Underline | TextStyle.Bold),
            Bar = Style(TextStyle.None),
            BarKey = Style(TextStyle.Bold),
        };
    }
}
