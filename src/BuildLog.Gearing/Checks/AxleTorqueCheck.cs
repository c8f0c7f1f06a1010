using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>The axle may take what reaches it: low-gear torque, or what the tyres hold, whichever is less.</summary>
/// <remarks>
/// <code>min(low-gear torque, wheel-slip torque) ≤ rating at the wheels</code>
/// <para>
/// Formula: <see cref="AxleTorque"/>. Where only one of the two is known it is an upper bound: if that fits, all fits. What stands on the axle: see
/// <see cref="LoadAtSlip"/>. First gear or reverse, whichever asks more. Bound wheels, hopping and rocks see the low-gear torque.
/// </para>
/// <para>Limit: the maker's rating; one that is only somebody's word warns and never clashes. Nothing is judged of an axle without a rating, which <see cref="NotLookedAtCheck"/> names, or of one that is not driven.</para>
/// </remarks>
internal sealed class AxleTorqueCheck : ICheck, ILookedAt
{
    public string Id => "axle-torque";

    public string Title => Spoken("Axle torque");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        foreach (var (position, axle) in Driven(driveline))
        {
            if (axle.TorqueRating is { } rating) yield return Judge(driveline, position, axle, rating);
        }
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline.Engine?.PeakTorque is null ? [] : Driven(driveline).Where(driven => driven.Axle.TorqueRating is null).Select(driven => Unlooked.Rating(driven.Position, Spoken("torque rating")));

    private static IEnumerable<(Position Position, Axle Axle)> Driven(Driveline driveline)
        => from position in (Position[])[Position.RearAxle, Position.FrontAxle]
           where position == driveline.DrivingPosition || driveline.TransferCase is not null
           let axle = driveline.AxleAt(position)
           where axle is not null
           select (position, axle);

    private Finding Judge(Driveline driveline, Position position, Axle axle, Known rating)
    {
        var unit = Units.NewtonMetre;
        var wanted = Window.AtMost(rating.Value.Value);
        var source = Spoken($"{position.InWords()}'s torque rating, {rating.Source.InWords()}");
        var asked = TorqueAsked.EitherWay(driveline, rating, way => AxleTorque.InLowGear(driveline, axle, way), way => AtWheelSlip(driveline, position, way));
        if (asked.Torque is not { } least || (asked.IsOnlyABound && !asked.Holds))
        {
            var missing = asked.Slip is null ? Missing.ForWheelSlip(driveline, position) : LowGear(driveline, position);
            return this.Open([Position.Engine, position], Spoken($"Whether the {position.InWords()} holds"), missing, unit, wanted, source);
        }

        return this.Judged(new(
            [Position.Engine, Position.Transmission, position, Position.Tyres], least - (rating.Value - rating.Value.Value), unit, wanted,
            $"At the wheels {asked.InWords} {Said.Number(least, unit, 0)}, the {position.InWords()} is rated for {Said.Number(rating.Value, unit, 0)}.{(asked.BySlip ? AssumedLoad.AtSlip(driveline, position, asked.Way) : "")}", source)
        {
            LimitIsVerified = rating.Source < Source.OwnersWord,
            Cures = [position == Position.FrontAxle ? Said.As($"a front axle rated for {Said.RatedFor(least)} or more at the wheels") : Said.As($"an axle rated for {Said.RatedFor(least)} or more at the wheels")],
        });
    }

    private static Measured? AtWheelSlip(Driveline driveline, Position position, Way way)
        => driveline.Tyres?.On(position).RollingCircumference is { } circumference && LoadAtSlip.Of(driveline, position, way) is { } mass
            ? AxleTorque.AtWheelSlip(driveline.Grip.Value, mass, circumference.Value)
            : null;

    private static IEnumerable<Missing> LowGear(Driveline driveline, Position position)
        => [.. Missing.PeakTorque(driveline), .. Missing.Gears(driveline), .. Missing.LowRange(driveline), .. Missing.Ratio(driveline, position)];
}
