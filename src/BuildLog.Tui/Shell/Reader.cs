using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>A text in a box, to be read and closed.</summary>
internal sealed class Reader : Popup
{
    private readonly Func<int, IReadOnlyList<TextLine>> linesAt;
    private readonly TextPage page = new() { X = 1, Width = Dim.Fill(1), Height = Dim.Fill(1) };

    private readonly Key? act;
    private bool isAsked;

    private Reader(string title, Func<int, IReadOnlyList<TextLine>> linesAt, string? helpPage, Key? act = null, KeyHint? onward = null)
        : base(title)
    {
        HelpPage = helpPage;
        this.linesAt = linesAt;
        this.act = act;
        page.Show(linesAt);
        Add(page);
        ShowKeys([new KeyHint("↑↓ PgUp PgDn", Spoken("scroll")), .. onward is null ? Array.Empty<KeyHint>() : [onward], .. helpPage is null ? Array.Empty<KeyHint>() : [new("F1", Spoken("help"))], new KeyHint("Esc", Spoken("close"))]);
    }

    protected override int WantedWidth => TakesAll ? int.MaxValue : base.WantedWidth;

    protected override int WantedHeight => TakesAll ? int.MaxValue : TextPage.HeightOf(linesAt(InnerWidth - 3), InnerWidth - 3) + 4;

    protected override string? HelpPage { get; }

    /// <summary>The whole screen is its own.</summary>
    private bool TakesAll { get; init; }

    public static void Show(IApplication app, string title, IReadOnlyList<TextLine> lines, string? helpPage = null)
    {
        using var reader = new Reader(title, _ => lines, helpPage);
        app.Run(reader);
    }

    /// <summary>Shows a text that is laid anew for each width, on all of the screen.</summary>
    public static void Show(IApplication app, string title, Func<int, IReadOnlyList<TextLine>> linesAt, string? helpPage = null)
    {
        using var reader = new Reader(title, linesAt, helpPage) { TakesAll = true };
        app.Run(reader);
    }

    /// <summary>The same with a key of its own, such as one that prints what is read.</summary>
    /// <returns>Whether that key closed it.</returns>
    public static bool Show(IApplication app, string title, IReadOnlyList<TextLine> lines, Key act, KeyHint onward, string? helpPage = null)
    {
        using var reader = new Reader(title, _ => lines, helpPage, act, onward);
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
