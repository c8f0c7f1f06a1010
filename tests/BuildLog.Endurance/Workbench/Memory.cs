namespace BuildLog.Endurance.Workbench;

/// <summary>What is held after everything that nobody needs has been let go.</summary>
internal static class Memory
{
    /// <summary>More than this is a leak and no cache: in bytes.</summary>
    public const long Flat = 8 * 1024 * 1024;

    public static long Held()
    {
        for (var k = 0; k < 3; k++)
        {
            GC.Collect(GC.MaxGeneration, GCCollectionMode.Forced, blocking: true, compacting: true);
            GC.WaitForPendingFinalizers();
        }

        return GC.GetTotalMemory(forceFullCollection: true);
    }

    public static string Mebibytes(long bytes) => FormattableString.Invariant($"{bytes / 1048576.0:0.0} MiB");
}
