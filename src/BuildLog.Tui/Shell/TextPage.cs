using System.Text.RegularExpressions;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>Text to read: wraps to its width and scrolls by keys and wheel.</summary>
internal sealed partial class TextPage : View
{
    private const int LeastForWords = 3; // lines: of fewer, none gives way to words about the others
    private Func<int, IReadOnlyList<TextLine>> linesAt = _ => [];
    private List<TextLine> wrapped = [];
    private int wrappedTo = -1;
    private int top;

    /// <summary>Empty columns at the left.</summary>
    public int Indent { get; init; }

    public TextPage()
    {
        CanFocus = true;
        AddCommand(Command.Up, () => ScrollTo(top - 1));
        AddCommand(Command.Down, () => ScrollTo(top + 1));
        AddCommand(Command.PageUp, () => ScrollTo(top - Math.Max(1, Viewport.Height - 1)));
        AddCommand(Command.PageDown, () => ScrollTo(top + Math.Max(1, Viewport.Height - 1)));
        AddCommand(Command.Start, () => ScrollTo(0));
        AddCommand(Command.End, () => ScrollTo(int.MaxValue));
        this.BindMoves();
    }

    /// <summary>Nothing lies below what is in view.</summary>
    public bool ShowsItsEnd => top + Viewport.Height >= wrapped.Count;

    public void Show(IReadOnlyList<TextLine> lines) => Show(_ => lines);

    /// <summary>Shows a text that is laid anew for each width; a line that is still too long is wrapped.</summary>
    public void Show(Func<int, IReadOnlyList<TextLine>> newLines)
    {
        linesAt = newLines;
        wrapped = [];
        wrappedTo = -1;
        top = 0;
        SetNeedsDraw();
    }

    /// <summary>Lines the text takes at a width.</summary>
    public static int HeightOf(IReadOnlyList<TextLine> lines, int width) => lines.Sum(line => Wrap(line, width).Count());

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var width = Viewport.Width;
        var height = Viewport.Height;
        if (wrappedTo != width)
        {
            var before = wrapped.Count;
            wrappedTo = width;
            var room = Math.Max(1, width - 1 - Indent);
            wrapped = [.. linesAt(room).SelectMany(line => Wrap(line, room))];
            if (before > 0) top = top * wrapped.Count / before; // about where the reader was
        }

        top = Math.Clamp(top, 0, Math.Max(0, wrapped.Count - height));
        for (var y = 0; y < height; y++)
        {
            var line = top + y < wrapped.Count ? wrapped[top + y] : TextLine.Empty;
            if (Indent > 0) this.Paint(0, y, new string(' ', Indent), Tone.Plain);
            this.Paint(Indent, y, width - Indent, line);
        }

        PaintMarks(width, height);
        return true;
    }

    // At the right end of the first and the last line. A last line that leaves no room gives way to its mark, which then counts it: it is the first of the next page.
    private void PaintMarks(int width, int height)
    {
        var tone = HasFocus ? Tone.Heading : Tone.Quiet;
        var hidden = new OutOfView(top, wrapped.Count - top - height);
        if (hidden.Above > 0) this.PaintAtEnd(0, width, FitsBeside(wrapped[top], hidden.AboveInWords, width) ? hidden.AboveInWords : "▲", tone);
        if (hidden.Below <= 0) return;
        if (height < LeastForWords)
        {
            this.PaintAtEnd(height - 1, width, "▼", tone);
            return;
        }

        if (!FitsBeside(wrapped[top + height - 1], hidden.BelowInWords, width))
        {
            hidden = hidden with { Below = hidden.Below + 1 };
            this.Paint(Indent, height - 1, new string(' ', width - Indent), Tone.Plain);
        }

        this.PaintAtEnd(height - 1, width, hidden.BelowInWords, tone);
    }

    private bool FitsBeside(TextLine line, string words, int width) => Viewport.Height >= LeastForWords && Indent + TextFit.Width(line.Text) + 2 + TextFit.Width(words) <= width;

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.IsSingleClicked) SetFocus();
        return base.OnMouseEvent(mouse);
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView) => SetNeedsDraw();

    // Wraps between words; what follows hangs under the text of the first line, past its indent or list mark.
    internal static IEnumerable<TextLine> Wrap(TextLine line, int width)
    {
        if (TextFit.Width(line.Text) <= width) return [line];

        var pieces = TextFit.Wrap(line.Text, width, Math.Min(ListMark().Match(line.Text).Length, width / 2)).ToList();
        if (line.Runs.Count == 1) return pieces.Select(piece => TextLine.Of(piece, line.Runs[0].Tone));

        return Retone(line, pieces);
    }

    // Gives the wrapped pieces the tones of the characters they came from.
    private static IEnumerable<TextLine> Retone(TextLine line, List<string> pieces)
    {
        var tones = line.Runs.SelectMany(run => run.Text.Where(c => c != ' ').Select(_ => run.Tone)).ToList();
        var at = 0;
        foreach (var piece in pieces)
        {
            var runs = new List<TextRun>();
            foreach (var c in piece)
            {
                var tone = c == ' ' ? (runs.Count > 0 ? runs[^1].Tone : Tone.Plain) : tones[Math.Min(at++, tones.Count - 1)];
                if (runs.Count > 0 && runs[^1].Tone == tone) runs[^1] = runs[^1] with { Text = runs[^1].Text + c };
                else runs.Add(new TextRun(c.ToString(), tone));
            }

            yield return new TextLine(runs);
        }
    }

    // A dot, a dash or a step's number. A number of the text itself, such as 28.29, is none.
    [GeneratedRegex(@"^ *([·-] +|\d{1,2}\.? +(?=\D))?")]
    private static partial Regex ListMark();

    private bool? ScrollTo(int line)
    {
        top = Math.Clamp(line, 0, Math.Max(0, wrapped.Count - Viewport.Height));
        SetNeedsDraw();
        return true;
    }
}
