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
/// <para>Formulas and their source see <see cref="ShaftTorque"/>. What stands on the axle: see <see cref="LoadAtSlip"/>. First gear or reverse, whichever asks more. One of the two torques alone is an upper bound of what is asked: it may pass a joint and cannot fail it.</para>
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
        var unit = Units.NewtonMetre;
        var rating = shaft.Shaft.JointRating;
        var ask = TorqueAsked.EitherWay(driveline, rating, way => LowGear(driveline, way), way => ShaftTorque.AtWheelSlip(driveline, shaft.AxlePosition, way));
        if (ask.Torque is not { } asked || rating is null || (ask.IsOnlyABound && !ask.Holds))
            return this.Open(shaft.Joint, Spoken($"Whether the {shaft.Position.InWords()}'s joints are strong enough"), [.. Lacking(driveline, shaft, ask)], Limit);

        var (value, wanted) = (asked - (rating.Value - rating.Value.Value), Window.AtMost(rating.Value.Value));
        var judged = Verdicts.Judge(value, wanted, rating.Source < Source.OwnersWord);
        if (judged.Verdict == Verdict.Fits && OffRoad(driveline) is { } bound && rating.Value.Value < bound.Value)
            judged = (Verdict.Watch, Because.UnverifiedLimit);

        return this.Judged(new(
            shaft.Joint, value, unit, wanted,
            $"The {shaft.Position.InWords()} is asked for {Said.Number(asked, unit, 0)} ({InWords(ask)}{Other(driveline, ask)}); "
                + $"its joints are rated for {Said.Number(rating.Value, unit, 0)}.{(ask.BySlip ? AssumedLoad.AtSlip(driveline, shaft.AxlePosition, ask.Way) : ask.Slip is null ? "" : AssumedLoad.GripInWords(driveline))}",
            Limit)
        {
            ByLimits = judged,
            Cures = [$"joints rated for {Enough(asked, OffRoad(driveline))}"],
        });
    }

    // Off the road the wheels may be bound, and then the tyres do not slip first.
    private static Measured? OffRoad(Driveline driveline) => driveline.TransferCase?.Low is null ? null : Strongest(driveline).Torque;

    private static (Measured? Torque, Way Way) Strongest(Driveline driveline)
        => ((Way[])[Way.Forwards, Way.Backwards]).Select(way => (Torque: LowGear(driveline, way), way)).MaxBy(low => low.Torque?.Value);

    private static string InWords(TorqueAsked ask) => (ask.Way, ask.BySlip) switch
    {
        (Way.Forwards, true) => Spoken("the tyres slip"),
        (Way.Forwards, false) => Spoken("low gear"),
        (_, true) => Spoken("the tyres slip in reverse"),
        _ => Spoken("reverse"),
    };

    private static SaidNumber Enough(Measured asked, Measured? offRoad) => Said.RatedOrMore(offRoad?.Interval95.High > asked.Interval95.High ? offRoad : asked);

    private static Sentence Other(Driveline driveline, TorqueAsked ask)
    {
        if (ask is not { LowGear: not null, Slip: { } slip }) return "";

        return ask.BySlip ? OffTheRoad(driveline)
            : Said.As($"; the tyres would hold {Said.Number(slip, Units.NewtonMetre, 0)}{(OffRoad(driveline)?.Value > ask.LowGear.Value ? OffTheRoad(driveline) : "")}");
    }

    // What the cure keeps to is told, also where the other way is what decides on the road.
    private static Sentence OffTheRoad(Driveline driveline)
    {
        var (low, way) = Strongest(driveline);
        return way == Way.Forwards
            ? Said.As($"; off the road low gear can ask for {Said.Number(low!, Units.NewtonMetre, 0)}")
            : Said.As($"; off the road reverse can ask for {Said.Number(low!, Units.NewtonMetre, 0)}");
    }

    // Where nobody knows a low range, the same gear in high.
    private static Measured? LowGear(Driveline driveline, Way way)
        => (LowRange.LowestStep(driveline, way) ?? InHigh(driveline, way)) is { } step ? ShaftTorque.InGear(driveline, step) : null;

    private static DriveStep? InHigh(Driveline driveline, Way way)
        => driveline.TransferCase?.High is { } high && LowRange.LowestGear(driveline, way) is { } gear ? new(gear.Name, gear.Ratio.Value, high.Value) : null;

    private static IEnumerable<Missing> Lacking(Driveline driveline, FittedShaft shaft, TorqueAsked ask)
    {
        if (shaft.Shaft.JointRating is null)
        {
            var enough = ask.Torque is not { } asked ? "" : Said.As($"; {Enough(asked, OffRoad(driveline))} would do");
            yield return new(Spoken("the joints' rating is not known"), $"measure the joint's caps and width, and take its continuous rating from the maker's sheet{enough}");
        }

        if (ask.Torque is null)
        {
            yield return new(Spoken("neither the low-gear torque nor the wheel-slip torque is known"), driveline.Engine?.PeakTorque is null ? Spoken("enter the engine's torque") : Spoken("enter the gear ratios"));
        }
        else if (shaft.Shaft.JointRating is not null)
        {
            foreach (var missing in ask.Slip is null ? Slip(driveline, shaft) : LowGear(driveline)) yield return missing;
        }
    }

    private static IEnumerable<Missing> Slip(Driveline driveline, FittedShaft shaft)
        => [.. Missing.ForWheelSlip(driveline, shaft.AxlePosition), .. Missing.Ratio(driveline, shaft.AxlePosition)];

    private static IEnumerable<Missing> LowGear(Driveline driveline)
        => [.. Missing.PeakTorque(driveline), .. Missing.Gears(driveline), .. Missing.HighRange(driveline), .. Missing.LowRange(driveline)];
}
