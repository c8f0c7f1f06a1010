using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Notes;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- record 1000000</c>: the record's hot paths beside the same by hand, turn by turn in one run, so that a busy machine slows both.</summary>
internal static class RecordRun
{
    private const int Rounds = 60;
    private const int WarmUp = 10;

    public static int Of(int fitments)
    {
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
        return 0;
    }

    private static void Compare(string what, Action<int> record, Action<int> byHand)
    {
        var (ours, theirs) = (new List<double>(), new List<double>());
        for (var k = 0; k < Rounds + WarmUp; k++)
        {
            // One after the other on the same vehicle; who goes first finds colder pages, so they take turns.
            var (first, second) = k % 2 == 0 ? (record, byHand) : (byHand, record);
            var vehicle = k;
            var (a, b) = (Timing.Milliseconds(() => first(vehicle)), Timing.Milliseconds(() => second(vehicle)));
            if (k < WarmUp) continue;

            ours.Add(k % 2 == 0 ? a : b);
            theirs.Add(k % 2 == 0 ? b : a);
        }

        double mine = Timing.Median(ours), raw = Timing.Median(theirs);
        Console.WriteLine(FormattableString.Invariant($"{what,-22} {mine,8:0.00} ms   by hand {raw,8:0.00} ms   {mine / raw:0.0} times"));
    }
}
