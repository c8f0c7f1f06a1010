using System.Drawing;
using System.Text;
using BuildLog.Tui.Shell;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Time;
using Terminal.Gui.ViewBase;
using TgAttribute = Terminal.Gui.Drawing.Attribute;

namespace BuildLog.Tui.Tests.Headless;

/// <summary>One application with its screen in memory and its clock in the test's hand; the test's thread is its screen thread.</summary>
internal sealed class HeadlessScreen : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);
    private readonly VirtualTimeProvider time = new();

    public HeadlessScreen(int width = 80, int height = 24)
    {
        App = Application.Create(time);
        App.Init(DriverRegistry.Names.ANSI);
        App.Driver!.SetScreenSize(width, height);
        Theme.ApplyTo(App);
        TerminalSession.ApplyKeysTo(App);
    }

    public IApplication App { get; }

    /// <summary>The view the keys go to.</summary>
    public View? Focused => App.TopRunnableView?.MostFocused;

    /// <summary>The whole screen, a line a row, without trailing spaces.</summary>
    public string Text => string.Join('\n', Enumerable.Range(0, App.Driver!.Rows).Select(Row)) + "\n";

    public string Row(int y)
    {
        var cells = App.Driver!.Contents!;
        var line = new StringBuilder();
        for (var x = 0; x < cells.GetLength(1); x++) line.Append(cells[y, x].Grapheme);
        return line.ToString().TrimEnd();
    }

    public TgAttribute AttributeAt(Point at) => App.Driver!.Contents![at.Y, at.X].Attribute!.Value;

    /// <summary>Shows a screen without running a loop: for tests of what stands where.</summary>
    public HeadlessScreen Show(IRunnable screen)
    {
        App.Begin(screen);
        return Draw();
    }

    public HeadlessScreen Draw()
    {
        App.LayoutAndDraw(true);
        App.LayoutAndDraw();
        return this;
    }

    /// <summary>Lets timers and calls from other threads come due.</summary>
    public void Advance(TimeSpan by) => time.Advance(by);

    public HeadlessScreen Press(params Key[] keys)
    {
        foreach (var key in keys)
        {
            App.InjectKey(key);
            Draw();
        }

        return this;
    }

    public HeadlessScreen Type(string text)
    {
        foreach (var c in text) App.InjectKey(new Key(c));
        return Draw();
    }

    public HeadlessScreen Click(string text)
    {
        App.InjectSequence(InputInjectionExtensions.LeftButtonClick(Find(text)));
        return Draw();
    }

    public HeadlessScreen Resize(int width, int height)
    {
        App.Driver!.SetScreenSize(width, height);
        return Draw();
    }

    /// <summary>Runs the real loop and feeds it one step after another: for acts that open boxes and wait for them.</summary>
    public HeadlessScreen Run(IRunnable screen, params Step[] steps) => Run(screen, _ => false, steps);

    public HeadlessScreen Run(IRunnable screen, Func<Exception, bool> onError, params Step[] steps)
    {
        var next = 0;
        var until = DateTime.UtcNow + Patience;
        void Advance(object? sender, EventArgs<IApplication?> e)
        {
            time.Advance(TimeSpan.FromMilliseconds(20)); // timers and calls from other threads come due on this clock
            if (DateTime.UtcNow > until) throw new TimeoutException($"Step {next + 1} of {steps.Length} never came true:\n{Text}");
            if (next >= steps.Length) return;

            var current = next++; // a step may open a box, whose own loop goes on with the steps after it
            if (!steps[current](this)) next = current;
            else until = DateTime.UtcNow + Patience; // a long walk on a busy machine takes long; only a step that never comes has failed
        }

        App.Iteration += Advance;
        try
        {
            App.Run(screen, onError);
        }
        finally
        {
            App.Iteration -= Advance;
        }

        return next == steps.Length ? this : throw new InvalidOperationException($"It ended after {next} of {steps.Length} steps:\n{Text}");
    }

    /// <summary>Where a text stands.</summary>
    public Point Find(string text)
    {
        for (var y = 0; y < App.Driver!.Rows; y++)
        {
            var x = Row(y).IndexOf(text, StringComparison.Ordinal);
            if (x >= 0) return new Point(x, y);
        }

        throw new InvalidOperationException($"“{text}” is not on the screen:\n{Text}");
    }

    public void Dispose() => App.Dispose();
}
