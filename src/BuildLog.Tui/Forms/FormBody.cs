using System.Drawing;
using BuildLog.Tui.Shell;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Forms;

/// <summary>The entries of a form, captions left, messages and hints under each; scrolls to the one that has the focus.</summary>
internal sealed class FormBody : View
{
    private const int WidestCaption = 22;
    private readonly Form form;
    private readonly FormState state;
    private readonly Dictionary<string, View> inputs;
    private readonly int captionWidth;
    private List<PlacedEntry> placed = [];

    public FormBody(Form form, FormState state)
    {
        this.form = form;
        this.state = state;
        CanFocus = true;
        captionWidth = Math.Min(WidestCaption, form.Entries.Select(entry => TextFit.Width(entry.Caption)).DefaultIfEmpty(0).Max()) + 2;
        inputs = form.Entries.ToDictionary(entry => entry.Id, InputFor, StringComparer.Ordinal);
        foreach (var entry in form.Entries) Add(inputs[entry.Id]);
        SubViewLayout += (_, _) => Arrange();
        SubViewsLaidOut += (_, _) => PlaceCursor();
        ViewportChanged += (_, _) => PlaceCursor();
    }

    /// <summary>Something was typed or chosen.</summary>
    public event EventHandler? Changed;

    /// <summary>An entry is done with Enter: on to the next, as on paper.</summary>
    public event EventHandler? EntryDone;

    /// <summary>The entry that has the focus; null while a button has it.</summary>
    public string? FocusedEntry => state.Shown.FirstOrDefault(entry => inputs[entry.Id].HasFocus)?.Id;

    /// <summary>How many entries stand above what is in view, and how many below it.</summary>
    public OutOfView OutOfView => new(
        placed.Count(entry => entry.Y < Viewport.Y),
        placed.Count(entry => entry.Y + entry.InputRows > Viewport.Y + Viewport.Height));

    /// <summary>Rows all entries take at the width the body has.</summary>
    public int RowsAt(int width) => Place(width).Select(entry => entry.Bottom).LastOrDefault();

    public void FocusOn(string entryId)
    {
        inputs[entryId].SetFocus();
        Arrange();
        ScrollTo(entryId);
    }

    /// <summary>Focuses an entry whose text is to be mended: nothing in it is marked, so that the next key replaces none of it.</summary>
    public void Correct(string entryId)
    {
        FocusOn(entryId);
        (inputs[entryId] as OneLineField)?.MoveEnd();
    }

    /// <summary>The entry a page further down, or up with a negative step; while a button has the focus, the last one in view.</summary>
    public string? PageFrom(int step)
    {
        var from = placed.FirstOrDefault(entry => entry.Entry.Id == FocusedEntry);
        var target = from is null ? Viewport.Y + Viewport.Height - 1 : from.Y + (step * Math.Max(1, Viewport.Height - 1));
        var reached = step > 0
            ? placed.LastOrDefault(entry => entry.Y <= target && entry.Y > from?.Y) ?? placed.FirstOrDefault(entry => entry.Y > from?.Y)
            : placed.FirstOrDefault(entry => entry.Y >= target);
        return (reached ?? (step > 0 ? placed.LastOrDefault() : placed.FirstOrDefault()))?.Entry.Id;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        foreach (var entry in placed)
        {
            var y = entry.Y - Viewport.Y;
            var hasFocus = inputs[entry.Entry.Id].HasFocus;
            this.Paint(0, y, TextFit.Exactly(entry.Entry.Caption, captionWidth), hasFocus ? Tone.Heading : Tone.Plain);
            var tone = state.MessageOf(entry.Entry.Id) is null ? Tone.Quiet : Tone.Clash;
            for (var i = 0; i < entry.Notes.Count; i++) this.Paint(captionWidth, y + entry.InputRows + i, entry.Notes[i], tone);
        }

        return true;
    }

    private void PlaceCursor() => inputs.Values.OfType<OneLineField>().FirstOrDefault(field => field.HasFocus)?.PlaceCursor();

    private View InputFor(Entry entry)
    {
        View input = entry switch
        {
            ChoiceEntry choice => BoxFor(entry, new ChoiceBox(entry.Caption, choice.Options, state.Text(entry.Id)) { HelpPage = form.HelpPage }),
            YesNoEntry => BoxFor(entry, new YesNoBox(entry.Caption, state.Text(entry.Id))),
            LinesEntry => LinesFor(entry),
            _ => FieldFor(entry),
        };
        input.Id = entry.Id;
        input.HasFocusChanged += (_, e) => FocusChanged(entry, e.NewValue);
        return input;
    }

    private ChoiceBox BoxFor(Entry entry, ChoiceBox box)
    {
        box.ValueChanged += (_, value) => Take(entry, value);
        box.Accepting += GoOn;
        return box;
    }

    private LinesBox LinesFor(Entry entry)
    {
        var box = new LinesBox(state.Text(entry.Id));
        box.ValueChanged += (_, value) => Take(entry, value);
        return box;
    }

    private OneLineField FieldFor(Entry entry)
    {
        var field = new OneLineField { Text = state.Text(entry.Id) };
        field.ValueChanged += (_, e) => Take(entry, e.NewValue ?? "");
        field.Accepting += GoOn;
        field.KeyDown += (_, key) => key.Handled = key == Key.CursorRight && field.SelectedLength == 0 && field.InsertionPoint == field.Text.Length && TakeSuggestion(entry, field);
        return field;
    }

    private bool TakeSuggestion(Entry entry, OneLineField field)
    {
        if (state.SuggestionFor(entry) is not { } suggestion) return false;
        field.Text = suggestion;
        field.MoveEnd();
        return true;
    }

    private void GoOn(object? sender, CommandEventArgs e)
    {
        e.Handled = true;
        EntryDone?.Invoke(this, EventArgs.Empty);
    }

    private void Take(Entry entry, string value)
    {
        state.Set(entry.Id, value);
        SetNeedsLayout();
        SetNeedsDraw();
        Changed?.Invoke(this, EventArgs.Empty);
    }

    private void FocusChanged(Entry entry, bool hasFocus)
    {
        if (hasFocus) ScrollTo(entry.Id);
        else if (state.CheckWhenLeft(entry)) Changed?.Invoke(this, EventArgs.Empty);
        SetNeedsLayout();
        SetNeedsDraw();
    }

    private void Arrange()
    {
        placed = Place(Viewport.Width);
        foreach (var entry in form.Entries) inputs[entry.Id].Visible = placed.Any(p => p.Entry == entry);
        foreach (var entry in placed)
        {
            var input = inputs[entry.Entry.Id];
            input.X = captionWidth;
            input.Y = entry.Y;
            input.Width = Viewport.Width - captionWidth - 1;
            input.Height = entry.InputRows;
        }

        SetContentSize(new Size(Viewport.Width, Math.Max(Viewport.Height, placed.Select(entry => entry.Bottom).LastOrDefault())));
        if (FocusedEntry is { } focused) ScrollTo(focused); // what is said below, or a smaller terminal, may have taken its room
    }

    private List<PlacedEntry> Place(int width)
    {
        var list = new List<PlacedEntry>();
        var y = 0;
        foreach (var entry in state.Shown)
        {
            var note = state.MessageOf(entry.Id) ?? SuggestionNote(entry) ?? state.NoteOf(entry);
            var notes = TextFit.Wrap(note, width - captionWidth - 1).ToList(); // an empty note still keeps its row
            var rows = inputs[entry.Id] is ChoiceBox box ? box.RowsAt(width - captionWidth - 1) : entry is LinesEntry lines ? lines.Height : 1;
            list.Add(new PlacedEntry(entry, y, rows, notes));
            y += rows + notes.Count;
        }

        return list;
    }

    private string? SuggestionNote(Entry entry) => inputs[entry.Id].HasFocus && state.SuggestionFor(entry) is { } suggestion ? Spoken($"→ writes {suggestion}") : null;

    private void ScrollTo(string entryId)
    {
        if (placed.FirstOrDefault(entry => entry.Entry.Id == entryId) is not { } target) return;
        var y = Viewport.Y;
        if (target.Bottom > y + Viewport.Height) y = target.Bottom - Viewport.Height;
        if (target.Y < y) y = target.Y;
        Viewport = Viewport with { Y = Math.Max(0, y) };
    }

    private sealed record PlacedEntry(Entry Entry, int Y, int InputRows, IReadOnlyList<string> Notes)
    {
        public int Bottom => Y + InputRows + Notes.Count;
    }
}
