using System.Text;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using Xunit;

namespace BuildLog.Data.Tests.Crashes;

public sealed class FullDisk : IDisposable
{
    public const string Word = "fill-the-disk";

    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-test-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Is_a_sentence_and_loses_nothing_and_is_over_when_there_is_room_again()
    {
        var said = OtherProgram.InARoomOfItsOwn("mount -t tmpfs -o size=4m tmpfs \"$1\"", folder, Word);
        Assert.SkipWhen(said is null, "Nobody may mount a small disk here.");
        var shop = Path.Combine(folder, "shop.db");
        Assert.Equal(
            [
                $"change: The disk that holds {shop} is full. Nothing of the last change was stored; free some space and try again.",
                "lost: none",
                $"backup: There is no room for the copy {Path.Combine(folder, "backups", "shop.2026-05-03.db")}. Free some space, or name a place on another disk; the record itself is as it was.",
                $"attachment: The disk that holds {Path.Combine(folder, "shop.files")} is full. Nothing of the last change was stored; free some space and try again.",
                "left over: none",
                "with room again: stored",
                "troubles: none",
            ],
            said);
    }

    /// <summary>The program on the small disk.</summary>
    public static int Fill(string folder)
    {
        var path = Path.Combine(folder, "shop.db");
        var ballast = Path.Combine(folder, "ballast");
        File.WriteAllBytes(ballast, new byte[512 * 1024]);
        using var shop = ShopFile.Open(path);
        var stored = new List<string>();
        Console.WriteLine("change: " + Trouble(() =>
        {
            for (var k = 1; k < 1000; k++) stored.Add(shop.Add(new Vehicle { Name = FormattableString.Invariant($"Project {k}"), Notes = new string('n', 50_000) }).Name);
        }));
        Console.WriteLine("lost: " + Listed(stored.Except(shop.Vehicles().Select(vehicle => vehicle.Name))));
        Console.WriteLine("backup: " + Trouble(() => Backup.OfTheDay(path, new(2026, 5, 3))));
        Console.WriteLine("attachment: " + Trouble(() =>
        {
            using var photo = new MemoryStream(Encoding.ASCII.GetBytes(new string('p', 4 * 1024 * 1024)));
            AttachmentStore.Beside(path).Put(photo);
        }));
        Console.WriteLine("left over: " + Listed(Directory.GetFiles(folder, "*.tmp", SearchOption.AllDirectories)));

        File.Delete(ballast);
        Console.WriteLine("with room again: " + Trouble(() => shop.Add(new Vehicle { Name = "Brindle" })));
        Console.WriteLine("troubles: " + Listed(RecordCheck.Of(path).Troubles()));
        return 0;
    }

    private static string Trouble(Action act)
    {
        try
        {
            act();
            return "stored";
        }
        catch (RecordException trouble)
        {
            return trouble.Message;
        }
    }

    private static string Listed(IEnumerable<string> things) => string.Join(", ", things) is { Length: > 0 } list ? list : "none";
}
