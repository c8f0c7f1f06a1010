using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>The transfer case may take what the gearbox passes on in its lowest gear, or what the tyres hold, whichever is less.</summary>
/// <remarks>
/// <code>low gear: T_engine · i_1 · η · R;   wheel slip: Σ axles μ m g r/(η_axle i_axle) / i_high;   the lesser ≤ rating at the input</code>
/// <para>
/// Formulas see <see cref="ShaftTorque"/>; first gear or reverse, whichever asks more. In the low range the tyres slip at less of the input's torque, so high is what counts; both axles where it joins them.
/// One of the two torques alone is an upper bound: it may pass, not fail.
/// </para>
/// <para>Limit: the maker's rating; one that is only somebody's word warns and never clashes. Without a rating nothing is judged, and <see cref="NotLookedAtCheck"/> names it.</para>
/// </remarks>
internal sealed class TransferCaseTorqueCheck : ICheck, ILookedAt
{
    public string Id => "transfer-case-torque";

    public string Title => Spoken("Transfer case torque");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.TransferCase is not { TorqueRating: { } rating } box) yield break;

        Position[] between = [Position.Engine, Position.Transmission, Position.TransferCase];
        var unit = Units.NewtonMetre;
        var wanted = Window.AtMost(rating.Value.Value);
        var source = Spoken($"transfer case's torque rating, {rating.Source.InWords()}");
        var asked = TorqueAsked.EitherWay(driveline, rating, way => InLowGear(driveline, way), way => AtWheelSlip(driveline, box, way));
        if (asked.Torque is not { } torque || (asked.IsOnlyABound && !asked.Holds))
        {
            var missing = asked.LowGear is null ? [.. Missing.PeakTorque(driveline), .. Missing.Gears(driveline), .. Missing.UntoldFirst(driveline)] : Lacking(driveline);
            yield return this.Open(between, Spoken("Whether the transfer case holds"), missing, unit, wanted, source);
            yield break;
        }

        yield return this.Judged(new(
            between, torque - (rating.Value - rating.Value.Value), unit, wanted,
            $"At the transfer case's input {asked.InWords} {Said.Number(torque, unit, 0)}, it is rated for {Said.Number(rating.Value, unit, 0)}.{(asked.BySlip ? Assumed(driveline, asked.Way) : "")}", source)
        {
            LimitIsVerified = rating.Source < Source.OwnersWord,
            Cures = [$"a transfer case rated for {Said.RatedFor(torque)} or more"],
        });
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline is { Engine.PeakTorque: not null, TransferCase: { TorqueRating: null } } ? [Unlooked.Rating(Position.TransferCase, Spoken("torque rating"))] : [];

    // What moves from one axle to the other stays with the case that turns both.
    private static Sentence Assumed(Driveline driveline, Way way)
        => Turned(driveline) is [var only] ? AssumedLoad.AtSlip(driveline, only, way) : AssumedLoad.GripInWords(driveline);

    private static Measured? InLowGear(Driveline driveline, Way way)
        => driveline is { Engine.PeakTorque: { } torque, Transmission: { } box } && LowRange.LowestGear(driveline, way) is { } gear
            ? ShaftTorque.LowGear(torque, gear.Ratio.Value, ShaftTorque.Efficiency(box.Converter is not null), box.Converter?.TorqueRatio ?? 1, transferLow: null)
            : null;

    private static Position[] Turned(Driveline driveline) => DrivenWheels.JoinsBothAxles(driveline) ? [Position.RearAxle, Position.FrontAxle] : [driveline.DrivingPosition];

    private static Measured? AtWheelSlip(Driveline driveline, TransferCase box, Way way)
    {
        var held = Turned(driveline).Select(axle => ShaftTorque.AtWheelSlip(driveline, axle, way)).ToList();
        return box.High is { } high && held.All(torque => torque is not null) ? held.Aggregate((a, b) => a! + b!)! / high.Value : null;
    }

    private static IEnumerable<Missing> Lacking(Driveline driveline) =>
    [
        .. Turned(driveline).SelectMany(axle => Missing.ForWheelSlip(driveline, axle)).DistinctBy(missing => missing.What),
        .. Turned(driveline).SelectMany(axle => Missing.Ratio(driveline, axle)),
        .. Missing.HighRange(driveline),
    ];
}
