using System.Collections.Concurrent;
using System.Runtime.ExceptionServices;
using BuildLog.Data.Files;
using Terminal.Gui.App;

namespace BuildLog.Tui.Shell;

/// <summary>Reading that would keep the keys waiting, done beside the screen: what it finds comes to the screen's thread as it is found, together where it comes faster than a screen is drawn.</summary>
/// <typeparam name="T">What is read.</typeparam>
internal sealed class Beside<T>(IApplication app, Action<IReadOnlyList<T>> take, Action<string> say)
{
    private readonly ConcurrentQueue<(int Walk, T Item)> found = new();
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
                found.Enqueue((mine, item));
                Post(mine, () => TakeFound(mine));
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

    // Whoever comes first takes all there is; those who come after find nothing left.
    private void TakeFound(int mine)
    {
        var all = new List<T>();
        while (found.TryDequeue(out var next))
        {
            if (next.Walk == mine) all.Add(next.Item);
        }

        if (all.Count > 0) take(all);
    }

    private bool IsCurrent(int mine) => Volatile.Read(ref current) == mine;

    private void Post(int mine, Action act) => app.Invoke(() =>
    {
        if (IsCurrent(mine)) act();
    });
}
