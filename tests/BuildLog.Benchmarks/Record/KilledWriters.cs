using System.Diagnostics;
using System.Globalization;
using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.Data.Notes;
using BuildLog.Data.Vehicles;
using Microsoft.Data.Sqlite;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- kills 2000</c>: a writer killed at a moment of no one's choice as often as asked; every change it said was stored has to be there, and whole.</summary>
/// <remarks>
/// A round has to be cheap. Most writers store by hand what the shop would, as the object mapper takes longer to load than a round lasts; every twentieth goes
/// through the shop. The next one gets ready while the one before is killed and its file is looked through, and a file is used for a hundred rounds only.
/// </remarks>
internal static class KilledWriters
{
    public const string ThroughTheShop = "write-until-killed";
    public const string ByHand = "write-by-hand-until-killed";

    private const int RoundsOfAFile = 100;
    private const int RoundsOfTheShop = 20;

    private const string Halves =
        """
        SELECT count(*) FROM Notes n
        WHERE (SELECT count(*) FROM Changes WHERE RecordUid = n.Uid) <> 1 OR (SELECT count(*) FROM Findables WHERE RecordUid = n.Uid) <> 1
        """;

    /// <summary>Gets ready, waits to be told the file, then writes and says so until it is killed.</summary>
    public static int Write(string how, string warmUp)
    {
        using (var ready = new Writer(how, warmUp)) _ = ready.Store();
        Console.Out.WriteLine("ready");
        if (Console.In.ReadLine() is not { } path) return 0;

        using var writer = new Writer(how, path);
        while (true) Console.Out.WriteLine(writer.Store());
    }

    public static int Of(int rounds)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-kills-").FullName;
        var (warmUp, watch) = (NewRecord(Path.Combine(folder, "warm-up.db")), Stopwatch.StartNew());
        var moment = new Random(20_260_503);
        var (told, stored, lost, unsound) = (0, new List<string>(), 0, 0);
        var (path, next) = ("", Start(0, warmUp));
        for (var round = 0; round < rounds; round++)
        {
            if (round % RoundsOfAFile == 0) (path, stored) = (NewRecord(Path.Combine(folder, FormattableString.Invariant($"{round}.db"))), []);
            using var writer = next;
            next = Start(round + 1, warmUp);
            var said = RunAndKill(writer, path, moment);
            told += said.Count;
            stored.AddRange(said);
            var (titles, halves) = Found(path);
            lost += stored.Except(titles).Count();
            if (halves > 0 || !RecordCheck.Of(path).IsSound) unsound++;
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

    private static string NewRecord(string path)
    {
        using var shop = ShopFile.Open(path);
        shop.Add(new Vehicle { Name = "Brindle" });
        return path;
    }

    private static Process Start(int round, string warmUp)
        => Process.Start(new ProcessStartInfo("dotnet", ["exec", typeof(KilledWriters).Assembly.Location, round % RoundsOfTheShop == 0 ? ThroughTheShop : ByHand, warmUp])
        {
            RedirectStandardOutput = true,
            RedirectStandardInput = true,
        })!;

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

    // What the next program finds: the log that was left is read with the file.
    private static (HashSet<string> Titles, long Halves) Found(string path)
    {
        using var connection = Connect(path);
        using var titles = connection.CreateCommand();
        titles.CommandText = "SELECT Title FROM Notes";
        var found = new HashSet<string>(StringComparer.Ordinal);
        using (var row = titles.ExecuteReader())
        {
            while (row.Read()) found.Add(row.GetString(0));
        }

        using var halves = connection.CreateCommand();
        halves.CommandText = Halves;
        return (found, (long)halves.ExecuteScalar()!);
    }

    private static SqliteConnection Connect(string path)
    {
        var connection = new SqliteConnection($"Data Source={path};Foreign Keys=True;Pooling=False");
        connection.Open();
        return connection;
    }

    /// <summary>Stores one note after the other, and gives each a title of its own.</summary>
    private sealed class Writer : IDisposable
    {
        private readonly Shop? shop;
        private readonly Vehicle? about;
        private readonly SqliteConnection? connection;

        public Writer(string how, string path)
        {
            if (how == ByHand) connection = Connect(path);
            else about = (shop = ShopFile.Open(path)).FindVehicle("Brindle");
        }

        public string Store()
        {
            var title = Guid.CreateVersion7().ToString("N");
            if (connection is not null) new RawRecord(connection).Note(Guid.Empty, title, "weeps a little when warm");
            else shop!.Add(new Note(about!) { Date = new(2026, 5, 3), Title = title, Body = "weeps a little when warm" });
            return title;
        }

        public void Dispose()
        {
            connection?.Dispose();
            shop?.Dispose();
        }
    }
}
