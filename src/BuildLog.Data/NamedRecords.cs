using BuildLog.Data.Changes;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data;

/// <summary>Finds what somebody means by a name, whatever kind of thing it is.</summary>
internal static class NamedRecords
{
    private const int MostNamed = 8;

    /// <summary>What people call by a name of its own.</summary>
    private static readonly Matter[] Named =
        [Matter.Vehicle, Matter.Component, Matter.Job, Matter.Donor, Matter.DonorPiece, Matter.Supplier, Matter.WantedPart, Matter.Offer, Matter.Plan, Matter.Decision, Matter.Deadline, Matter.Cost];

    /// <summary>The name itself, its beginning if no other begins so, either of them after the kind as in <c>job rear brake lines</c>, or an identifier.</summary>
    /// <exception cref="RefusedException">None or several.</exception>
    public static Kept Find(ShopContext db, string typed)
    {
        var wanted = typed.Trim();
        var all = Named.SelectMany(matter => Everything.Of(db, Matters.TypeOf(matter)).AsEnumerable()).Select(record => (Record: record, Name: RecordWords.Title(record))).Where(each => each.Name.Length > 0).ToList();
        if (Guid.TryParse(wanted, out var uid) && all.Find(each => each.Record.Uid == uid).Record is { } known) return known;

        var exact = all.Where(each => Is(each, wanted, whole: true)).ToList();
        var found = exact.Count > 0 || wanted.Length == 0 ? exact : all.Where(each => Is(each, wanted, whole: false)).ToList();
        return found.Count switch
        {
            1 => found[0].Record,
            0 => throw Refused(Spoken($"Nothing in the record is called {Shown.Quoted(typed)} or begins so: name a vehicle, a part, a job, a donor, a supplier or a hunt."), "Brindle"),
            _ => throw Refused(Spoken($"{Shown.Quoted(typed)} could be {Listed(found)}: write more of it, or its kind before it."), InWords(found[0])),
        };
    }

    private static bool Is((Kept Record, string Name) each, string wanted, bool whole)
        => ((string[])[each.Name, InWords(each), $"{Matters.Of(each.Record).InWords()} {each.Name}"]).Any(name => whole ? name.Equals(wanted, StringComparison.OrdinalIgnoreCase) : name.StartsWith(wanted, StringComparison.OrdinalIgnoreCase));

    private static string InWords((Kept Record, string Name) each) => NamedPart.InWords(each.Record.KindInWords, each.Name);

    private static string Listed(IReadOnlyList<(Kept Record, string Name)> found)
    {
        var shown = found.Take(MostNamed).Select(InWords).ToList();
        if (found.Count > MostNamed) shown.Add(Spoken($"{found.Count - MostNamed} more"));
        return Spoken($"{string.Join(", ", shown.SkipLast(1))} and {shown[^1]}");
    }

    private static RefusedException Refused(string sentence, string example) => new("about", sentence, example);
}
