using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>A text in a box, to be read and closed.</summary>
internal sealed class Reader : Popup
{
    private readonly IReadOnlyList<TextLine> lines;
    private readonly TextPage page = new() { X = 1, Width = Dim.Fill(1), Height = Dim.Fill(1) };

    private readonly Key? act;
    private bool isAsked;

    private Reader(string title, IReadOnlyList<TextLine> lines, Key? act = null, KeyHint? onward = null)
        : base(title)
    {
        this.lines = lines;
        this.act = act;
        page.Show(lines);
        Add(page);
        ShowKeys([new KeyHint("↑↓ PgUp PgDn", Spoken("scroll")), .. onward is null ? Array.Empty<KeyHint>() : [onward], new KeyHint("Esc", Spoken("close"))]);
    }

    protected override int WantedHeight => TextPage.HeightOf(lines, InnerWidth - 3) + 4;

    public static void Show(IApplication app, string title, IReadOnlyList<TextLine> lines)
    {
        using var reader = new Reader(title, lines);
        app.Run(reader);
    }

    /// <summary>The same with a key of its own, such as one that prints what is read.</summary>
    /// <returns>Whether that key closed it.</returns>
    public static bool Show(IApplication app, string title, IReadOnlyList<TextLine> lines, Key act, KeyHint onward)
    {
        using var reader = new Reader(title, lines, act, onward);
        app.Run(reader);
        return reader.isAsked;
    }

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (act is null || key != act) return base.OnKeyDownNotHandled(key);
        isAsked = true;
        App?.RequestStop(this);
        return true;
    }
}
