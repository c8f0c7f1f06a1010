namespace BuildLog.Tui.Shell;

/// <summary>Items that are read from now on, whoever takes them and when: the terminal is made ready meanwhile.</summary>
/// <typeparam name="T">What is read.</typeparam>
internal sealed class ReadAhead<T>
{
    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(5);

    private readonly List<T> found = [];
    private readonly Lock gate = new();
    private readonly Task reading;

    public ReadAhead(Func<IEnumerable<T>> items) => reading = Task.Run(() =>
    {
        foreach (var item in items())
        {
            lock (gate) found.Add(item);
        }
    });

    /// <summary>What has been read so far.</summary>
    public IReadOnlyList<T> Found
    {
        get
        {
            lock (gate) return [.. found];
        }
    }

    /// <summary>What has been read so far at once, the rest as it comes; what stopped the reading is thrown behind the last of it.</summary>
    public IEnumerable<T> Items()
    {
        for (var k = 0; ; k++)
        {
            while (!Has(k))
            {
                if (Task.WaitAny([reading], Moment) < 0) continue;
                if (Has(k)) break;
                reading.GetAwaiter().GetResult();
                yield break;
            }

            yield return At(k);
        }
    }

    private bool Has(int k)
    {
        lock (gate) return k < found.Count;
    }

    private T At(int k)
    {
        lock (gate) return found[k];
    }
}
