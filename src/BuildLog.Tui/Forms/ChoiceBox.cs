using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Forms;

/// <summary>One of a few, all of them in sight; of many, the chosen one, and Enter opens the list, as it does while none is chosen.</summary>
/// <remarks>Left, Right and Space choose. Up and Down only pass, so that walking through a form changes nothing in it.</remarks>
internal class ChoiceBox : View
{
    private const int MostRows = 3;
    private const int Sign = 4;
    private readonly string title;
    private readonly IReadOnlyList<ChoiceOption> options;
    private string value;
    private bool isTypedAt;

    public ChoiceBox(string title, IReadOnlyList<ChoiceOption> options, string value)
    {
        this.title = title;
        this.options = options;
        this.value = value;
        CanFocus = true;
        AddCommand(Command.Left, () => Step(-1));
        AddCommand(Command.Right, () => Step(+1));
        AddCommand(Command.Activate, () => Step(+1));
        KeyBindings.Remove(Key.Space);
        KeyBindings.Add(Key.CursorLeft, Command.Left);
        KeyBindings.Add(Key.CursorRight, Command.Right);
        KeyBindings.Add(Key.Space, Command.Activate);
        MouseBindings.Clear(); // a button that goes down would choose the next one, whatever was clicked
    }

    public event EventHandler<string>? ValueChanged;

    /// <summary>Page of the help that F1 opens over its list; null for none.</summary>
    public string? HelpPage { get; init; }

    /// <summary>Rows it takes at a width.</summary>
    public int RowsAt(int width) => Places(width) is { } places ? places[^1].Row + places[^1].Lines.Count : 1;

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        this.PaintEmptyRows(0);
        if (Places(Viewport.Width) is { } places)
        {
            foreach (var place in places)
            {
                for (var k = 0; k < place.Lines.Count; k++) this.Paint(place.X, place.Row + k, place.Lines[k], AttributeOf(place.Option));
            }

            return true;
        }

        var words = Chosen < 0 ? Spoken("Enter to choose") : options[Chosen].Words;
        this.Paint(0, 0, TextFit.Exactly(Spoken($"{words}  ({options.Count} to choose from)"), Viewport.Width), HasFocus ? Theme.Palette.Cursor : Theme.Palette.Field);
        return true;
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Enter && (Chosen < 0 || Places(Viewport.Width) is null) && App is { } app)
        {
            if (Chooser.Choose(app, title, options, value, HelpPage) is { } chosen) Take(chosen);
            return true;
        }

        // Whoever types a text here has not seen that it is no place for one; a blank in it is no answer.
        if (key == Key.Space) return isTypedAt || base.OnKeyDown(key);
        isTypedAt = !key.IsCtrl && !key.IsAlt && key.AsRune is { Value: > ' ' } || (isTypedAt && key != Key.CursorLeft && key != Key.CursorRight);
        return base.OnKeyDown(key);
    }

    protected override bool OnMouseEvent(Mouse mouse)
    {
        if (mouse.Position is not { } at || !mouse.IsSingleClicked) return base.OnMouseEvent(mouse);
        SetFocus();
        var hit = Places(Viewport.Width)?.FirstOrDefault(place => at.Y >= place.Row && at.Y < place.Row + place.Lines.Count && at.X >= place.X && at.X < place.X + TextFit.Width(Words(place.Option)));
        if (hit is { } place) Take(place.Option.Value);
        return true;
    }

    protected override void OnHasFocusChanged(bool newHasFocus, View? previousFocusedView, View? focusedView)
    {
        isTypedAt = false;
        SetNeedsDraw();
    }

    private int Chosen => options.ToList().FindIndex(option => option.Value == value);

    private string Words(ChoiceOption option) => $"({(option.Value == value ? "•" : " ")}) {option.Words}";

    private Terminal.Gui.Drawing.Attribute AttributeOf(ChoiceOption option)
    {
        var isCursor = option.Value == value || (Chosen < 0 && option == options[0]);
        if (HasFocus && isCursor) return Theme.Palette.Cursor;
        return Theme.Palette.Of(option.Value == value ? Tone.Strong : Tone.Plain);
    }

    // Side by side as they fit, one that is wider than all there is on lines of its own; null when they would take too many rows.
    private List<Place>? Places(int width)
    {
        var places = new List<Place>();
        var (x, row, rows) = (0, 0, 1);
        foreach (var option in options)
        {
            var cells = TextFit.Width(Words(option));
            if (x > 0 && x + cells > width) (x, row, rows) = (0, row + places[^1].Lines.Count, rows + 1);
            places.Add(new Place(option, x, row, cells > width ? [.. TextFit.Wrap(Words(option), width, Sign)] : [Words(option)]));
            x += cells + 2;
        }

        return places.Count == 0 || rows > MostRows ? null : places;
    }

    private bool? Step(int by)
    {
        if (options.Count == 0) return true;
        var next = Chosen < 0 ? (by > 0 ? 0 : options.Count - 1) : (Chosen + by + options.Count) % options.Count;
        Take(options[next].Value);
        return true;
    }

    protected void Take(string newValue)
    {
        value = newValue;
        SetNeedsDraw();
        ValueChanged?.Invoke(this, value);
    }

    private sealed record Place(ChoiceOption Option, int X, int Row, IReadOnlyList<string> Lines);
}
