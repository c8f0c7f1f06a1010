using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.YardCards;

/// <summary>Which propshaft turns of one count mean yes, and beyond which they mean no; what lies between is to be counted further.</summary>
/// <remarks>
/// <code>yes: (i − L)² = (ρ i)² + c (a² + b² i²)        no: (i − L)² = c (a² + b² i²)        c = (t / W)²</code>
/// <para>
/// i = 2 p / W, p propshaft turns, W = w_left + w_right; L the window's edge, ρ what the other parts leave open there; a from the reading, b from the wheel's
/// stop; t the normal 97.5 % point. Which root, its form where the goal falls as i rises, the derivation and where it holds: <see cref="TouchedEdge"/>.
/// </para>
/// <para>
/// Yes is what a verdict on the count calls fits. No leaves the other parts at their best values: in the yard only the count can be counted further, and beyond
/// it no further count can make it a yes; a verdict there may still be a watch, until the other parts are known better.
/// </para>
/// <para>Not for: a count so short that the stop alone hides the ratio (c b² of 1 and more).</para>
/// </remarks>
/// <param name="Yes">Turns that a verdict calls fits, with what the other parts leave open; null if there are none.</param>
/// <param name="Possible">Turns whose own 95 % interval touches the window; outside of it the answer is no.</param>
public sealed record CountEdges(Window? Yes, Window Possible)
{
    /// <param name="wanted">What the ratio has to be.</param>
    /// <param name="wheelTurns">Turns of each wheel that turns.</param>
    /// <param name="wheels">One held or both alike.</param>
    /// <param name="how">How finely the turns are read.</param>
    public static CountEdges Of(WindowOfPart wanted, double wheelTurns, Wheels wheels, CountPrecision how) => Of(wanted.Window, EdgesOfYes.Of(wanted), wheelTurns, wheels, how);

    /// <param name="window">Ratios that would do, the other parts at their best values.</param>
    /// <param name="sure">Ratios that would do for certain; null if there are none.</param>
    /// <param name="wheelTurns">Turns of each wheel that turns.</param>
    /// <param name="wheels">One held or both alike.</param>
    /// <param name="how">How finely the turns are read.</param>
    public static CountEdges Of(Window window, Window? sure, double wheelTurns, Wheels wheels, CountPrecision how) => Of(window, EdgesOfYes.Of(window, sure), wheelTurns, wheels, how);

    private static CountEdges Of(Window window, EdgesOfYes? sure, double wheelTurns, Wheels wheels, CountPrecision how)
    {
        var wheelSum = wheels == Wheels.OneHeld ? wheelTurns : 2 * wheelTurns;
        var (a, b) = (how.ReadTo / Math.Sqrt(3) / wheelSum, TurnCount.StopUncertainty(wheels, how.Align) / wheelSum);
        double Turns(TouchedEdge edge, int side) => edge.Touching(side, a, b) * wheelSum / 2;

        var possible = new Window(Turns(new(window.Low), -1), Turns(new(window.High), +1));
        Window? yes = sure is { } edges ? new Window(Turns(edges.Low, +1), Turns(edges.High, -1)) : null;
        return new(yes is { IsEmpty: true } ? null : yes, possible);
    }
}
