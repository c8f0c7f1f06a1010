namespace BuildLog.Endurance.CutOff;

/// <summary>Other programs one after the other: the next one gets ready while this one is cut off and what it left is looked through.</summary>
internal sealed class Workers(string work) : IDisposable
{
    private Worker next = new(work);

    /// <summary>Whoever takes it disposes it.</summary>
    public Worker Take()
    {
        var ready = next;
        next = new Worker(work);
        return ready;
    }

    public void Dispose() => next.Dispose();
}
