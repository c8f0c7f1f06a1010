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
/// <para>Formulas and their source see <see cref="ShaftTorque"/>. What stands on the axle: see <see cref="MassOnAxle"/>; without it the low-gear torque alone is taken, which is the safe side.</para>
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
        var low = LowGear(driveline);
        var slip = WheelSlip(driveline, shaft);
        var asked = TorqueAsked.Of(low, slip, shaft.Shaft.JointRating?.Value);
        if (asked is null || shaft.Shaft.JointRating is not { } rating)
            return this.Open(shaft.Joint, Spoken($"Whether the {shaft.Position.InWords()}'s joints are strong enough"), [.. Lacking(driveline, shaft, asked)], Limit);

        var spare = rating.Value / asked;
        var judged = Verdicts.Judge(spare, Window.AtLeast(1), rating.Source < Source.OwnersWord);
        if (judged.Verdict == Verdict.Fits && OffRoad(driveline, low) is { } bound && rating.Value.Value < bound.Value)
            judged = (Verdict.Watch, Because.UnverifiedLimit);

        return this.Judged(new(
            shaft.Joint, spare, Units.One, Window.AtLeast(1),
            $"The {shaft.Position.InWords()} is asked for {Said.Number(asked, Units.NewtonMetre, 0)} ({(asked == slip ? Spoken("the tyres slip") : Spoken("low gear"))}{Other(low, slip, asked)}); "
                + $"its joints are rated for {Said.Number(rating.Value, Units.NewtonMetre, 0)}.{(slip is null ? "" : AssumedLoad.GripInWords(driveline))}",
            Limit)
        {
            ByLimits = judged,
            Cures = [$"joints rated for {Said.Rated(asked, OffRoad(driveline, low))}"],
        });
    }

    // Off the road the wheels may be bound, and then the tyres do not slip first.
    private static Measured? OffRoad(Driveline driveline, Measured? low) => driveline.TransferCase?.Low is null ? null : low;

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

    private static IEnumerable<Missing> Lacking(Driveline driveline, FittedShaft shaft, Measured? asked)
    {
        if (shaft.Shaft.JointRating is null)
        {
            var enough = asked is null ? "" : Said.As($"; {Said.Rated(asked, OffRoad(driveline, LowGear(driveline)))} would do");
            yield return new(Spoken("the joints' rating is not known"), $"measure the joint's caps and width, and take its continuous rating from the maker's sheet{enough}");
        }

        if (asked is null)
            yield return new(Spoken("neither the low-gear torque nor the wheel-slip torque is known"), driveline.Engine?.Torque is null ? Spoken("enter the engine's torque") : Spoken("enter the gear ratios"));
    }
}
