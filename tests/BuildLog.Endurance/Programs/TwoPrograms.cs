using System.Diagnostics;
using System.Globalization;
using BuildLog.Data.Files;
using BuildLog.Data.Notes;
using BuildLog.Endurance.CutOff;

namespace BuildLog.Endurance.Programs;

/// <summary>Two programs write to one record as fast as they can, notes of their own and the same field in turn, while this one reads and copies it.</summary>
internal sealed class TwoPrograms : IOrdeal
{
    public const string Word = "write-beside-another";

    private const int TurnsAtTheSame = 5;

    public string Name => "two programs";

    public Survival Run(int rounds)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-two-").FullName;
        Records.Empty.LayIn(folder);
        var path = Records.In(folder);
        using var left = Start(path, "left", rounds);
        using var right = Start(path, "right", rounds);
        var (leftSaid, rightSaid) = (left.StandardOutput.ReadToEndAsync(), right.StandardOutput.ReadToEndAsync());
        var (troubles, looked) = (new List<string>(), 0);
        using (var shop = ShopFile.Open(path))
        {
            while (!left.HasExited || !right.HasExited)
            {
                looked++;
                _ = shop.NotesOf(shop.FindVehicle(Records.Vehicle));
                Backup.To(path, Path.Combine(folder, "copy.db"), overwrite: true);
                if (!RecordCheck.Of(Path.Combine(folder, "copy.db")).IsSound) troubles.Add("a copy made meanwhile is not sound");
            }

            var said = (leftSaid.Result + rightSaid.Result).Split('\n', StringSplitOptions.RemoveEmptyEntries);
            if (left.ExitCode != 0 || right.ExitCode != 0) troubles.Add($"they ended with {left.ExitCode} and {right.ExitCode}");
            var there = shop.NotesOf(shop.FindVehicle(Records.Vehicle)).Select(note => note.Title).ToHashSet(StringComparer.Ordinal);
            troubles.AddRange(said.Where(title => title.StartsWith("note", StringComparison.Ordinal) && !there.Contains(title)).Select(title => $"{title} is lost"));

            // Each owner that was written was read, changed and stored: one entry in the log for each.
            var owners = said.Count(line => line.StartsWith("owner", StringComparison.Ordinal));
            var written = shop.FindVehicle(Records.Vehicle).Uid;
            var logged = shop.Changes(most: int.MaxValue).Count(change => change.Rows.Any(row => row.RecordUid == written)) - 1;
            if (owners != logged) troubles.Add(FormattableString.Invariant($"{owners} changes of the owner were stored, {logged} are in the log"));
            var waited = said.Count(line => line is "waited" or "changed since");
            troubles.AddRange(RecordCheck.Of(path).Troubles());
            shop.Dispose();
            Directory.Delete(folder, recursive: true);
            return new(rounds * 2, troubles, FormattableString.Invariant($"changes; {waited} met the other's and were tried again, {looked} copies were made meanwhile"));
        }
    }

    /// <summary>The other program.</summary>
    public static int Write(string path, string name, int count)
    {
        using var shop = ShopFile.Open(path);
        for (var k = 1; k <= count; k++)
        {
            var turn = string.Create(CultureInfo.InvariantCulture, $"{name} {k}");
            if (k % TurnsAtTheSame == 0) Stubbornly(() => "owner " + shop.Change(shop.FindVehicle(Records.Vehicle), vehicle => vehicle.Owner = turn).Owner);
            else Stubbornly(() => shop.Add(new Note(shop.FindVehicle(Records.Vehicle)) { Date = new(2026, 5, 3), Title = "note " + turn, Body = "weeps" }).Title);
        }

        return 0;
    }

    private static Process Start(string path, string name, int count)
        => Process.Start(new ProcessStartInfo("dotnet", ["exec", typeof(TwoPrograms).Assembly.Location, Word, path, name, count.ToString(CultureInfo.InvariantCulture)]) { RedirectStandardOutput = true })!;

    // Whoever is told that another writes, or that another has changed it since, tries again.
    private static void Stubbornly(Func<string> write)
    {
        while (true)
        {
            try
            {
                Console.Out.WriteLine(write());
                return;
            }
            catch (RecordException other) when (other.Fault is Fault.Busy or Fault.ChangedSince)
            {
                Console.Out.WriteLine(other.Fault == Fault.Busy ? "waited" : "changed since");
            }
        }
    }
}
