using System.Drawing;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>Covers the screen where the terminal is too small for anything to be read, and says how large it must be.</summary>
internal sealed class LeastSize : View
{
    private static readonly Size Least = new(60, 18);
    private static readonly Size ForAllPanes = new(80, 24);
    private Size window;
    private IKeyboard? listening;

    public LeastSize()
    {
        Width = Dim.Fill();
        Height = Dim.Fill();
        Visible = false;
    }

    /// <summary>Whether keys do nothing while it covers the screen: nobody sees what they would do. A count under way goes on.</summary>
    public bool KeepsKeysOut { get; init; } = true;

    /// <summary>Below this, panes are shown one at a time.</summary>
    public static bool FitsOnePaneOnly(Size screen) => screen.Width < ForAllPanes.Width || screen.Height < ForAllPanes.Height;

    /// <param name="screen">Of the whole terminal, of which a box may cover a part.</param>
    public void Fit(Size screen)
    {
        window = screen;
        Visible = screen.Width < Least.Width || screen.Height < Least.Height;
        Listen(Visible && KeepsKeysOut ? App?.Keyboard : null);
    }

    protected override void Dispose(bool disposing)
    {
        Listen(null);
        base.Dispose(disposing);
    }

    private void Listen(IKeyboard? keyboard)
    {
        if (listening is not null) listening.KeyDown -= KeepOut;
        listening = keyboard;
        if (listening is not null) listening.KeyDown += KeepOut;
    }

    // Keys with Ctrl that end the program or hand the terminal back are no acts of the screen.
    private static void KeepOut(object? sender, Key key) => key.Handled |= key != Key.Q.WithCtrl && key != Key.C.WithCtrl && key != Key.Z.WithCtrl;

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        this.PaintEmptyRows(0);
        var text = Spoken($"BuildLog needs {Least.Width} × {Least.Height} characters; this window has {window.Width} × {window.Height}. Make it larger. Nothing is lost.");
        foreach (var (line, y) in TextFit.Wrap(text, Viewport.Width).Take(Viewport.Height).Select((line, y) => (line, y))) this.Paint(0, y, line, Tone.Strong);
        return true;
    }
}
