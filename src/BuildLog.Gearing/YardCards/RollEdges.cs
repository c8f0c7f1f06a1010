using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.YardCards;

/// <summary>Which distances of one roll mean yes, and beyond which they mean no; what lies between is to be rolled further, or to be judged under the vehicle.</summary>
/// <remarks>
/// <code>(k C − L)² = (ρ k C)² + t² (k² (τ² + α² C²) / w² + u_k² C²)        no: ρ = 0</code>
/// <para>
/// C distance a turn, w turns; L the window's edge, ρ what the other parts leave open there; τ from the tape, α from the wheel's mark; k loaded factor of a loose
/// wheel, one and exact under a vehicle; t the normal 97.5 % point. Which root, its form where the goal falls as C rises, the derivation and where it holds: <see cref="TouchedEdge"/>.
/// </para>
/// <para>Yes is what a verdict on the roll calls fits; no leaves the other parts at their best values, for in the yard only the wheel can be rolled further.</para>
/// </remarks>
/// <param name="Yes">Metres that a verdict calls fits, with what the other parts leave open; null if there are none.</param>
/// <param name="Possible">Metres whose own 95 % interval touches the window; outside of it the answer is no.</param>
public sealed record RollEdges(Window? Yes, Window Possible)
{
    /// <param name="wanted">What the rolling circumference has to be.</param>
    /// <param name="turns">Turns of the wheel.</param>
    /// <param name="how">How it is rolled.</param>
    public static RollEdges Of(WindowOfPart wanted, double turns, RollOutPrecision how) => Of(wanted.Window, EdgesOfYes.Of(wanted), turns, how);

    /// <param name="window">Rolling circumferences that would do, the other parts at their best values.</param>
    /// <param name="sure">Those that would do for certain; null if there are none.</param>
    /// <param name="turns">Turns of the wheel.</param>
    /// <param name="how">How it is rolled.</param>
    public static RollEdges Of(Window window, Window? sure, double turns, RollOutPrecision how) => Of(window, EdgesOfYes.Of(window, sure), turns, how);

    private static RollEdges Of(Window window, EdgesOfYes? sure, double turns, RollOutPrecision how)
    {
        var (k, u) = how.Loaded ? (1.0, 0.0) : (LoadedFactor.For(how.Construction).Value, LoadedFactor.For(how.Construction).StandardUncertainty);
        var share = k / (turns * Math.Sqrt(3));
        var (tape, align) = (share * how.Tape, share * how.Align);
        double Distance(TouchedEdge edge, int side) => edge.Touching(side, tape, Math.Sqrt((align * align) + (u * u)), k) * turns;

        var possible = new Window(Distance(new(window.Low), -1), Distance(new(window.High), +1));
        Window? yes = sure is { } edges ? new Window(Distance(edges.Low, +1), Distance(edges.High, -1)) : null;
        return new(yes is { IsEmpty: true } ? null : yes, possible);
    }
}
