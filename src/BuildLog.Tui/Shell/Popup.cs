using Terminal.Gui.Drawing;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Shell;

/// <summary>A box over the screen that waits for an answer; Esc closes it. Its last inner row holds its keys.</summary>
internal class Popup : Runnable
{
    private readonly KeyLine keys = new() { Y = Pos.AnchorEnd(1) };
    private readonly LeastSize leastSize = new();

    protected Popup(string title)
    {
        Title = TextFit.Cut(title, 60);
        BorderStyle = LineStyle.Single;
        Border.Settings &= ~BorderSettings.TerminalTitle; // the terminal's own title stays as it was
        X = Pos.Center();
        Y = Pos.Center();
        Width = Dim.Func(_ => OuterWidth);
        Height = Dim.Func(_ => WantedHeight > ScreenHeight - 4 ? ScreenHeight : WantedHeight);
        Add(keys);
        AddCommand(Command.Cancel, Leave);
        KeyBindings.Add(Key.Esc, Command.Cancel);
        SubViewLayout += (_, _) => leastSize.Fit(new(ScreenWidth, ScreenHeight));
    }

    /// <summary>Outer width it would like; it never gets more than the screen.</summary>
    protected virtual int WantedWidth => 76;

    protected virtual int WantedHeight => 20;

    /// <summary>The help that F1 shows over it; null where whoever opened it has no help.</summary>
    protected virtual string? HelpPage => null;

    /// <summary>Where F1 within that help leads on to, as it does on the workbench.</summary>
    protected virtual string FurtherHelp => HelpScreen.OfTheWhole;

    /// <summary>Cells inside the border at the width it will get.</summary>
    protected int InnerWidth => OuterWidth - 2;

    // A box that would leave only a rim of what is behind it takes the rim too.
    private int OuterWidth => WantedWidth > ScreenWidth - 12 ? ScreenWidth : WantedWidth;

    private int ScreenWidth => App?.Screen.Width ?? 80;

    private int ScreenHeight => App?.Screen.Height ?? 24;

    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        App!.Keyboard.KeyDown -= Forget;
        if (newIsRunning) App.Keyboard.KeyDown += Forget;
        if (newIsRunning && leastSize.SuperView is null) Add(leastSize); // over all that the box itself has added
    }

    protected override bool OnKeyDownNotHandled(Key key)
    {
        if (key == Key.F1 && HelpPage is { } page) HelpScreen.Show(App!, page, FurtherHelp);
        else return base.OnKeyDownNotHandled(key) || SayWhyNothing(key);
        return true;
    }

    protected void ShowKeys(params KeyHint[] hints) => keys.Show(hints);

    /// <summary>Says something in place of its keys while none of them works; empty when they do again.</summary>
    public virtual void SayMeanwhile(string text) => keys.SayMeanwhile(text);

    /// <summary>Answers a key that means nothing here, in place of the keys and until the next one.</summary>
    /// <param name="key">What it is called.</param>
    protected virtual string WhyNothing(string key) => Spoken($"{key} does nothing here.");

    private bool SayWhyNothing(Key key)
    {
        if (UnusedKey.NameOf(key) is not { } name) return false;
        keys.SayMeanwhile(WhyNothing(name));
        return true;
    }

    private void Forget(object? sender, Key key) => keys.SayMeanwhile("");

    /// <summary>What Esc does.</summary>
    protected virtual bool? Leave()
    {
        App?.RequestStop(this);
        return true;
    }
}
