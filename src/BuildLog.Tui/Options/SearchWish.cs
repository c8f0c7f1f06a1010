using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Options;

/// <summary>Where the parts of a search may come from, and which parts may change. It lasts as long as the program.</summary>
public sealed class SearchWish
{
    /// <summary>What there is to search, in the order of the driveline; the rear axle stands for the one that drives the vehicle.</summary>
    public static readonly IReadOnlyList<Position> Searched = [Position.Transmission, Position.Overdrive, Position.RearAxle, Position.Tyres];

    public IReadOnlySet<Pool> Pools { get; internal set; } = Enum.GetValues<Pool>().ToHashSet();

    public IReadOnlySet<Position> Changing { get; internal set; } = Searched.ToHashSet();

    /// <summary><c>Searched: what is owned or listed, for gearbox, axle or tyres.</c></summary>
    public string InWords => Spoken($"Searched: what is {PoolsInWords}, for {ChangingInWords}.");

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
