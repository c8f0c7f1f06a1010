using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.YardCards;

/// <summary>What to count on an axle in the breaker's yard, and between which counts it will do.</summary>
/// <remarks>
/// One wheel held: p = i w / 2; both turning alike: p = i w. The edges of yes and no leave room for what a chalk mark and an eye can read
/// (<see cref="CountEdges"/>). An axle with a hub reduction is counted at the wheel, so its count holds too; its teeth do not.
/// </remarks>
/// <param name="Wanted">What the ratio has to be.</param>
/// <param name="Teeth">Tooth pairs inside the window, those that are sold under a name first.</param>
public sealed record AxleCard(WindowOfPart Wanted, IReadOnlyList<Teeth> Teeth)
{
    /// <summary>Enough to tell, few enough to count by hand.</summary>
    public const int WheelTurns = 10;

    /// <summary>Where ten do not settle it.</summary>
    public const int MoreWheelTurns = 30;

    private const int MostPairs = 12;
    private static readonly CountPrecision How = new();

    /// <exception cref="RefusedException">Two wishes exclude each other; the sentence says which, and by how much.</exception>
    public static AxleCard Of(WindowOfPart wanted)
    {
        if (wanted.Contradiction is { } says) throw new RefusedException("window", $"No axle can do: {says}", "");

        return new(wanted, [.. PairsWithin(wanted.Window).Take(MostPairs)]);
    }

    /// <summary>The window in propshaft turns, as if turns could be read exactly.</summary>
    public Window Turns(Wheels wheels, int wheelTurns = WheelTurns)
    {
        var each = wheels == Wheels.OneHeld ? wheelTurns / 2.0 : wheelTurns;
        return new(Wanted.Window.Low * each, Wanted.Window.High * each);
    }

    /// <summary>Which counts mean yes and which no.</summary>
    public CountEdges Edges(Wheels wheels, int wheelTurns = WheelTurns) => CountEdges.Of(Wanted.Window, Wanted.SureWindow, wheelTurns, wheels, How);

    private static IEnumerable<Teeth> PairsWithin(Window window)
    {
        var sold = ListedRatios.Common.Where(teeth => window.Contains(teeth.Ratio)).OrderBy(teeth => teeth.Ratio).ToList();
        var others =
            from pinion in Enumerable.Range(5, 16)
            from ring in Enumerable.Range(25, 36)
            where window.Contains((double)ring / pinion) && ring >= 2 * pinion && ring <= 9 * pinion
            let teeth = new Teeth(ring, pinion)
            where teeth.IsCoprime && !sold.Contains(teeth)
            orderby teeth.Pinion
            select teeth;
        return sold.Concat(others);
    }
}
