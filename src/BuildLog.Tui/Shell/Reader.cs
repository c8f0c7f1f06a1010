using Terminal.Gui.App;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>A text in a box, to be read and closed.</summary>
internal sealed class Reader : Popup
{
    private readonly IReadOnlyList<TextLine> lines;
    private readonly TextPage page = new() { X = 1, Width = Dim.Fill(1), Height = Dim.Fill(1) };

    private Reader(string title, IReadOnlyList<TextLine> lines)
        : base(title)
    {
        this.lines = lines;
        page.Show(lines);
        Add(page);
        ShowKeys(new KeyHint("↑↓ PgUp PgDn", "scroll"), new KeyHint("Esc", "close"));
    }

    protected override int WantedHeight => TextPage.HeightOf(lines, InnerWidth - 3) + 4;

    public static void Show(IApplication app, string title, IReadOnlyList<TextLine> lines)
    {
        using var reader = new Reader(title, lines);
        app.Run(reader);
    }
}
