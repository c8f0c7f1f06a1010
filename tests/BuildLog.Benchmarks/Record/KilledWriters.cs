using System.Diagnostics;
using System.Globalization;
using BuildLog.Data.Files;
using BuildLog.Data.Vehicles;
using Microsoft.Data.Sqlite;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- kills 2000</c>: a writer through the shop, killed at a moment of no one's choice as often as asked; every change it said was stored has to be there.</summary>
/// <remarks>The next writer warms up while the one before is killed and its file is looked through, and a file is used for a hundred rounds only: a round has to be cheap.</remarks>
internal static class KilledWriters
{
    public const string Writing = "write-until-killed";

    private const int RoundsOfAFile = 100;

    /// <summary>Gets ready, waits to be told the file, then writes and says so until it is killed.</summary>
    public static int Write(string warmUp)
    {
        using (var shop = ShopFile.Open(warmUp)) shop.Add(new Vehicle { Name = Guid.CreateVersion7().ToString("N") });
        Console.Out.WriteLine("ready");
        if (Console.In.ReadLine() is not { } path) return 0;

        using var record = ShopFile.Open(path);
        while (true) Console.Out.WriteLine(record.Add(new Vehicle { Name = Guid.CreateVersion7().ToString("N") }).Name);
    }

    public static int Of(int rounds)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-kills-").FullName;
        var (warmUp, watch) = (Path.Combine(folder, "warm-up.db"), Stopwatch.StartNew());
        ShopFile.Open(warmUp).Dispose();
        var moment = new Random(20_260_503);
        var (told, stored, lost, unsound) = (0, new List<string>(), 0, 0);
        var (path, next) = ("", Start(warmUp));
        for (var round = 0; round < rounds; round++)
        {
            if (round % RoundsOfAFile == 0)
            {
                (path, stored) = (Path.Combine(folder, FormattableString.Invariant($"{round}.db")), []);
                ShopFile.Open(path).Dispose();
            }

            using var writer = next;
            next = Start(warmUp);
            var said = RunAndKill(writer, path, moment);
            told += said.Count;
            stored.AddRange(said);
            lost += stored.Except(Names(path)).Count();
            if (!RecordCheck.Of(path).IsSound) unsound++;
            if ((round + 1) % RoundsOfAFile == 0 || round + 1 == rounds)
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{round + 1} kills, {told} acknowledged changes, {lost} lost, {unsound} times unsound, {watch.Elapsed.TotalMinutes:0.0} minutes"));
        }

        next.Kill();
        next.WaitForExit();
        next.Dispose();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
        return lost + unsound == 0 ? 0 : 1;
    }

    private static Process Start(string warmUp)
        => Process.Start(new ProcessStartInfo("dotnet", ["exec", typeof(KilledWriters).Assembly.Location, Writing, warmUp]) { RedirectStandardOutput = true, RedirectStandardInput = true })!;

    private static List<string> RunAndKill(Process writer, string path, Random moment)
    {
        if (writer.StandardOutput.ReadLine() != "ready") throw new InvalidOperationException("The writer did not start.");
        writer.StandardInput.WriteLine(path);
        var said = Enumerable.Range(0, moment.Next(1, 30)).Select(_ => writer.StandardOutput.ReadLine()).OfType<string>().ToList();
        Thread.Sleep(TimeSpan.FromMilliseconds(2 * moment.NextDouble()));
        writer.Kill();

        // A last line that is cut off was never said.
        said.AddRange(writer.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line.Length == 32));
        writer.WaitForExit();
        return said;
    }

    // What a program that opens the file next finds: the log that was left is read with it.
    private static HashSet<string> Names(string path)
    {
        using var shop = ShopFile.Open(path);
        return [.. shop.Vehicles().Select(vehicle => vehicle.Name)];
    }
}
