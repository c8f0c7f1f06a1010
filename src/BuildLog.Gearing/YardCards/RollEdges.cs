using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.YardCards;

/// <summary>Which distances of one roll mean yes, and beyond which they mean no; what lies between is to be rolled further, or to be judged under the vehicle.</summary>
/// <remarks>
/// <code>k C ± t √(k² (τ² + α² C²) / w² + u_k² C²) touches L:   (k² − t² (k² α² / w² + u_k²)) C² − 2 k L C + L² − t² k² τ² / w² = 0</code>
/// <para>
/// C distance a turn, w turns; τ from the tape, α from the wheel's mark; k loaded factor of a loose wheel, one and exact under a vehicle; t =
/// <see cref="StudentT.Normal975"/>. The greater root is where yes begins above L, the smaller where no ends below it.
/// </para>
/// </remarks>
/// <param name="Yes">Metres whose whole 95 % interval lies in the sure window; null if there are none.</param>
/// <param name="Possible">Metres whose 95 % interval touches the window; outside of it the answer is no.</param>
public sealed record RollEdges(Window? Yes, Window Possible)
{
    /// <param name="window">Rolling circumferences that would do, the other parts at their best values.</param>
    /// <param name="sure">Those that would do for certain; null if there are none.</param>
    /// <param name="turns">Turns of the wheel.</param>
    /// <param name="how">How it is rolled.</param>
    public static RollEdges Of(Window window, Window? sure, double turns, RollOutPrecision how)
    {
        double Distance(double limit, int side) => Touching(limit, side, turns, how) * turns;

        var possible = new Window(Distance(window.Low, -1), Distance(window.High, +1));
        Window? yes = sure is { } inner ? new Window(Distance(inner.Low, +1), Distance(inner.High, -1)) : null;
        return new(yes is { IsEmpty: true } ? null : yes, possible);
    }

    private static double Touching(double limit, int side, double turns, RollOutPrecision how)
    {
        if (double.IsInfinity(limit)) return limit;

        var (k, u) = how.Loaded ? (1.0, 0.0) : (LoadedFactor.For(how.Construction).Value, LoadedFactor.For(how.Construction).StandardUncertainty);
        var share = k * StudentT.Normal975 / (turns * Math.Sqrt(3));
        var (tape, align) = (share * how.Tape, share * how.Align);
        var lead = (k * k) - (align * align) - (StudentT.Normal975 * StudentT.Normal975 * u * u);
        return ((k * limit) + (side * Math.Sqrt((k * k * limit * limit) - (lead * ((limit * limit) - (tape * tape)))))) / lead;
    }
}
