using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using BuildLog.Data;
using BuildLog.Data.Attachments;
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
    private const string RecordName = "shop.db";

    /// <summary>What is younger may still be in the making, by another program.</summary>
    private static readonly TimeSpan LongestMaking = TimeSpan.FromHours(1);

    public static void CopyTo(string path)
    {
        try
        {
            var template = Path.Combine(Folder(), Prefix + Fingerprint());
            if (!Directory.Exists(template)) Make(template);
            File.Copy(Path.Combine(template, RecordName), path);
            CopyFiles(AttachmentStore.Beside(Path.Combine(template, RecordName)).Folder, AttachmentStore.Beside(path).Folder);
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
        var cache = Path.GetDirectoryName(template)!;
        OwnerOnly.CreateFolder(cache);
        foreach (var old in Directory.EnumerateFiles(cache, Prefix + "*")) File.Delete(old);
        foreach (var old in Directory.EnumerateDirectories(cache, Prefix + "*").Where(old => Directory.GetLastWriteTimeUtc(old) < DateTime.UtcNow - LongestMaking)) Directory.Delete(old, recursive: true);

        // Beside its place first: another program may be making the same one, and then it is as good.
        var unfinished = Path.Combine(cache, string.Create(CultureInfo.InvariantCulture, $"{Prefix}{Guid.NewGuid():N}.tmp"));
        OwnerOnly.CreateFolder(unfinished);
        Enter(Path.Combine(unfinished, RecordName));
        File.Delete(Path.Combine(unfinished, RecordName + ".lock"));
        if (Directory.Exists(template)) Directory.Delete(unfinished, recursive: true);
        else Directory.Move(unfinished, template);
    }

    private static void CopyFiles(string from, string to)
    {
        foreach (var folder in Directory.EnumerateDirectories(from, "*", SearchOption.AllDirectories).Prepend(from)) OwnerOnly.CreateFolder(Path.Combine(to, Path.GetRelativePath(from, folder)));
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories)) File.Copy(file, Path.Combine(to, Path.GetRelativePath(from, file)));
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

        return Path.Combine(XdgFolder.Of("XDG_CACHE_HOME", ".cache"), "buildlog");
    }
}
