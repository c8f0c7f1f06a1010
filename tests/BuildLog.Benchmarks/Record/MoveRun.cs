using BuildLog.Data.Files;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- moves 1000,100000</c>: the whole record written out, taken in, copied and searched, beside the same rows moved by hand, turn by turn in one run.</summary>
internal sealed class MoveRun
{
    private const int Rounds = 3;
    private const int Large = 50_000;

    private readonly List<(string What, int Rows, double Record, double ByHand)> medians = [];

    public static int Of(IReadOnlyList<int> sizes)
    {
        var run = new MoveRun();
        foreach (var size in sizes) run.Measure(size);
        foreach (var what in run.medians.GroupBy(each => each.What).Where(each => each.Count() > 1))
        {
            var (least, most) = (what.First(), what.Last());
            var decades = Math.Log((double)most.Rows / least.Rows);
            Console.WriteLine(FormattableString.Invariant($"{what.Key,-24} grows as rows^{Math.Log(most.Record / least.Record) / decades:0.00}, by hand ^{Math.Log(most.ByHand / least.ByHand) / decades:0.00}"));
        }

        return 0;
    }

    private void Measure(int fitments)
    {
        using var bulk = new BulkRecord(fitments);
        Console.WriteLine(FormattableString.Invariant($"{fitments:N0} fitments, as many parts and readings; load {Load()}"));
        using var shop = ShopFile.Open(bulk.Path);
        using var connection = bulk.Open();
        var raw = new RawRecord(connection);
        var (zip, byHand) = (bulk.Beside("all.zip"), bulk.Beside("by-hand.zip"));
        var vehicles = shop.Vehicles();

        Compare("search", fitments, _ => shop.Find("dolorem ut"), _ => raw.Search("dolorem AND ut*"), 20);
        Compare("export of a vehicle", fitments, k => shop.Export(zip, vehicles[k % vehicles.Count], overwrite: true), k => raw.WithMeasurements(vehicles[k % vehicles.Count].Id), 5);
        Compare("backup", fitments, _ => Backup.To(bulk.Path, bulk.Beside("copy.db"), overwrite: true), _ => RawRecord.CopyFile(connection, bulk.Beside("copy.raw")));
        Compare("export of everything", fitments, _ => shop.Export(zip, overwrite: true), _ => raw.WriteOut(byHand));
        Compare("import of everything", fitments, k => TakeIn(bulk, zip, k), k => raw.CopyInto(EmptyRecord(bulk, $"raw{k}.db")));
        Console.WriteLine(FormattableString.Invariant($"    {new FileInfo(zip).Length / 1024.0 / 1024:0.0} MiB of export; this program's memory at its most {System.Diagnostics.Process.GetCurrentProcess().PeakWorkingSet64 / 1048576} MiB; load {Load()}"));
    }

    private static void TakeIn(BulkRecord bulk, string zip, int round)
    {
        using var there = ShopFile.Open(EmptyRecord(bulk, $"there{round}.db"));
        there.Import(zip);
    }

    private static string EmptyRecord(BulkRecord bulk, string name)
    {
        var path = bulk.Beside(name);
        ShopFile.Open(path).Dispose();
        return path;
    }

    private void Compare(string what, int rows, Action<int> record, Action<int> byHand, int rounds = Rounds)
    {
        // What takes minutes is done once.
        var count = rows > Large && rounds == Rounds ? 1 : rounds;
        var (ours, theirs) = (new List<double>(), new List<double>());
        for (var k = 0; k < count; k++)
        {
            var round = k;
            if (k % 2 == 1) theirs.Add(Timing.Milliseconds(() => byHand(round)));
            ours.Add(Timing.Milliseconds(() => record(round)));
            if (k % 2 == 0) theirs.Add(Timing.Milliseconds(() => byHand(round)));
        }

        double mine = Timing.Median(ours), raw = Timing.Median(theirs);
        medians.Add((what, rows, mine, raw));
        Console.WriteLine(FormattableString.Invariant($"{what,-24} {mine,10:0.0} ms   by hand {raw,10:0.0} ms   {mine / raw:0.0} times   {count} rounds"));
    }

    private static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "not known";
}
