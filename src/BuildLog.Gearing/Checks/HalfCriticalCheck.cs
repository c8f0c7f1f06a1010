using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>At cruise the propshaft does not turn at half its critical speed.</summary>
/// <remarks>
/// <code>share = v · i_axle / (C · n_c);   outside 0.46 … 0.54 fits, inside it is a watch; beyond 0.65 nothing is said</code>
/// <para>A matter of a hum and of wear, not of breaking: it never clashes. Source: see <see cref="WorkingShare"/>.</para>
/// </remarks>
internal sealed class HalfCriticalCheck : ICheck
{
    private static string Limit => Spoken("8 % around half the critical speed, a propshaft maker's page");

    private static readonly Window Below = Window.AtMost(WorkingShare.HalfCritical.Low);

    private static readonly Window Above = Window.AtLeast(WorkingShare.HalfCritical.High);

    public string Id => "propshaft-half-critical";

    public string Title => Spoken("Propshaft hum at cruise");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => FittedShaft.Of(driveline)
            .Where(shaft => shaft.Shaft.Pieces.All(piece => piece.Tube is not null))
            .SelectMany(shaft => goals.Cruise.Select(goal => Judge(driveline, shaft, goal)))
            .OfType<Finding>();

    // What is missing of the shaft, the axle or the tyre is asked for by the checks of speed and cruise.
    private Finding? Judge(Driveline driveline, FittedShaft shaft, CruiseGoal goal)
    {
        if (shaft.Axle?.Ratio is not { } axle || driveline.Tyres?.On(shaft.AxlePosition).RollingCircumference is not { } tyre) return null;

        // Of several pieces the one that comes closest to the band.
        var critical = shaft.Shaft.Pieces.Select(piece => CriticalSpeed.Of(piece.Tube!)).ToList();
        var turns = ShaftSpeed.FromRoad(goal.Speed.ToMeasured(Spoken("road speed")), axle.Value, tyre.Value);
        var piece = Enumerable.Range(0, critical.Count).MinBy(k => Math.Abs((turns.Value / critical[k].Value) - 0.5));
        var share = turns / critical[piece];
        if (share.Value > WorkingShare.Good) return null; // there it comes too close to whipping, and the check of its speed says so

        var wanted = share.Value < 0.5 ? Below : Above;
        var judged = Below.Contains(share.Interval95) || Above.Contains(share.Interval95) ? (Verdict.Fits, Because.Inside)
            : WorkingShare.HalfCritical.Contains(share.Interval95) ? (Verdict.Watch, Because.UnverifiedLimit)
            : (Verdict.Watch, Because.Uncertainty);
        // So far off the band that the share's uncertainty stays outside too.
        var v = goal.Speed.Value;
        var (down, up) = (Below.High / share.Interval95.High, Above.Low / share.Interval95.Low);
        return this.Judged(new(
            shaft.Joint, share, Units.PercentUnit, wanted,
            $"At {goal.Speed.InWords} {shaft.Named(piece)} turns {Said.Number(turns, Units.RevolutionPerMinute, 0)}, {Said.Number(share, Units.PercentUnit, 0)} of its critical "
                + $"{Said.Number(CriticalSpeed.Alone(shaft.Shaft.Pieces[piece].Tube!), Units.RevolutionPerMinute, 0)}; wanted outside {WorkingShare.HalfCritical.InWords(Units.PercentUnit)}.",
            Limit)
        {
            LimitIsVerified = false,
            ByLimits = judged,
            // Either side does, so neither is a window that the part has to lie in.
            Cures =
            [
                $"cruise at {Said.OrLess(v * down, goal.Speed.Unit, 0)}, or at {Said.OrMore(v * up, goal.Speed.Unit, 0)}",
                $"{shaft.AxlePosition.InWords()} ratio {Said.AsTyped(PartWindow.Surely(share / axle.Value, Below), Units.One, 2)}, or {Said.AsTyped(PartWindow.Surely(share / axle.Value, Above), Units.One, 2)}",
            ],
        });
    }
}
