namespace BuildLog.Data.Files;

/// <summary>Lets one program at a time create or migrate a file: a lock file beside it, which a killed program leaves open to the next.</summary>
internal sealed class MigrationLock : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(50);

    private readonly FileStream file;

    private MigrationLock(FileStream file) => this.file = file;

    /// <exception cref="RecordException">Another program holds it too long.</exception>
    public static MigrationLock Take(string path)
    {
        var giveUp = DateTime.UtcNow + Patience;
        while (true)
        {
            try
            {
                return new(OwnerOnly.OpenFile(path + ".lock"));
            }
            catch (IOException held) when (IoErrors.IsHeldByAnother(held))
            {
                if (DateTime.UtcNow > giveUp)
                    throw new RecordException(Fault.Busy, Spoken($"Another program is preparing {path}. Wait until it is done, and try again."), held);
                Thread.Sleep(Pause);
            }
        }
    }

    public void Dispose() => file.Dispose();
}
