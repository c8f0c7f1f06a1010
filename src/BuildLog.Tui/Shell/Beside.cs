using System.Runtime.ExceptionServices;
using BuildLog.Data.Files;
using Terminal.Gui.App;

namespace BuildLog.Tui.Shell;

/// <summary>Reading that would keep the keys waiting, done beside the screen: what it finds comes to the screen's thread one by one.</summary>
/// <typeparam name="T">What is read.</typeparam>
internal sealed class Beside<T>(IApplication app, Action<T> take, Action<string> say)
{
    private int current;

    /// <summary>Begins a walk; one that is under way ends, and what it still finds is dropped.</summary>
    public void Read(Func<IEnumerable<T>> items, Action? done = null)
    {
        var mine = Interlocked.Increment(ref current);
        Task.Run(() => Walk(items, mine, done));
    }

    private void Walk(Func<IEnumerable<T>> items, int mine, Action? done)
    {
        try
        {
            foreach (var item in items())
            {
                if (!IsCurrent(mine)) return;
                Post(mine, () => take(item));
            }

            if (done is not null) Post(mine, done);
        }
        catch (RecordException trouble)
        {
            Post(mine, () => say(trouble.Message));
        }
        catch (NotInitializedException)
        {
            // The screen was closed in the meantime: nobody is left to be told.
        }
#pragma warning disable CA1031 // Lost on this thread, it would leave a page that says for ever that it is reading.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            Post(mine, ExceptionDispatchInfo.Capture(fault).Throw); // the screen's loop says and logs it
        }
    }

    private bool IsCurrent(int mine) => Volatile.Read(ref current) == mine;

    private void Post(int mine, Action act) => app.Invoke(() =>
    {
        if (IsCurrent(mine)) act();
    });
}
