namespace BuildLog.Data.Tests.Files;

/// <summary>Spoils a file on purpose.</summary>
internal static class Damage
{
    private const int PageSize = 4096;

    /// <summary>Everything after the page that holds the schema.</summary>
    public static void LastPagesOf(string path)
    {
        using var file = File.Open(path, FileMode.Open);
        file.Position = PageSize;
        file.Write(Enumerable.Repeat((byte)0xA5, (int)file.Length - PageSize).ToArray());
    }
}
