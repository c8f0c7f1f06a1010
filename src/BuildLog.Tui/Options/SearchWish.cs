using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Options;

/// <summary>Where the parts of a search may come from, and which parts may change. It lasts as long as the program.</summary>
public sealed class SearchWish
{
    /// <summary>What there is to search, in the order of the driveline; the rear axle stands for the one that drives the vehicle.</summary>
    public static readonly IReadOnlyList<Position> Searched = [Position.Transmission, Position.Overdrive, Position.RearAxle, Position.Tyres];

    /// <summary>Where parts come from unless somebody says otherwise: no other vehicle is taken apart without being asked for.</summary>
    public static readonly IReadOnlyList<Pool> Usual = [Pool.Owned, Pool.Offered, Pool.Listed];

    public IReadOnlySet<Pool> Pools { get; internal set; } = Usual.ToHashSet();

    public IReadOnlySet<Position> Changing { get; internal set; } = Searched.ToHashSet();

    /// <summary>Parts of the shop that have to be inspected or mended first are tried too, and put last.</summary>
    public bool TriesDoubtful { get; internal set; } = true;

    /// <summary>Parts of the shop are among what is searched.</summary>
    public bool AsksTheRecord => Pools.Contains(Pool.Owned) || Pools.Contains(Pool.Elsewhere);

    /// <summary><c>Searched: what is owned or listed, for gearbox, axle or tyres.</c></summary>
    public string InWords => Spoken($"Searched: what is {PoolsInWords}, for {ChangingInWords}{(TriesDoubtful ? "" : Spoken(", without what has to be inspected first"))}.");

    /// <summary><c>owned or listed</c>.</summary>
    public string PoolsInWords => Either(Pools.Order().Select(PoolWords.InWords));

    /// <summary><c>gearbox, axle or tyres</c>.</summary>
    public string ChangingInWords => Either(Searched.Where(Changing.Contains).Select(PositionWords.InWords));

    /// <summary>Which places of a driveline these are.</summary>
    public IReadOnlySet<Position> On(Driveline driveline)
        => Changing.Select(position => position == Position.RearAxle ? driveline.DrivingPosition : position).ToHashSet();

    private static string Either(IEnumerable<string> words)
        => words.ToList() is [.. { Count: > 0 } first, var last] ? Spoken($"{string.Join(", ", first)} or {last}") : string.Concat(words);
}
