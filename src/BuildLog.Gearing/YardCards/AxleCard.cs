using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.YardCards;

/// <summary>What to count on an axle in the breaker's yard, and between which counts it will do.</summary>
/// <remarks>
/// One wheel held: p = i w / 2; both turning alike: p = i w. The edges of yes and no leave room for what a chalk mark and an eye can read
/// (<see cref="CountEdges"/>). An axle with a hub reduction is counted at the wheel, so its count holds too; its teeth make the ratio only with the hubs.
/// </remarks>
/// <param name="Wanted">What the ratio has to be.</param>
/// <param name="Teeth">Tooth pairs that would do for certain: those that are sold under a name, then the others, the likeliest first.</param>
/// <param name="Hub">What the hubs of such an axle reduce further; one where there is nothing in them.</param>
/// <exception cref="RefusedException">Hubs whose ratio is not above zero.</exception>
public sealed record AxleCard(WindowOfPart Wanted, IReadOnlyList<Teeth> Teeth, double Hub)
{
    /// <summary>What the hubs reduce further; above zero.</summary>
    public double Hub { get; init => field = value.AboveZero(Spoken("A hub reduction"), "2.00"); } = Hub.AboveZero(Spoken("A hub reduction"), "2.00");

    /// <summary>Enough to tell, few enough to count by hand.</summary>
    public const int WheelTurns = 10;

    /// <summary>Where ten do not settle it.</summary>
    public const int MoreWheelTurns = 30;

    private const int MostPairs = 12;
    private const int MostDoubtful = 6;
    private static readonly CountPrecision How = new();

    /// <summary>Tooth pairs that could do, as far as the other parts are known, while there is room for them.</summary>
    public IReadOnlyList<Teeth> Perhaps { get; private init; } = [];

    /// <summary>More would do for certain than there is room for.</summary>
    public bool LeavesOut { get; private init; }

    /// <param name="wanted">The whole ratio, hubs included.</param>
    /// <param name="hub">The hub reduction of the axle looked for: an axle with one is changed for its like.</param>
    /// <exception cref="RefusedException">Two wishes exclude each other; the sentence says which, and by how much.</exception>
    public static AxleCard Of(WindowOfPart wanted, double hub = 1)
    {
        if (wanted.Contradiction is { } says) throw new RefusedException("window", Spoken($"No axle can do: {says}"), "");

        // Teeth are exact, and would do a little beyond what a written ratio does: they stand here where the ratio they are sold by lies in the window as the card prints it.
        Window Differential(Window whole) => new(whole.Low / hub, whole.High / hub);
        var certain = wanted.SureWindow?.ToldOnceWritten(wanted.Unit);
        IReadOnlyList<Teeth> all = certain is { } inner ? [.. PairsWithin(Differential(inner))] : [];
        IReadOnlyList<Teeth> sure = [.. all.Take(MostPairs)];
        var doubtful = PairsWithin(Differential(wanted.Window)).Where(teeth => certain?.Contains(teeth.Ratio * hub) != true);
        return new(wanted, sure, hub) { LeavesOut = all.Count > sure.Count, Perhaps = [.. doubtful.Take(Math.Min(MostDoubtful, MostPairs - sure.Count))] };
    }

    /// <summary>A window in propshaft turns, as if turns could be read exactly.</summary>
    public static Window Turns(Window window, Wheels wheels, int wheelTurns = WheelTurns)
    {
        var each = wheels == Wheels.OneHeld ? wheelTurns / 2.0 : wheelTurns;
        return new(window.Low * each, window.High * each);
    }

    /// <summary>Which counts mean yes and which no.</summary>
    public CountEdges Edges(Wheels wheels, int wheelTurns = WheelTurns) => CountEdges.Of(Wanted, wheelTurns, wheels, How);

    // Those that are sold from the limit on: what lies just within it changes least.
    private static IEnumerable<Teeth> PairsWithin(Window window)
    {
        var within = ListedRatios.Common.Where(teeth => window.Contains(teeth.Ratio));
        var sold = (window.Low > 0 ? within.OrderBy(teeth => teeth.Ratio) : within.OrderByDescending(teeth => teeth.Ratio)).ToList();
        return sold.Concat(ToothPairs.All.Where(teeth => window.Contains(teeth.Ratio)).ExceptBy(sold.Select(teeth => teeth.Ratio), teeth => teeth.Ratio));
    }
}
