using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Forms;

/// <summary>A form on screen: cautions first where there are any, then the entries, what they come to, and two buttons.</summary>
internal sealed class FormScreen : Popup
{
    private const int LongestPaste = 10_000;
    private const int BothFrames = 2;
    private const int ButtonsAndKeys = 3;
    private const int MostEcho = 8;
    private readonly Form form;
    private readonly FormState state;
    private readonly FormBody body;
    private readonly TextPage echo = new() { X = 1, Width = Dim.Fill(1), CanFocus = false };
    private readonly View outOfView = new() { X = 1, Width = Dim.Fill(1), Height = 1, CanFocus = false };
    private readonly Button save;
    private readonly Button leave = new() { Text = Spoken("Leave"), ShadowStyle = ShadowStyles.None };
    private Action<string>? refused;
    private bool saved;
    private bool hasWaited; // for another program that writes to the record

    public FormScreen(Form form, Scratchpad? pad = null, IReadOnlyDictionary<string, string>? draft = null)
        : base(form.Title)
    {
        this.form = form;
        state = new FormState(form, pad, draft);
        body = new FormBody(form, state) { X = 1, Width = Dim.Fill(1) };
        save = new Button { Text = form.SaveCaption, X = 1, Y = Pos.AnchorEnd(2), ShadowStyle = ShadowStyles.None };
        leave.X = Pos.Right(save) + 2;
        leave.Y = Pos.Top(save);
        body.Changed += (_, _) => ShowEcho();
        save.Accepting += (_, e) => Press(e, Save);
        leave.Accepting += (_, e) => Press(e, () => Leave());
        Add(body, outOfView, echo, save, leave);
        outOfView.DrawingContent += (_, e) => e.Cancel = PaintOutOfView();
        body.ViewportChanged += (_, _) => outOfView.SetNeedsDraw();
        SubViewLayout += (_, _) => Arrange();

        AddCommand(Command.Save, () =>
        {
            Save();
            return true;
        });
        body.EntryDone += (_, _) => Move(+1);
        AddCommand(Command.Up, () => Move(-1));
        AddCommand(Command.Down, () => Move(+1));
        AddCommand(Command.PreviousTabStop, () => Move(-1));
        AddCommand(Command.NextTabStop, () => Move(+1));
        AddCommand(Command.PageUp, () => Focus(body.PageFrom(-1)));
        AddCommand(Command.PageDown, () => Focus(body.PageFrom(+1)));
        AddCommand(Command.Start, () => Focus(state.Shown.FirstOrDefault()?.Id));
        AddCommand(Command.End, () => Focus(state.Shown.LastOrDefault()?.Id));
        KeyBindings.Add(Key.PageUp, Command.PageUp);
        KeyBindings.Add(Key.PageDown, Command.PageDown);
        KeyBindings.Add(Key.Home, Command.Start);
        KeyBindings.Add(Key.End, Command.End);
        KeyBindings.Add(Key.Tab, Command.NextTabStop);
        KeyBindings.Add(Key.Tab.WithShift, Command.PreviousTabStop);
        KeyBindings.Add(Key.S.WithCtrl, Command.Save);
        KeyBindings.Add(Key.CursorUp, Command.Up);
        KeyBindings.Add(Key.CursorDown, Command.Down);
        KeyBindings.Add(Key.Q.WithCtrl, Command.Cancel);
        ShowKeys(new KeyHint("Enter/Tab", Spoken("next")), new KeyHint("Ctrl+S", form.SaveCaption), new KeyHint("F1", Spoken("help")), new KeyHint("Esc", Spoken("leave")));
        ShowEcho();
    }

    protected override string? HelpPage => form.HelpPage;

    protected override string FurtherHelp => form.HelpPage == Form.GeneralHelp ? base.FurtherHelp : Form.GeneralHelp;

    protected override int WantedWidth => 90;

    protected override int WantedHeight => body.RowsAt(InnerWidth - 2) + EchoRows + ButtonsAndKeys + BothFrames + 1;

    // What the values come to never takes more than half of a small screen; it then scrolls off with a mark.
    private int EchoRows => echoLines.Count == 0 ? 0 : Math.Min(echoLines.Count, Math.Clamp(((App?.Screen.Height ?? 24) / 2) - ButtonsAndKeys, 3, MostEcho)) + 1;

    private List<TextLine> echoLines = [];
    private int echoWidth;

    /// <summary>Shows the cautions and the set-up where there are any, then the form; what was left half filled is offered again.</summary>
    /// <returns>True when it was saved.</returns>
    /// <param name="app">Whose terminal.</param>
    /// <param name="form">What is asked.</param>
    /// <param name="pad">Where it is kept until it is saved.</param>
    /// <param name="refused">Hears why it could not be saved, though every entry was as it should be; null where nobody keeps that.</param>
    public static bool Fill(IApplication app, Form form, Scratchpad pad, Action<string>? refused = null)
    {
        if (form.Cautions.Count > 0 && !CautionsScreen.Acknowledge(app, form.Title, form.Cautions, form.HelpPage)) return false;
        if (form.SetUp.Count > 0 && !SetUpScreen.GoOn(app, form.Title, form.SetUp, form.HelpPage)) return false;
        if (form.Entries.Count == 0) return form.Save(new FormValues(new Dictionary<string, string>())) is Saved;
        using var screen = new FormScreen(form, pad, TakenUp(app, form, pad)) { refused = refused };
        app.Run(screen);
        return screen.saved;
    }

    private static IReadOnlyDictionary<string, string>? TakenUp(IApplication app, Form form, Scratchpad pad)
    {
        var title = form.KeptAs;
        if (pad.Draft(title) is not { } draft) return null;
        var afresh = Ask.Confirm(app, new Question(Spoken("Typed before, not saved"), Spoken($"\"{title}\" was left half filled. Go on with what you typed?"), Spoken("Throw it away"), Spoken("Go on with it")), form.HelpPage);
        if (!afresh) return draft;
        pad.DropDraft(title);
        return null;
    }

    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (App is { } app)
        {
            app.Paste -= TakePaste;
            if (newIsRunning) app.Paste += TakePaste;
        }

        if (newIsRunning && state.Shown.Count > 0) body.FocusOn(form.BeginsAt ?? state.Shown[0].Id);
    }

    // The library hands a paste to what it last knew to have the focus, which in a form just opened is not the entry.
    private void TakePaste(object? sender, PasteEventArgs e)
    {
        if (App?.TopRunnableView != this || MostFocused is not ITakesPaste input) return;
        e.Handled = e.Text.Length > LongestPaste ? RefusePaste(e.Text.Length) : input.TakePaste(TextOnly(e.Text));
    }

    // Signs that steer a terminal come along with what is copied from one; no entry may hold them.
    private static string TextOnly(string pasted) => string.Concat(pasted.Where(c => !char.IsControl(c) || c is '\n' or '\r' or '\t'));

    private bool RefusePaste(int length)
    {
        state.Say(Spoken($"{length} characters were pasted; an entry takes {LongestPaste} at once. Nothing was taken."));
        ShowEcho();
        return true;
    }

    protected override bool? Leave()
    {
        if (state.BeforeLeaving is { } question && !Ask.Confirm(App!, question, form.HelpPage)) return true;
        state.Leave();
        return base.Leave();
    }

    // Round and round: the entries that show, then the two buttons.
    private bool? Move(int by)
    {
        var entries = state.Shown;
        var stops = entries.Count + 2;
        var at = save.HasFocus ? entries.Count
            : leave.HasFocus ? entries.Count + 1
            : Math.Max(0, entries.ToList().FindIndex(entry => entry.Id == body.FocusedEntry));
        var next = (at + by + stops) % stops;
        if (next < entries.Count) body.FocusOn(entries[next].Id);
        else (next == entries.Count ? save : leave).SetFocus();
        return true;
    }

    private bool? Focus(string? entryId)
    {
        if (entryId is not null) body.FocusOn(entryId);
        return true;
    }

    private static void Press(CommandEventArgs e, Action act)
    {
        e.Handled = true;
        act();
    }

    public override void SayMeanwhile(string text)
    {
        if (text.Length > 0 && !hasWaited) App?.AddTimeout(TimeSpan.Zero, HaveAllKeys); // comes due when the keys that came meanwhile are through
        hasWaited |= text.Length > 0;
        base.SayMeanwhile(text);
    }

    private bool HaveAllKeys() => hasWaited = false;

    // A wish to save that was repeated while the first one waited is the same wish: each would wait as long again, and the screen with it.
    private void Save()
    {
        if (hasWaited) return;
        var (done, firstWrong) = state.TrySave();
        SayMeanwhile(""); // it may have waited for another program
        ShowEcho();
        if (state.RefusedAtSaving is { } sentence) refused?.Invoke(sentence);
        if (done)
        {
            saved = true;
            App?.RequestStop(this);
        }
        else if (firstWrong is { } entryId)
        {
            body.Correct(entryId);
        }
    }

    private void ShowEcho()
    {
        WrapEcho();
        SetNeedsLayout();
        SetNeedsDraw();
    }

    private void WrapEcho()
    {
        var width = (echoWidth = InnerWidth) - 3;

        // What could not be saved comes first: on a small screen the rest may have no room.
        echoLines = state.FormMessage.Length == 0 ? [] : [.. TextFit.Wrap("! " + state.FormMessage, width).Select(line => TextLine.Of(line, Tone.Clash))];
        echoLines.AddRange(state.Echo.SelectMany(line => TextFit.Width(line) <= width ? [line] : TextFit.Wrap(line, width, 2)).Select(line => TextLine.Of(line, Tone.Strong)));
        echo.Show(echoLines);
    }

    // The row that sets the entries apart from what follows says how many of them are hidden.
    private bool PaintOutOfView()
    {
        outOfView.Paint(0, 0, TextFit.Exactly(body.OutOfView.InWords, outOfView.Viewport.Width), Tone.Quiet);
        return true;
    }

    private void Arrange()
    {
        if (echoWidth != InnerWidth) WrapEcho();
        outOfView.Y = Viewport.Height - EchoRows - ButtonsAndKeys;
        body.Height = Math.Max(1, Viewport.Height - EchoRows - ButtonsAndKeys);
        echo.Y = Viewport.Height - EchoRows - ButtonsAndKeys + 1;
        echo.Height = Math.Max(0, EchoRows - 1);
        echo.Visible = echoLines.Count > 0;
    }
}
