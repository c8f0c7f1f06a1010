using BuildLog.Data.Files;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- find 100000</c>: what each key costs while words are typed into the search of so many notes.</summary>
internal static class FindRun
{
    private const int Fitments = 1000;
    private const int Rounds = 7;

    // From the words the notes are made of; every beginning of each line is a key pressed.
    private static readonly string[] Typed = ["et", "qui voluptas", "a", "s", "dolorem ut", "e d q", "accusantium et quia", "project 1", "zzz"];

    public static int Of(int notes)
    {
        using var bulk = new BulkRecord(Fitments, notes);
        using var shop = ShopFile.Open(bulk.Path);
        Console.WriteLine(FormattableString.Invariant($"{notes:N0} notes, {new FileInfo(bulk.Path).Length / 1048576} MiB; each beginning {Rounds} times"));
        _ = shop.Find("warm");
        var keys = Typed.SelectMany(line => Enumerable.Range(1, line.Length).Select(length => line[..length])).Distinct()
            .Select(beginning => (Beginning: beginning, Times: Enumerable.Range(0, Rounds).Select(_ => Timing.Milliseconds(() => shop.Find(beginning))).Order().ToList())).ToList();
        var all = keys.SelectMany(key => key.Times).Order().ToList();
        Console.WriteLine(FormattableString.Invariant($"{keys.Count} beginnings: median {all[all.Count / 2]:0.0} ms, 95 % below {all[all.Count * 95 / 100]:0.0} ms, slowest single {all[^1]:0.0} ms"));
        foreach (var (beginning, times) in keys.OrderByDescending(key => key.Times[Rounds / 2]).Take(5))
            Console.WriteLine(FormattableString.Invariant($"  {"'" + beginning + "'",-22} median {times[Rounds / 2],6:0.0} ms   slowest {times[^1],6:0.0} ms   {shop.Find(beginning).Count} shown"));
        return 0;
    }
}
