using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>The joints of a propshaft carry what the engine or the tyres can ask of them.</summary>
/// <remarks>
/// <code>asked = min(low-gear torque, wheel-slip torque);   rating ≥ asked fits;   with a low range, less than the low-gear torque is a watch</code>
/// <para>Formulas and their source see <see cref="ShaftTorque"/>. What stands on the axle: see <see cref="MassOnAxle"/>. One of the two torques alone is an upper bound of what is asked: it may pass a joint and cannot fail it.</para>
/// <para>A rating is the maker's for continuous torque, not the one at which the joint yields; one that is only somebody's word warns and never clashes.</para>
/// </remarks>
internal sealed class JointTorqueCheck : ICheck
{
    private static string Limit => Spoken("the joint maker's rating against low-gear and wheel-slip torque, a shaft maker's manual");

    public string Id => "joint-torque";

    public string Title => Spoken("Joint torque");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => FittedShaft.Of(driveline).Select(shaft => Judge(driveline, shaft));

    private Finding Judge(Driveline driveline, FittedShaft shaft)
    {
        var (low, slip) = (LowGear(driveline), WheelSlip(driveline, shaft));
        var unit = Units.NewtonMetre;
        var rating = shaft.Shaft.JointRating;
        var asked = TorqueAsked.Of(low, slip, rating?.Value);

        // One of the two alone is an upper bound: it may pass, not fail.
        if (asked is null || rating is null || ((low is null || slip is null) && (rating.Value - asked).Interval95.Low < 0))
            return this.Open(shaft.Joint, Spoken($"Whether the {shaft.Position.InWords()}'s joints are strong enough"), [.. Lacking(driveline, shaft, asked, low, slip)], Limit);

        var (value, wanted) = (asked - (rating.Value - rating.Value.Value), Window.AtMost(rating.Value.Value));
        var judged = Verdicts.Judge(value, wanted, rating.Source < Source.OwnersWord);
        if (judged.Verdict == Verdict.Fits && OffRoad(driveline, low) is { } bound && rating.Value.Value < bound.Value)
            judged = (Verdict.Watch, Because.UnverifiedLimit);

        return this.Judged(new(
            shaft.Joint, value, unit, wanted,
            $"The {shaft.Position.InWords()} is asked for {Said.Number(asked, unit, 0)} ({(asked == slip ? Spoken("the tyres slip") : Spoken("low gear"))}{Other(low, slip, asked)}); "
                + $"its joints are rated for {Said.Number(rating.Value, unit, 0)}.{(slip is null ? "" : AssumedLoad.GripInWords(driveline))}",
            Limit)
        {
            ByLimits = judged,
            Cures = [$"joints rated for {Enough(asked, OffRoad(driveline, low))}"],
        });
    }

    // Off the road the wheels may be bound, and then the tyres do not slip first.
    private static Measured? OffRoad(Driveline driveline, Measured? low) => driveline.TransferCase?.Low is null ? null : low;

    private static SaidNumber Enough(Measured asked, Measured? offRoad) => Said.OrMore(Math.Max(asked.Interval95.High, offRoad?.Interval95.High ?? 0), Units.NewtonMetre, 0);

    private static Sentence Other(Measured? low, Measured? slip, Measured asked)
    {
        if (low is null || slip is null) return "";

        return asked == slip
            ? Said.As($"; off the road low gear can ask for {Said.Number(low, Units.NewtonMetre, 0)}")
            : Said.As($"; the tyres would hold {Said.Number(slip, Units.NewtonMetre, 0)}");
    }

    // Where nobody knows a low range, first gear in high.
    private static Measured? LowGear(Driveline driveline)
        => (LowRange.LowestStep(driveline) ?? driveline.Steps.FirstOrDefault()) is { } step ? ShaftTorque.InGear(driveline, step) : null;

    private static Measured? WheelSlip(Driveline driveline, FittedShaft shaft)
        => MassOnAxle.Of(driveline, shaft.AxlePosition) is { } mass && shaft.Axle?.Ratio is { } ratio && driveline.Tyres?.On(shaft.AxlePosition).RollingCircumference is { } tyre
            ? ShaftTorque.WheelSlip(driveline.Grip.Value, mass, tyre.Value * (0.5 / Math.PI), ratio.Value)
            : null;

    private static IEnumerable<Missing> Lacking(Driveline driveline, FittedShaft shaft, Measured? asked, Measured? low, Measured? slip)
    {
        if (shaft.Shaft.JointRating is null)
        {
            var enough = asked is null ? "" : Said.As($"; {Enough(asked, OffRoad(driveline, low))} would do");
            yield return new(Spoken("the joints' rating is not known"), $"measure the joint's caps and width, and take its continuous rating from the maker's sheet{enough}");
        }

        if (asked is null)
        {
            yield return new(Spoken("neither the low-gear torque nor the wheel-slip torque is known"), driveline.Engine?.PeakTorque is null ? Spoken("enter the engine's torque") : Spoken("enter the gear ratios"));
        }
        else if (shaft.Shaft.JointRating is not null)
        {
            foreach (var missing in slip is null ? Slip(driveline, shaft) : LowGear(driveline, shaft)) yield return missing;
        }
    }

    private static IEnumerable<Missing> Slip(Driveline driveline, FittedShaft shaft)
    {
        foreach (var missing in Missing.ForWheelSlip(driveline, shaft.AxlePosition)) yield return missing;
        if (shaft.Axle?.Ratio is null) yield return new(Spoken($"the {shaft.AxlePosition.InWords()} ratio is not known"), Spoken("count the axle's turns: ten wheel turns, one wheel held"));
    }

    private static IEnumerable<Missing> LowGear(Driveline driveline, FittedShaft shaft)
        => [.. Missing.PeakTorque(driveline), .. Missing.Gears(driveline), .. Missing.HighRange(driveline), .. Missing.LowRange(driveline)];
}
