using BuildLog.Data;
using BuildLog.Data.Changes;
using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Notes;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Ratios;
using Microsoft.Data.Sqlite;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- record 1000,100000,1000000</c>: the record's hot paths beside the same by hand, turn by turn in one run, so that a busy machine slows both.</summary>
internal sealed class RecordRun
{
    private const int Rounds = 60;
    private const int Few = 15;
    private const int WarmUp = 10;

    // Medians by what was measured, of each size in turn.
    private readonly Dictionary<string, List<(int Rows, double Record, double ByHand)>> medians = [];

    private int rows;

    public static int Of(IReadOnlyList<int> sizes)
    {
        var run = new RecordRun();
        foreach (var size in sizes) run.Measure(size);
        foreach (var (what, times) in run.medians.Where(each => each.Value.Count > 1))
        {
            var (least, most) = (times[0], times[^1]);
            var decades = Math.Log((double)most.Rows / least.Rows);
            Console.WriteLine(FormattableString.Invariant($"{what,-22} grows as rows^{Math.Log(most.Record / least.Record) / decades:0.00}, by hand ^{Math.Log(most.ByHand / least.ByHand) / decades:0.00}"));
        }

        return 0;
    }

    private void Measure(int fitments)
    {
        rows = fitments;
        using var bulk = new BulkRecord(fitments);
        Console.WriteLine(FormattableString.Invariant($"{fitments:N0} fitments and as many readings, {new FileInfo(bulk.Path).Length / 1048576} MiB; {Rounds} rounds, medians"));
        using var shop = ShopFile.Open(bulk.Path);
        using var connection = bulk.Open();
        var raw = new RawRecord(connection);
        var vehicles = shop.Vehicles();
        var day = new DateOnly(2014, 6, 15);

        Compare("driveline on a day", k => shop.DrivelineOn(vehicles[k % vehicles.Count], day), k => raw.OnADay(vehicles[k % vehicles.Count].Id, day));
        Compare("timeline page", k => shop.Fitments(vehicles[k % vehicles.Count]), k => raw.Page(vehicles[k % vehicles.Count].Id));
        Compare(
            "one logged insert",
            k => shop.Add(new Note(vehicles[k % vehicles.Count]) { Date = new(2026, 5, 3), Title = "pinion seal", Body = "weeps a little when warm" }),
            k => raw.Note(vehicles[k % vehicles.Count].Uid, "pinion seal", "weeps a little when warm"));
        var axles = vehicles.Take(Rounds + WarmUp).Select(vehicle => (AxleComponent)shop.Fitments(vehicle)[^1].Component).ToList();
        Compare(
            "a count of 3 readings",
            k => shop.Add(new TurnCountSession(axles[k % axles.Count], vehicles[k % axles.Count]) { Date = new(2026, 5, 3), Wheels = Wheels.OneHeld, Readings = ["10:20.5", "10:20.5", "10:20.5"] }),
            k => raw.Count(vehicles[k % axles.Count].Id, axles[k % axles.Count].Id));
        Compare("swap effects", k => shop.History(vehicles[k % vehicles.Count]), k => raw.WithMeasurements(vehicles[k % vehicles.Count].Id), Few);
        ChangeSet? added = null;
        Compare(
            "undo of an insert",
            _ => shop.Undo(added!),
            _ => raw.TakeBackLatest(),
            prepare: k =>
            {
                var vehicle = vehicles[k % vehicles.Count];
                shop.Add(new Note(vehicle) { Date = new(2026, 5, 3), Title = "pinion seal", Body = "weeps a little when warm" });
                added = shop.Changes(most: 1)[0];
                raw.Note(vehicle.Uid, "pinion seal", "weeps a little when warm");
            });
        MoveAndCopy(bulk, shop, vehicles, raw, connection);
    }

    // By hand: the rows of one vehicle, or the whole file, and nothing that says what they are.
    private void MoveAndCopy(BulkRecord bulk, Shop shop, IReadOnlyList<Vehicle> vehicles, RawRecord raw, SqliteConnection connection)
    {
        var (zip, copy) = (bulk.Beside("one.zip"), bulk.Beside("copy.db"));
        Compare("export of a vehicle", k => shop.Export(zip, vehicles[k % vehicles.Count], overwrite: true), k => raw.WithMeasurements(vehicles[k % vehicles.Count].Id), Few);
        using (var other = ShopFile.Open(bulk.Beside("other.db")))
        {
            Compare(
                "import of a vehicle",
                _ => other.Import(zip),
                k => raw.CopyRowsOf(vehicles[k % vehicles.Count].Id),
                Few,
                prepare: k => shop.Export(zip, vehicles[k % vehicles.Count], overwrite: true));
        }

        Compare(
            "backup",
            _ => Backup.To(bulk.Path, copy, overwrite: true),
            _ => RawRecord.CopyFile(connection, copy + ".raw"),
            Few);
    }

    private void Compare(string what, Action<int> record, Action<int> byHand, int rounds = Rounds, Action<int>? prepare = null)
    {
        var (ours, theirs) = (new List<double>(), new List<double>());
        for (var k = 0; k < rounds + WarmUp; k++)
        {
            prepare?.Invoke(k);

            // One after the other on the same vehicle; who goes first finds colder pages, so they take turns.
            var (first, second) = k % 2 == 0 ? (record, byHand) : (byHand, record);
            var vehicle = k;
            var (a, b) = (Timing.Milliseconds(() => first(vehicle)), Timing.Milliseconds(() => second(vehicle)));
            if (k < WarmUp) continue;

            ours.Add(k % 2 == 0 ? a : b);
            theirs.Add(k % 2 == 0 ? b : a);
        }

        double mine = Timing.Median(ours), raw = Timing.Median(theirs);
        if (!medians.TryGetValue(what, out var sizes)) medians[what] = sizes = [];
        sizes.Add((rows, mine, raw));
        Console.WriteLine(FormattableString.Invariant($"{what,-22} {mine,8:0.00} ms   by hand {raw,8:0.00} ms   {mine / raw:0.0} times"));
    }
}
