using Terminal.Gui.App;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Shell;

/// <summary>Keys that come while a box is closing, typed ahead of a slow save, are kept for what comes after it.</summary>
/// <remarks>The library hands all keys that wait to what is on top, also when the first of them has closed that box already.</remarks>
internal sealed class KeptKeys
{
    private readonly IApplication app;
    private readonly Queue<Key> kept = new();
    private Key? handedOn;

    private KeptKeys(IApplication app) => this.app = app;

    public static void ApplyTo(IApplication app)
    {
        var keys = new KeptKeys(app);
        app.Keyboard.KeyDown += keys.Take;
        app.Iteration += (_, _) => keys.HandOn();
    }

    private bool BoxIsClosing => app.TopRunnableView is IRunnable { StopRequested: true };

    private void Take(object? sender, Key key)
    {
        if (ReferenceEquals(key, handedOn)) return;
        if (!BoxIsClosing && kept.Count == 0) return;

        kept.Enqueue(new Key(key));
        key.Handled = true;
        HandOn();
    }

    private void HandOn()
    {
        while (!BoxIsClosing && kept.TryDequeue(out var key))
        {
            handedOn = key;
            app.Keyboard.RaiseKeyDownEvent(key);
        }
    }
}
