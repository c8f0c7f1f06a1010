using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Measurements;

/// <summary>The tally: the whole screen, two large numbers, a key for each end. Any other key counts the propshaft, so that a clicker will do, whatever it sends.</summary>
internal sealed class TallyScreen : Runnable
{
    private const int NumbersTop = 4;
    private const int RowsBelow = 7;
    private readonly TallyModel tally;
    private readonly KeyLine keys = new();
    private readonly LeastSize leastSize = new() { KeepsKeysOut = false };
    private readonly Action? bell;
    private bool hadEnough;
    private bool saidThatAnyKeyCounts;
    private string message = "";

    /// <param name="tally">What is counted.</param>
    /// <param name="bell">What sounds for a hand under a car, which looks at no screen; null for the terminal's bell.</param>
    public TallyScreen(TallyModel tally, Action? bell = null)
    {
        this.tally = tally;
        this.bell = bell;
        hadEnough = tally.IsEnough;
        Border.Settings &= ~BorderSettings.TerminalTitle; // the terminal's own title stays as it was
        CanFocus = true;
        foreach (var key in new[] { Key.Space, Key.Enter }) KeyBindings.Remove(key);
        Add(keys, leastSize);
        SubViewLayout += (_, _) =>
        {
            leastSize.Fit(Viewport.Size);
            ShowKeys();
        };
        AddCommand(Command.Cancel, () => Close(done: false));
        AddCommand(Command.Save, End);
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
        if (key == Key.Tab && tally.OtherDriven is not null) return Count(TallyEnd.OtherDriven);
        if (key == Key.Backspace) return tally.Undo() ? Say(Spoken("Taken back.")) : Say(Spoken("Nothing to take back."));
        return Counts(key) ? CountWith(key) : base.OnKeyDown(key);
    }

    // A hand that slipped hears once that its key counted; with a clicker that is how it should be.
    private bool CountWith(Key key)
    {
        var (end, name) = tally.Driving is { } driving ? (TallyEnd.Driving, driving) : (TallyEnd.Driven, tally.Driven);
        Count(end);
        if (key == Key.Space || saidThatAnyKeyCounts) return true;

        saidThatAnyKeyCounts = true;
        return message.Length > 0 || Say(Spoken($"Counted: any other key is a {name} turn too, for clickers. Backspace takes it back."));
    }

    // Clickers made for showing pages send arrows, PgDn or F5.
    private static bool Counts(Key key)
        => !key.IsCtrl && !key.IsAlt && key != Key.F1 && key != Key.CursorUp && key != Key.CursorDown && key != Key.Esc && key.NoShift != Key.Tab && !key.IsModifierOnly && key != Key.Empty;

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (key != Key.F1) return base.OnKeyDownNotHandled(key);
        HelpScreen.Show(App!, tally.HelpPage, HelpScreen.OfTheWhole);
        return true;
    }

    protected override bool OnDrawingContent(DrawContext? context)
    {
        this.PaintEmptyRows(0);
        var width = Viewport.Width;
        this.Paint(1, 0, TextFit.Cut(tally.Title, width - 2), Tone.Heading);
        var ends = Ends();
        var each = width / Math.Max(2, ends.Count);
        var size = ends.Min(end => BigDigits.SizeFor(end.Turns, each - 2, Viewport.Height - NumbersTop - RowsBelow));
        foreach (var (end, k) in ends.Select((end, k) => (end, k)))
        {
            this.Paint(1 + (k * each), 2, Heading(end.Name, end.Key, each - 2), Tone.Plain);
            PaintNumber(1 + (k * each), end.Turns, size);
        }

        var y = NumbersTop + (BigDigits.Height * size) + 1;
        var said = message.Length == 0 ? [] : TextFit.Wrap(message, width - 2).ToList();
        foreach (var line in tally.Live.SelectMany(line => TextFit.Wrap(line, width - 2)).Take(Viewport.Height - y - 1 - said.Count)) this.Paint(1, y++, line, Tone.Strong);
        for (var k = 0; k < said.Count; k++) this.Paint(1, Viewport.Height - 1 - said.Count + k, said[k], Tone.Watch);
        return true;
    }

    // The wheels beside each other, then what is counted against them.
    private List<(string Name, string Key, int Turns)> Ends() =>
    [
        (tally.Driven, tally.Driving is null ? Spoken("Space") : Spoken("Enter"), tally.DrivenTurns),
        .. tally.OtherDriven is { } other ? [(other, Spoken("Tab"), tally.OtherDrivenTurns)] : Enumerable.Empty<(string, string, int)>(),
        .. tally.Driving is { } driving ? [(driving, Spoken("Space"), tally.DrivingTurns)] : Enumerable.Empty<(string, string, int)>(),
    ];

    // Where not all have room, those go that stand above the numbers they count.
    private void ShowKeys()
    {
        KeyHint[] rest = [new("Bksp", Spoken("take back")), new("Ctrl+S", Spoken("done")), new("F1", Spoken("help")), new("Esc", Spoken("leave"))];
        KeyHint[] all = [.. Ends().AsEnumerable().Reverse().Select(end => new KeyHint(end.Key, end.Name)), .. rest];
        keys.Show(KeyLine.WidthOf(all) <= Viewport.Width + 1 ? all : rest);
    }

    // The key is never cut off.
    private static string Heading(string name, string key, int width)
    {
        var full = Spoken($"{TextFit.Capital(name)} turns [{key}]");
        return TextFit.Width(full) <= width ? full : $"{TextFit.Cut(TextFit.Capital(name), width - key.Length - 3)} [{key}]";
    }

    private void PaintNumber(int x, int number, int size)
    {
        foreach (var (row, y) in BigDigits.Rows(number, size, '█').Select((row, y) => (row, y))) this.Paint(x, NumbersTop + y, row, Tone.Strong);
    }

    private bool Count(TallyEnd end)
    {
        var isEnd = end == TallyEnd.Driven && tally.DrivenTurns + 1 == TallyModel.UsualTurns;
        if (tally.Count(end) | NowEnough()) Ring();
        return Say(isEnd ? Spoken($"Ten {tally.Driven} turns: enough as a rule. Ctrl+S to end here, or go on.") : "");
    }

    // Once: what looks like enough may turn out not to be, with the turns after it.
    private bool NowEnough() => !hadEnough && (hadEnough = tally.IsEnough);

    private void Ring()
    {
        if (bell is not null) bell();
        else App?.Driver?.WriteRaw("\a");
    }

    private bool? End()
    {
        if (tally.NotYet is { } notYet) return Say(notYet);
        Ring();
        return Close(done: true);
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
