using System.Globalization;
using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Fitments;
using BuildLog.Data.Lists;
using BuildLog.Data.Notes;
using BuildLog.Endurance.CutOff;
using BuildLog.Gearing.Drivelines;

namespace BuildLog.Endurance.Disk;

/// <summary>Goes through an afternoon's work again and again, with one page of the disk more each time, until it fits: so each write that takes a page has met a full disk.</summary>
internal sealed class FullDisk : IOrdeal
{
    public const string Word = "work-on-a-full-disk";

    private const int PageSize = 4096;

    public string Name => "disk full";

    /// <param name="rounds">Of at most this many sizes; fewer go through the sizes in larger steps.</param>
    public Survival Run(int rounds)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-full-").FullName;
        try
        {
            var step = Math.Max(1, 600 / rounds);
            var (code, said) = Command.Run(
                "unshare", "--user", "--map-root-user", "--mount", "sh", "-c", "mount -t tmpfs -o size=16m tmpfs \"$1\" && exec dotnet exec \"$2\" \"$3\" \"$1\" \"$4\"", "sh",
                folder, typeof(FullDisk).Assembly.Location, Word, step.ToString(CultureInfo.InvariantCulture));
            var lines = said.Split('\n');
            if (code != 0 && !lines[0].StartsWith("size", StringComparison.Ordinal)) return Survival.NotHere($"nobody may mount a small disk: {said}");

            var refused = lines.Count(line => line.StartsWith("size", StringComparison.Ordinal));
            var troubles = lines.Where(line => line.StartsWith("trouble", StringComparison.Ordinal)).ToList();
            if (code != 0) troubles.Add(said[^Math.Min(said.Length, 500)..]);
            return new(refused, troubles, lines[^1]);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>The other program, on its small disk.</summary>
    public static int Fill(string disk, int step)
    {
        var photo = Path.Combine(Directory.CreateTempSubdirectory("buildlog-photo-").FullName, "pinion.jpg");
        File.WriteAllBytes(photo, [.. Enumerable.Range(0, 30_000).Select(k => (byte)(k * 31))]);
        var refused = 0;
        for (var pages = 0; ; pages += step)
        {
            var folder = Directory.CreateDirectory(Path.Combine(disk, "shop")).FullName;
            Records.Empty.LayIn(folder);
            var path = Records.In(folder);
            using (var shop = ShopFile.Open(path))
            {
                var ballast = Path.Combine(disk, "ballast");
                LeaveFree(ballast, pages);
                var work = new Afternoon(shop, photo);
                var troubles = work.Try().ToList();
                File.Delete(ballast);
                refused += troubles.Count;
                foreach (var trouble in troubles) Console.WriteLine(FormattableString.Invariant($"size {pages}: {trouble}"));
                foreach (var trouble in work.NotAsSaid()) Console.WriteLine(FormattableString.Invariant($"trouble with {pages} pages: {trouble}"));

                // With room again everything goes.
                foreach (var trouble in new Afternoon(shop, photo).Try()) Console.WriteLine(FormattableString.Invariant($"trouble with {pages} pages, room again: {trouble}"));
                if (troubles.Count == 0) break;
            }

            foreach (var trouble in RecordCheck.Of(path).Troubles()) Console.WriteLine(FormattableString.Invariant($"trouble with {pages} pages: {trouble}"));
            foreach (var left in Directory.EnumerateFiles(folder, "*.tmp", SearchOption.AllDirectories)) Console.WriteLine(FormattableString.Invariant($"trouble with {pages} pages: {left} is left over"));
            Directory.Delete(folder, recursive: true);
        }

        Console.WriteLine(FormattableString.Invariant($"{refused} steps refused in a sentence before all of them went through"));
        return 0;
    }

    private static void LeaveFree(string ballast, int pages)
    {
        using var file = new FileStream(ballast, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        try
        {
            while (true) file.Write(new byte[PageSize]);
        }
        catch (IOException)
        {
            file.SetLength(Math.Max(0, file.Length - (pages * (long)PageSize)));
        }
    }

    /// <summary>What somebody does one afternoon, and what of it he was told is stored.</summary>
    private sealed class Afternoon(Shop shop, string photo)
    {
        private readonly List<Note> notes = [];
        private readonly string name = "axle " + Guid.CreateVersion7().ToString("N");
        private Fitment? fitted;

        private string Beside(string file) => Path.Combine(Path.GetDirectoryName(shop.Path)!, file);

        /// <summary>The sentences of the steps that could not be done; anything but a sentence ends the program.</summary>
        public IEnumerable<string> Try()
        {
            Action[] steps =
            [
                () => Add("weeps a little when warm"),
                () => Add(new string('n', 20_000)),
                () => fitted = shop.Fit(new AxleComponent { Name = name }, shop.FindVehicle(Records.Vehicle), Position.RearAxle, new DateOnly(2026, 5, 3).AddDays(shop.Fitments(shop.FindVehicle(Records.Vehicle)).Count)),
                () => shop.Change(shop.FindVehicle(Records.Vehicle), vehicle => vehicle.Owner = name),
                () => shop.Attach(shop.FindVehicle(Records.Vehicle), photo),
                () => shop.Undo(),
                () => shop.Redo(),
                () => shop.Export(Beside("shop.zip"), overwrite: true),
                () => WriteList(),
                () => Backup.To(shop.Path, Beside("copy.db"), overwrite: true),
                () => Backup.OfTheDay(shop.Path, new(2026, 5, 3)),
            ];
            foreach (var step in steps)
            {
                if (Said(step) is { } sentence) yield return sentence;
            }
        }

        /// <summary>What was said to be stored and is not there.</summary>
        public IEnumerable<string> NotAsSaid()
        {
            foreach (var note in notes)
            {
                if (shop.NotesOf(shop.FindVehicle(Records.Vehicle)).All(each => each.Uid != note.Uid)) yield return "a note is lost";
            }

            if (fitted is not null && shop.Fitments(shop.FindVehicle(Records.Vehicle)).All(each => each.Component.Name != name)) yield return "a fitment is lost";
            if (File.Exists(Beside("copy.db")) && RecordCheck.Of(Beside("copy.db")).Damage.Count > 0) yield return "the copy is damaged";
        }

        private void Add(string body) => notes.Add(shop.Add(new Note(shop.FindVehicle(Records.Vehicle)) { Date = new(2026, 5, 3), Title = "seal", Body = body }));

        private void WriteList()
        {
            using var text = new StringWriter();
            shop.WriteList(ListOf.Parts, text);
            WholeFile.At(Beside("parts.csv"), overwrite: true, "parts.csv").Write(text.ToString(), System.Text.Encoding.UTF8);
        }

        // An undo that has nothing to take back has met no full disk of its own.
        private static string? Said(Action step)
        {
            try
            {
                step();
                return null;
            }
            catch (RecordException full) when (full.Fault == Fault.DiskFull)
            {
                return full.Message;
            }
            catch (Gearing.Quantities.RefusedException nothing) when (nothing.Message.Contains("nothing", StringComparison.OrdinalIgnoreCase))
            {
                return null;
            }
        }
    }
}
