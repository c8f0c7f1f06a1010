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
            new("Space", "propshaft"), new("Enter", "wheel"), new("Bksp", "take back"), new("Ctrl+S", "done"), new("F1", "help"), new("Esc", "leave"),
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

    // A terminal that is not told to use UTF-8 shows blocks as rubbish.
    private static char Block { get; } = Console.OutputEncoding.WebName.StartsWith("utf", StringComparison.OrdinalIgnoreCase) ? '█' : '#';

    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Enter) return Count(TallyEnd.Wheel);
        if (key == Key.Backspace) return tally.Undo() ? Say("Taken back.") : Say("Nothing to take back.");
        var types = !key.IsCtrl && !key.IsAlt && key.AsRune.Value >= ' ' && key.AsRune.Value != 0x7F;
        return types ? Count(TallyEnd.Propshaft) : base.OnKeyDown(key);
    }

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (key != Key.F1) return base.OnKeyDownNotHandled(key);
        HelpScreen.Show(App!, "TurnCount");
        return true;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        this.PaintEmptyRows(0);
        var width = Viewport.Width;
        var half = width / 2;
        this.Paint(1, 0, TextFit.Cut($"Count turns: {tally.Part}", width - 2), Tone.Heading);
        this.Paint(1, 2, "Wheel turns  [Enter]", Tone.Plain);
        this.Paint(half, 2, "Propshaft turns  [Space]", Tone.Plain);
        var room = Viewport.Height - NumbersTop - RowsBelow;
        var size = Math.Min(BigDigits.SizeFor(tally.WheelTurns, half - 2, room), BigDigits.SizeFor(tally.PropshaftTurns, half - 2, room));
        PaintNumber(1, tally.WheelTurns, size);
        PaintNumber(half, tally.PropshaftTurns, size);

        var y = NumbersTop + (BigDigits.Height * size) + 1;
        foreach (var line in tally.Live.SelectMany(line => TextFit.Wrap(line, width - 2)).Take(Viewport.Height - y - 2)) this.Paint(1, y++, line, Tone.Strong);
        this.Paint(1, Viewport.Height - 2, TextFit.Cut(message, width - 2), Tone.Watch);
        return true;
    }

    private void PaintNumber(int x, int number, int size)
    {
        foreach (var (row, y) in BigDigits.Rows(number, size, Block).Select((row, y) => (row, y))) this.Paint(x, NumbersTop + y, row, Tone.Strong);
    }

    private bool Count(TallyEnd end)
    {
        var isEnd = end == TallyEnd.Wheel && tally.WheelTurns + 1 == TallyModel.UsualWheelTurns;
        if (tally.Count(end)) App?.Driver?.WriteRaw("\a");
        return Say(isEnd ? "Ten wheel turns: enough as a rule. Ctrl+S to end here, or go on." : "");
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
