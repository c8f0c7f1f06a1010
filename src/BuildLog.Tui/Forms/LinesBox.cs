using System.Globalization;
using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Forms;

/// <summary>Several readings, one a line, numbered as they will be spoken of.</summary>
internal sealed class LinesBox : View, ITakesPaste
{
    private const int Numbers = 4; // " 1  "
    private readonly LinesText text;
    private int top;

    public LinesBox(string initial)
    {
        text = new LinesText(initial);
        CanFocus = true;
        foreach (var key in new[] { Key.Space, Key.Enter }) KeyBindings.Remove(key);
    }

    public event EventHandler<string>? ValueChanged;

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var rows = Viewport.Height;
        if (text.Row < top) top = text.Row;
        if (text.Row >= top + rows) top = text.Row - rows + 1;
        var hidden = new OutOfView(top, text.Lines.Count - top - rows);
        var mark = Math.Max(TextFit.Width(hidden.AboveInWords), TextFit.Width(hidden.BelowInWords));
        var width = Viewport.Width - Numbers - (mark == 0 ? 0 : mark + 1);
        for (var y = 0; y < rows; y++) DrawRow(y, top + y, width);
        if (mark == 0) return true;

        for (var y = 0; y < rows; y++) this.Paint(Numbers + width, y, new string(' ', mark + 1), Tone.Plain);
        this.PaintAtEnd(0, Viewport.Width, hidden.AboveInWords, Tone.Quiet);
        this.PaintAtEnd(rows - 1, Viewport.Width, hidden.BelowInWords, Tone.Quiet);
        return true;
    }

    protected override bool OnKeyDown(Key key)
    {
        var before = text.Text;
        var handled = text.Press(KeyOf(key)) || Typed(key);
        if (!handled) return base.OnKeyDown(key);
        SetNeedsDraw();
        if (text.Text != before) ValueChanged?.Invoke(this, text.Text);
        return true;
    }

    public bool TakePaste(string pasted)
    {
        foreach (var (line, i) in pasted.ReplaceLineEndings("\n").Split('\n').Select((line, i) => (line, i)))
        {
            if (i > 0) text.Press(EditKey.NewLine);
            text.Insert(line);
        }

        SetNeedsDraw();
        ValueChanged?.Invoke(this, text.Text);
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is not { } at || !mouse.IsSingleClicked) return base.OnMouseEvent(mouse);
        SetFocus();
        text.MoveTo(top + at.Y, at.X - Numbers);
        SetNeedsDraw();
        return true;
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView) => SetNeedsDraw();

    private static EditKey KeyOf(Key key) =>
        key == Key.Enter ? EditKey.NewLine
        : key == Key.Backspace ? EditKey.Backspace
        : key == Key.Delete ? EditKey.Delete
        : key == Key.CursorUp ? EditKey.Up
        : key == Key.CursorDown ? EditKey.Down
        : key == Key.CursorLeft ? EditKey.Left
        : key == Key.CursorRight ? EditKey.Right
        : key == Key.Home ? EditKey.Home
        : key == Key.End ? EditKey.End
        : key == Key.A.WithCtrl ? EditKey.All
        : key == Key.U.WithCtrl ? EditKey.EmptyLine
        : key == Key.Y.WithCtrl ? EditKey.BringBack
        : EditKey.None;

    private bool Typed(Key key)
    {
        if (key.IsCtrl || key.IsAlt || key.AsRune.Value < ' ' || key.AsRune.Value == 0x7F) return false;
        text.Insert(key.AsRune.ToString());
        return true;
    }

    private Terminal.Gui.Drawing.Attribute AttributeOfText =>
        HasFocus && text.IsAllMarked ? Theme.Palette.Cursor : HasFocus ? Theme.Palette.FieldFocused : Theme.Palette.Field;

    private void DrawRow(int y, int row, int width)
    {
        var isLine = row < text.Lines.Count;
        var number = isLine && (HasFocus || text.Text.Length > 0) ? (row + 1).ToString(CultureInfo.InvariantCulture) : "";
        this.Paint(0, y, number.PadLeft(2) + "  ", Tone.Quiet);
        var line = isLine ? text.Lines[row] : "";
        var from = row == text.Row ? Math.Max(0, text.Column - width + 1) : 0;
        this.Paint(Numbers, y, TextFit.Exactly(line[Math.Min(from, line.Length)..], width), AttributeOfText);
        if (!HasFocus || row != text.Row) return;
        var under = text.Column < line.Length ? line[text.Column].ToString() : " ";
        this.Paint(Numbers + text.Column - from, y, under, Theme.Palette.Cursor);
    }
}
