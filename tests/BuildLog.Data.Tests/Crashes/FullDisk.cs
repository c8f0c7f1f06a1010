using System.Text;
using BuildLog.Data.Attachments;
using BuildLog.Data.Files;
using BuildLog.Data.Lists;
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
                $"export: The disk is full, so {Path.Combine(folder, "shop.zip")} was not written. Free some space, or name a place on another disk.",
                $"list: The disk is full, so {Path.Combine(folder, "parts.csv")} was not written. Free some space, or name a place on another disk.",
                "there before: mine, mine",
                "left over: none",
                "with room again: stored",
                "export with room again: stored",
                "list with room again: stored",
                "troubles: none",
            ],
            said);
    }

    /// <summary>The program on the small disk.</summary>
    public static int Fill(string folder)
    {
        var path = Path.Combine(folder, "shop.db");
        var ballast = Path.Combine(folder, "ballast");
        var (zip, list) = (Path.Combine(folder, "shop.zip"), Path.Combine(folder, "parts.csv"));
        foreach (var earlier in (string[])[zip, list]) File.WriteAllText(earlier, "mine");
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
        TakeAllThatIsLeft(Path.Combine(folder, "rest"));
        Console.WriteLine("export: " + Trouble(() => shop.Export(zip, overwrite: true)));
        Console.WriteLine("list: " + Trouble(() => WriteParts(shop, list)));
        Console.WriteLine("there before: " + Listed(((string[])[zip, list]).Select(File.ReadAllText)));
        Console.WriteLine("left over: " + Listed(Directory.GetFiles(folder, "*.tmp", SearchOption.AllDirectories)));

        foreach (var taken in (string[])[ballast, Path.Combine(folder, "rest")]) File.Delete(taken);
        Console.WriteLine("with room again: " + Trouble(() => shop.Add(new Vehicle { Name = "Brindle" })));
        Console.WriteLine("export with room again: " + Trouble(() => shop.Export(zip, overwrite: true)));
        Console.WriteLine("list with room again: " + Trouble(() => WriteParts(shop, list)));
        Console.WriteLine("troubles: " + Listed(RecordCheck.Of(path).Troubles()));
        return 0;
    }

    // As the command does.
    private static void WriteParts(Shop shop, string path)
    {
        using var text = new StringWriter();
        shop.WriteList(ListOf.Parts, text);
        WholeFile.At(path, overwrite: true, "parts.csv").Write(text.ToString(), Encoding.UTF8);
    }

    private static void TakeAllThatIsLeft(string path)
    {
        using var file = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        foreach (var size in (int[])[4096, 512, 1])
        {
            try
            {
                while (true) file.Write(new byte[size]);
            }
            catch (IOException)
            {
                // It is full to the last piece of this size.
            }
        }
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
