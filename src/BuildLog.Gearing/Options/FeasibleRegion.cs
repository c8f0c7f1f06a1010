using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Options;

/// <summary>Axle ratio against tyre circumference, with what the wishes say of every pair.</summary>
/// <param name="Axles">Axle ratios, from the lowest number to the highest.</param>
/// <param name="Tyres">Rolling circumferences, metres, from the smallest to the largest.</param>
/// <param name="Verdicts">The worst verdict, by axle and then by tyre; open where nothing can be said.</param>
public sealed record FeasibleRegion(IReadOnlyList<double> Axles, IReadOnlyList<double> Tyres, IReadOnlyList<IReadOnlyList<Verdict>> Verdicts)
{
    private static readonly IReadOnlyList<ICheck> Asked = [new CruiseCheck(), new OverallLowCheck(), new TopSpeedCheck(), new HillCheck(), new HillStartCheck()];

    /// <param name="driveline">The other parts.</param>
    /// <param name="goals">The wishes.</param>
    /// <param name="axles">Lowest and highest ratio of the map.</param>
    /// <param name="tyres">Smallest and largest circumference of the map, metres.</param>
    /// <param name="rows">How many axle ratios, two or more.</param>
    /// <param name="columns">How many circumferences, two or more.</param>
    public static FeasibleRegion Of(Driveline driveline, OwnersGoals goals, Window axles, Window tyres, int rows, int columns)
    {
        var (ratios, lengths) = (Steps(axles, rows), Steps(tyres, columns));
        return new(ratios, lengths, [.. ratios.Select(ratio => lengths.Select(length => At(driveline, goals, ratio, length)).ToList())]);
    }

    /// <summary>The worst verdict of one pair: an axle of counted teeth, and tyres all round: those that are on, as well as they are known, or others as a listed size is known.</summary>
    public static Verdict At(Driveline driveline, OwnersGoals goals, double ratio, double length)
    {
        var tyres = driveline.DrivingTyres ?? new(Spoken("tyres"), null, null);
        var rolling = tyres.RollingCircumference?.Value is { } fitted && fitted.Value == length ? fitted : TyreSize.RollingAsLabelled(length, tyres.Size);
        var whole = driveline.With(
            driveline.Transmission, driveline.Overdrive,
            (driveline.DrivingAxle ?? new(Spoken("axle"), null)) with { Ratio = new(ratio, Source.TeethCounted) },
            tyres with { RollingCircumference = new(rolling, Source.Measured), FrontPair = null });
        return Asked.SelectMany(check => check.Look(whole, goals)).Where(finding => finding is { Verdict: not Verdict.Open, LimitIsVerified: true })
            .Select(finding => finding.Verdict).Concat(OfTyre(driveline, goals, length)).DefaultIfEmpty(Verdict.Open).Min();
    }

    // A circumference has no marking; what the limit of diameter leaves of it says whether such a tyre can stand there.
    private static IEnumerable<Verdict> OfTyre(Driveline driveline, OwnersGoals goals, double length)
        => SoughtWindows.Circumference(driveline, goals) is not { } limit ? []
            : [!limit.Window.Contains(length) ? Verdict.Clash : limit.SureWindow?.Contains(length) == true ? Verdict.Fits : Verdict.Watch];

    private static List<double> Steps(Window range, int count)
        => [.. Enumerable.Range(0, count).Select(k => range.Low + (k * (range.High - range.Low) / (count - 1)))];
}
