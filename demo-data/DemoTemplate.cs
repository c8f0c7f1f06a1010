using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using BuildLog.Data;
using BuildLog.Data.Files;

namespace BuildLog.DemoData;

/// <summary>The demo shop as it was entered the last time with these very programs, kept to copy from.</summary>
/// <remarks>
/// Entering it takes seconds in a cold program, copying it milliseconds. The name holds a fingerprint of the programs that made it, so another
/// build never takes it for its own. Where the cache folder cannot be used, the shop is entered anew each time.
/// </remarks>
internal static class DemoTemplate
{
    private const string Prefix = "demo-shop-";

    public static void CopyTo(string path)
    {
        try
        {
            var template = Path.Combine(Folder(), Prefix + Fingerprint() + ".db");
            if (!File.Exists(template)) Make(template);
            File.Copy(template, path);
        }
        catch (Exception noCache) when (noCache is IOException or UnauthorizedAccessException or RecordException)
        {
            // A cache is a convenience: without it the same shop is made the long way.
            File.Delete(path);
            Enter(path);
        }
    }

    private static void Make(string template)
    {
        OwnerOnly.CreateFolder(Path.GetDirectoryName(template)!);
        foreach (var old in Directory.EnumerateFiles(Path.GetDirectoryName(template)!, Prefix + "*")) File.Delete(old);

        // Beside its place first: another program may be making the same one.
        var unfinished = Path.Combine(Path.GetDirectoryName(template)!, string.Create(CultureInfo.InvariantCulture, $"{Prefix}{Guid.NewGuid():N}.tmp"));
        Enter(unfinished);
        File.Delete(unfinished + ".lock");
        File.Move(unfinished, template, overwrite: true);
    }

    private static void Enter(string path)
    {
        using var shop = ShopFile.Open(path);
        DemoShop.Fill(shop);
    }

    // The identity of a build changes with any change of its source.
    private static string Fingerprint()
    {
        var builds = new[] { typeof(DemoTemplate), typeof(Shop), typeof(Gearing.Drivelines.Driveline) }.Select(type => type.Module.ModuleVersionId.ToString("N"));
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.ASCII.GetBytes(string.Concat(builds))))[..16];
    }

    private static string Folder()
    {
        if (OperatingSystem.IsWindows())
            return Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "BuildLog", "cache");

        // The XDG Base Directory Specification ignores a relative path.
        return Environment.GetEnvironmentVariable("XDG_CACHE_HOME") is { } named && named.StartsWith('/')
            ? Path.Combine(named, "buildlog")
            : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".cache", "buildlog");
    }
}
