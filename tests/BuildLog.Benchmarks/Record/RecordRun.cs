using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Notes;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Ratios;
using Microsoft.Data.Sqlite;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- record 1000 100000</c>: what the record does beside the same by hand, turn by turn in one run, so that a busy machine slows both; and how it grows.</summary>
internal static class RecordRun
{
    private const int Moves = 3;
    private const string Title = "pinion seal";
    private const string Body = "weeps a little when warm";
    private static readonly DateOnly Day = new(2014, 6, 15);
    private static readonly DateOnly Noted = new(2026, 5, 3);

    /// <param name="sizes">Fitments of each file, smallest first.</param>
    public static int Of(IReadOnlyList<int> sizes)
    {
        var measured = sizes.Select(size => (Size: size, Times: Measure(size))).ToList();
        foreach (var (small, large) in measured.Zip(measured.Skip(1)))
        {
            Console.WriteLine(FormattableString.Invariant($"growth from {small.Size:N0} to {large.Size:N0}, time ~ rows ^ exponent"));
            foreach (var ((what, before), (_, after)) in small.Times.Zip(large.Times))
                Console.WriteLine(FormattableString.Invariant($"{what,-24} {Math.Log(after / before) / Math.Log((double)large.Size / small.Size):0.00}"));
        }

        return 0;
    }

    private static List<(string What, double Time)> Measure(int fitments)
    {
        using var bulk = new BulkRecord(fitments);
        Console.WriteLine(FormattableString.Invariant($"{fitments:N0} fitments and as many readings, {new FileInfo(bulk.Path).Length / 1048576} MiB; medians"));
        using var shop = ShopFile.Open(bulk.Path);
        using var connection = bulk.Open();
        var times = new List<(string, double)>();
        foreach (var path in Paths(bulk, shop, connection))
        {
            var (ours, raw) = path.Measure();
            Console.WriteLine(FormattableString.Invariant($"{path.What,-24} {ours,10:0.00} ms   by hand {raw,10:0.00} ms   {ours / raw:0.0} times"));
            times.Add((path.What, ours));
        }

        return times;
    }

    private static List<HotPath> Paths(BulkRecord bulk, Shop shop, SqliteConnection connection)
    {
        var raw = new RawRecord(connection);
        var vehicles = shop.Vehicles();
        Vehicle Of(int round) => vehicles[round % vehicles.Count];
        var axles = vehicles.Take(20).Select(vehicle => (AxleComponent)shop.Fitments(vehicle)[^1].Component).ToList();
        return
        [
            new("driveline on a day", k => shop.DrivelineOn(Of(k), Day), k => raw.OnADay(Of(k).Id, Day)),
            new("timeline page", k => shop.Fitments(Of(k)), k => raw.Page(Of(k).Id)),
            new("effects of 100 swaps", k => shop.History(Of(k)), k => raw.Life(Of(k).Id), 20),
            new("search, a common word", _ => shop.Find("dolorem "), _ => raw.Find("dolorem"), 20),
            new("one logged insert", k => shop.Add(SealNote(Of(k))), k => raw.Note(Of(k).Uid, Title, Body)),
            new(
                "a count of 3 readings",
                k => shop.Add(new TurnCountSession(axles[k % axles.Count], Of(k % axles.Count)) { Date = Noted, Wheels = Wheels.OneHeld, Readings = ["10:20.5", "10:20.5", "10:20.5"] }),
                k => raw.Count(Of(k % axles.Count).Id, axles[k % axles.Count].Id)),
            new(
                "insert, undo, redo",
                k =>
                {
                    shop.Add(SealNote(Of(k)));
                    shop.Undo();
                    shop.Redo();
                },
                k =>
                {
                    raw.Note(Of(k).Uid, Title, Body);
                    raw.TakeBack();
                    raw.Note(Of(k).Uid, Title, Body);
                },
                20),
            new("backup", _ => Backup.To(bulk.Path, bulk.Beside("copy.db"), overwrite: true), _ => CopyByHand(connection, bulk.Beside("by-hand.db")), Moves),
            new("export", _ => shop.Export(bulk.Beside("shop.zip"), overwrite: true), _ => RawMoves.Export(connection, bulk.Beside("by-hand.zip")), Moves),
            new("import", k => InNewRecord(bulk, k, (file, _) => Import(file, bulk.Beside("shop.zip"))), k => InNewRecord(bulk, k, (_, into) => RawMoves.Import(bulk.Beside("by-hand.zip"), into())), Moves),
        ];
    }

    private static void Import(string record, string from)
    {
        using var shop = ShopFile.Open(record);
        shop.Import(from);
    }

    private static void CopyByHand(SqliteConnection from, string to)
    {
        File.Delete(to);
        using var copy = new SqliteConnection($"Data Source={to};Pooling=False");
        copy.Open();
        from.BackupDatabase(copy);
    }

    // An empty record made before the clock starts would need a step of its own; making one costs both alike.
    private static void InNewRecord(BulkRecord bulk, int round, Action<string, Func<SqliteConnection>> import)
    {
        var file = bulk.Beside(FormattableString.Invariant($"into-{round}-{Guid.NewGuid():N}.db"));
        ShopFile.Open(file).Dispose();
        SqliteConnection? opened = null;
        import(file, () =>
        {
            opened = new SqliteConnection($"Data Source={file};Foreign Keys=False;Pooling=False");
            opened.Open();
            return opened;
        });
        opened?.Dispose();
        File.Delete(file);
    }

    private static Note SealNote(Vehicle about) => new(about) { Date = Noted, Title = Title, Body = Body };
}
