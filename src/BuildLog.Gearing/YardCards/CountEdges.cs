using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.YardCards;

/// <summary>Which propshaft turns of one count mean yes, and beyond which they mean no; what lies between is to be counted further.</summary>
/// <remarks>
/// <code>i ± k √(a² + b² i²) / W touches L where (1 − c b²) i² − 2 L i + L² − c a² = 0, c = (k / W)²</code>
/// <para>W = w_left + w_right; a from the reading, b from the wheel's stop; k = <see cref="StudentT.Normal975"/>. The greater root is where yes begins above L, the smaller where no ends below it.</para>
/// <para>Not for: a count so short that the stop alone hides the ratio (c b² of 1 and more).</para>
/// </remarks>
/// <param name="Yes">Turns whose whole 95 % interval lies in the sure window; null if there are none.</param>
/// <param name="Possible">Turns whose 95 % interval touches the window; outside of it the answer is no.</param>
public sealed record CountEdges(Window? Yes, Window Possible)
{
    /// <param name="window">Ratios that would do, the other parts at their best values.</param>
    /// <param name="sure">Ratios that would do for certain; null if there are none.</param>
    /// <param name="wheelTurns">Turns of each wheel that turns.</param>
    /// <param name="wheels">One held or both alike.</param>
    /// <param name="how">How finely the turns are read.</param>
    public static CountEdges Of(Window window, Window? sure, double wheelTurns, Wheels wheels, CountPrecision how)
    {
        var wheelSum = wheels == Wheels.OneHeld ? wheelTurns : 2 * wheelTurns;
        double Turns(double limit, int side) => Touching(limit, side, wheelSum, wheels, how) * wheelSum / 2;

        var possible = new Window(Turns(window.Low, -1), Turns(window.High, +1));
        Window? yes = sure is { } inner ? new Window(Turns(inner.Low, +1), Turns(inner.High, -1)) : null;
        return new(yes is { IsEmpty: true } ? null : yes, possible);
    }

    private static double Touching(double limit, int side, double wheelSum, Wheels wheels, CountPrecision how)
    {
        if (double.IsInfinity(limit)) return limit;

        var a = how.ReadTo / Math.Sqrt(3);
        var b = TurnCount.StopUncertainty(wheels, how.Align);
        var c = StudentT.Normal975 * StudentT.Normal975 / (wheelSum * wheelSum);
        var lead = 1 - (c * b * b);
        return (limit + (side * Math.Sqrt((limit * limit) - (lead * ((limit * limit) - (c * a * a)))))) / lead;
    }
}
