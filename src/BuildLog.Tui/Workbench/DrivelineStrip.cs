using BuildLog.Gearing.Checks;
using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using TgAttribute = Terminal.Gui.Drawing.Attribute;

namespace BuildLog.Tui.Workbench;

/// <summary>The driveline drawn from the engine to the tyres, verdicts at the joints; a cursor walks along it.</summary>
internal sealed class DrivelineStrip : View
{
    private DrivelineModel driveline = DrivelineModel.Single();
    private StripLayout layout = new([], [], BoxManner.Plain, 0, 0);
    private int cursor;

    public DrivelineStrip()
    {
        CanFocus = true;
        AddCommand(Command.Left, () => MoveTo(cursor - 1));
        AddCommand(Command.Right, () => MoveTo(cursor + 1));
        AddCommand(Command.Start, () => MoveTo(0));
        AddCommand(Command.End, () => MoveTo(int.MaxValue));
        AddCommand(Command.Up, () => MoveToRow(-1));
        AddCommand(Command.Down, () => MoveToRow(+1));
        AddCommand(Command.Accept, Pick);
        KeyBindings.Add(Key.CursorLeft, Command.Left);
        KeyBindings.Add(Key.CursorRight, Command.Right);
        KeyBindings.Add(Key.CursorUp, Command.Up);
        KeyBindings.Add(Key.CursorDown, Command.Down);
        KeyBindings.Add(Key.Home, Command.Start);
        KeyBindings.Add(Key.End, Command.End);
        AddCommand(Command.Open, AskCard);
        KeyBindings.Remove(Key.Space);
        KeyBindings.Add(Key.Space, Command.Open);
    }

    /// <summary>The cursor stands on another box.</summary>
    public event EventHandler? BoxChosen;

    /// <summary>Enter or a double click on a box.</summary>
    public event EventHandler? BoxPicked;

    /// <summary>Space on a box: its whole card is wanted.</summary>
    public event EventHandler? CardAsked;

    /// <summary>The box under the cursor; null in an empty driveline.</summary>
    public DrivelineBox? Box => cursor < layout.Boxes.Count ? layout.Boxes[cursor].Box : null;

    /// <summary>Puts the cursor on the box in a place, where there is one.</summary>
    public void GoTo(string position)
    {
        var at = layout.Boxes.ToList().FindIndex(placed => placed.Box.Position == position);
        if (at >= 0) MoveTo(at);
    }

    /// <summary>Shows a driveline and says how many rows it takes.</summary>
    public int Show(DrivelineModel model, int width, int maxHeight)
    {
        var position = Box?.Position;
        driveline = model;
        layout = driveline.Boxes.Any() ? StripLayout.For(driveline, width, maxHeight) : new StripLayout([], [], BoxManner.Plain, 0, 0);
        var same = layout.Boxes.Select((placed, index) => (placed, index)).Where(p => p.placed.Box.Position == position).ToList();
        cursor = same.Count > 0 ? same[0].index : 0;
        SetNeedsDraw();
        return layout.Height;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        foreach (var joint in layout.Joints) DrawJoint(joint);
        for (var i = 0; i < layout.Boxes.Count; i++) DrawBox(layout.Boxes[i], i == cursor);
        return true;
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is not { } at || !(mouse.IsSingleClicked || mouse.IsDoubleClicked)) return base.OnMouseEvent(mouse);
        SetFocus();
        for (var i = 0; i < layout.Boxes.Count; i++)
        {
            var placed = layout.Boxes[i];
            var inside = at.X >= placed.X && at.X < placed.X + placed.Width && at.Y >= placed.Y && at.Y < placed.Y + layout.RowHeight;
            if (!inside) continue;
            MoveTo(i);
            if (mouse.IsDoubleClicked) Pick();
        }

        return true;
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView) => SetNeedsDraw();

    private void DrawBox(PlacedBox placed, bool underCursor)
    {
        if (layout.Manner == BoxManner.Framed) DrawFramed(placed, underCursor);
        else DrawBarred(placed, underCursor);
    }

    // ┌caption─────┐  the caption and the source sit in the frame, the part and its number inside
    private void DrawFramed(PlacedBox placed, bool underCursor)
    {
        var box = placed.Box;
        var inner = placed.Width - 2;
        var frame = underCursor && HasFocus ? Theme.Palette.Cursor : Theme.Palette.Quiet;
        this.Paint(placed.X, placed.Y, "┌" + Filled(box.Caption, inner) + "┐", underCursor && HasFocus ? frame : Theme.Palette.Plain);
        DrawText(placed.X + 1, placed.Y + 1, BoxText.Part(box), inner, Tone.Plain, underCursor);
        DrawText(placed.X + 1, placed.Y + 2, BoxText.Number(box, inner), inner, Tone.Strong, underCursor);
        this.Paint(placed.X, placed.Y + 3, "└" + Filled(box.Source, inner) + "┘", frame);
        for (var y = 1; y <= 2; y++)
        {
            this.Paint(placed.X, placed.Y + y, "│", frame);
            this.Paint(placed.X + placed.Width - 1, placed.Y + y, "│", frame);
        }
    }

    // A bar at the left holds the lines of a box together where frames would take the room of the words.
    private void DrawBarred(PlacedBox placed, bool underCursor)
    {
        var inner = placed.Width - 2; // the bar, and a space before the next joint
        foreach (var (line, y) in Lines(placed.Box, inner).Select((line, y) => (line, placed.Y + y)))
        {
            this.Paint(placed.X, y, underCursor ? "▌" : "▏", Tone.Heading);
            DrawText(placed.X + 1, y, line.Text, inner, line.Tone, underCursor);
        }
    }

    private TextRun[] Lines(DrivelineBox box, int width) => layout.RowHeight switch
    {
        2 when BoxText.TwoLines(box, width) is var (caption, number) => [new(caption, Tone.Quiet), new(number, Tone.Strong)],
        3 => [new(box.Caption, Tone.Quiet), new(BoxText.Part(box)), new(BoxText.NumberAndSource(box, width), Tone.Strong)],
        _ => [new(box.Caption, Tone.Quiet), new(BoxText.Part(box)), new(BoxText.Number(box, width), Tone.Strong), new(box.Source, Tone.Quiet)],
    };

    private void DrawText(int x, int y, string text, int width, Tone tone, bool underCursor)
    {
        TgAttribute attribute = underCursor && HasFocus ? Theme.Palette.Cursor : Theme.Palette.Of(tone);
        this.Paint(x, y, TextFit.Exactly(text, width), attribute);
    }

    private void DrawJoint(PlacedJoint joint)
    {
        var tone = joint.Verdict?.Tone() ?? Tone.Quiet;
        var line = joint.Verdict is { } verdict
            ? new string('─', joint.Width / 2) + verdict.Sign() + new string('─', joint.Width - 1 - (joint.Width / 2))
            : new string('─', joint.Width);
        if (joint.FromAbove) line = "└" + line[1..];
        var y = joint.Y + (layout.Manner == BoxManner.TwoLines ? 0 : 1);
        this.Paint(joint.X, y, line, tone);
        if (joint.Verdict is { } word) this.Paint(joint.X, y + 1, TextFit.Exactly(word.InWords(), joint.Width), tone);
    }

    private static string Filled(string word, int width)
    {
        var cut = TextFit.Cut(word, width);
        return cut + new string('─', Math.Max(0, width - TextFit.Width(cut)));
    }

    private bool? MoveTo(int index)
    {
        cursor = Math.Clamp(index, 0, Math.Max(0, layout.Boxes.Count - 1));
        SetNeedsDraw();
        BoxChosen?.Invoke(this, EventArgs.Empty);
        return true;
    }

    // To the nearest box of the row above or below; there may be none.
    private bool? MoveToRow(int step)
    {
        if (Box is null) return true;
        var from = layout.Boxes[cursor];
        var target = layout.Boxes
            .Select((placed, index) => (placed, index))
            .Where(p => p.placed.Y == from.Y + (step * layout.RowHeight))
            .OrderBy(p => Math.Abs(p.placed.X - from.X))
            .Select(p => (int?)p.index)
            .FirstOrDefault();
        return target is { } index ? MoveTo(index) : true;
    }

    private bool? AskCard()
    {
        CardAsked?.Invoke(this, EventArgs.Empty);
        return true;
    }

    private bool? Pick()
    {
        if (Box is not null) BoxPicked?.Invoke(this, EventArgs.Empty);
        return true;
    }
}
