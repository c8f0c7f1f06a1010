using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Measurements;

/// <summary>The tally: the whole screen, two large numbers, a key for each end. Any other key that types counts the propshaft, so that a clicker will do.</summary>
internal sealed class TallyScreen : Runnable
{
    private const int NumbersTop = 4;
    private const int RowsBelow = 7;
    private readonly TallyModel tally;
    private readonly KeyLine keys = new();
    private string message = "";

    public TallyScreen(TallyModel tally)
    {
        this.tally = tally;
        Border.Settings &= ~BorderSettings.TerminalTitle; // the terminal's own title stays as it was
        CanFocus = true;
        foreach (var key in new[] { Key.Space, Key.Enter }) KeyBindings.Remove(key);
        Add(keys);
        keys.Show(
        [
            .. tally.Driving is { } driving ? [new KeyHint("Space", driving), new KeyHint("Enter", tally.Driven)] : new[] { new KeyHint("Space", tally.Driven) },
            new("Bksp", "take back"), new("Ctrl+S", "done"), new("F1", "help"), new("Esc", "leave"),
        ]);
        AddCommand(Command.Cancel, () => Close(done: false));
        AddCommand(Command.Save, () => tally.NotYet is { } notYet ? Say(notYet) : Close(done: true));
        KeyBindings.Add(Key.Esc, Command.Cancel);
        KeyBindings.Add(Key.S.WithCtrl, Command.Save);
    }

    private bool Done { get; set; }

    /// <summary>Counts until the person is done; false when the count was left unfinished.</summary>
    public static bool Run(IApplication app, TallyModel tally)
    {
        using var screen = new TallyScreen(tally);
        app.Run(screen);
        return screen.Done;
    }

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Enter) return Count(TallyEnd.Driven);
        if (key == Key.Backspace) return tally.Undo() ? Say("Taken back.") : Say("Nothing to take back.");
        var types = !key.IsCtrl && !key.IsAlt && key.AsRune.Value >= ' ' && key.AsRune.Value != 0x7F;
        return types ? Count(tally.Driving is null ? TallyEnd.Driven : TallyEnd.Driving) : base.OnKeyDown(key);
    }

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (key != Key.F1) return base.OnKeyDownNotHandled(key);
        HelpScreen.Show(App!, tally.HelpPage);
        return true;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        this.PaintEmptyRows(0);
        var width = Viewport.Width;
        var half = width / 2;
        this.Paint(1, 0, TextFit.Cut(tally.Title, width - 2), Tone.Heading);
        this.Paint(1, 2, $"{Capital(tally.Driven)} turns  [Enter]", Tone.Plain);
        if (tally.Driving is { } driving) this.Paint(half, 2, $"{Capital(driving)} turns  [Space]", Tone.Plain);
        var room = Viewport.Height - NumbersTop - RowsBelow;
        var size = Math.Min(BigDigits.SizeFor(tally.DrivenTurns, half - 2, room), BigDigits.SizeFor(tally.DrivingTurns, half - 2, room));
        PaintNumber(1, tally.DrivenTurns, size);
        if (tally.Driving is not null) PaintNumber(half, tally.DrivingTurns, size);

        var y = NumbersTop + (BigDigits.Height * size) + 1;
        foreach (var line in tally.Live.SelectMany(line => TextFit.Wrap(line, width - 2)).Take(Viewport.Height - y - 2)) this.Paint(1, y++, line, Tone.Strong);
        this.Paint(1, Viewport.Height - 2, TextFit.Cut(message, width - 2), Tone.Watch);
        return true;
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    private void PaintNumber(int x, int number, int size)
    {
        foreach (var (row, y) in BigDigits.Rows(number, size, '█').Select((row, y) => (row, y))) this.Paint(x, NumbersTop + y, row, Tone.Strong);
    }

    private bool Count(TallyEnd end)
    {
        var isEnd = end == TallyEnd.Driven && tally.DrivenTurns + 1 == TallyModel.UsualTurns;
        if (tally.Count(end)) App?.Driver?.WriteRaw("\a");
        return Say(isEnd ? $"Ten {tally.Driven} turns: enough as a rule. Ctrl+S to end here, or go on." : "");
    }

    private bool Say(string text)
    {
        message = text;
        SetNeedsDraw();
        return true;
    }

    private bool Close(bool done)
    {
        Done = done;
        App?.RequestStop(this);
        return true;
    }
}
