using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using Xunit;

namespace BuildLog.Data.Tests.Crashes;

/// <summary>A record on a disk that nothing can be written to.</summary>
public sealed class LockedStick : IDisposable
{
    public const string Word = "look-at-the-stick";

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Is_refused_with_a_sentence_but_can_be_copied_checked_and_restored_from()
    {
        using (var shop = ShopFile.Open(Path.Combine(folder, "shop.db"))) shop.Add(new Vehicle { Name = "Brindle" });
        var said = OtherProgram.InARoomOfItsOwn("mount --bind \"$1\" \"$1\" && mount -o remount,ro,bind \"$1\"", folder, Word);
        Assert.SkipWhen(said is null, "Nobody may lock a folder here.");
        var stick = Path.Combine(folder, "shop.db");
        Assert.Equal(
            [
                $"change: {stick} or its folder cannot be written. Give yourself the right to write there, or name another file with --database.",
                "check: sound",
                "copy: Brindle",
                "restored: Brindle",
                $"copy to it: No copy can be made in {folder}: give yourself the right to write there, or name another place. The record itself is as it was.",
            ],
            said);
    }

    /// <summary>The program that has the stick.</summary>
    public static int Look(string folder)
    {
        var stick = Path.Combine(folder, "shop.db");
        var desk = Directory.CreateTempSubdirectory("buildlog-test-").FullName;
        Console.WriteLine("change: " + Said(() =>
        {
            using var shop = ShopFile.Open(stick);
            return shop.Add(new Vehicle { Name = "Tansy" }).Name;
        }));
        Console.WriteLine("check: " + Said(() => RecordCheck.Of(stick).IsSound ? "sound" : "not sound"));
        Console.WriteLine("copy: " + Said(() => Vehicle(Backup.To(stick, Path.Combine(desk, "copy.db"), overwrite: false).File)));
        Console.WriteLine("restored: " + Said(() => Vehicle(Restore.From(stick, Path.Combine(desk, "shop.db")).File)));
        Console.WriteLine("copy to it: " + Said(() => Backup.To(Path.Combine(desk, "shop.db"), Path.Combine(folder, "copy.db"), overwrite: false).File));
        Directory.Delete(desk, recursive: true);
        return 0;
    }

    private static string Vehicle(string path)
    {
        using var shop = ShopFile.Open(path);
        return string.Join(", ", shop.Vehicles().Select(vehicle => vehicle.Name));
    }

    private static string Said(Func<string> act)
    {
        try
        {
            return act();
        }
        catch (RecordException trouble)
        {
            return trouble.Message;
        }
    }
}
