using BuildLog.Data.Files;

namespace BuildLog.Data.Tests;

/// <summary>A record with nothing in it yet, made once by the real migrations: each test takes a copy, as making one takes longer than most tests.</summary>
internal static class EmptyRecord
{
    private static readonly Lazy<string> Made = new(() =>
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-template-").FullName;
        var path = Path.Combine(folder, "shop.db");
        ShopFile.Open(path).Dispose();
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        return path;
    });

    public static void CopyTo(string path) => File.Copy(Made.Value, path);
}
