using BuildLog.Data.Components;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Sessions;

/// <summary>How the members of a shaft line of one piece lie.</summary>
public sealed class ShaftAnglesSession : Session
{
    /// <param name="shaft">A shaft of one piece.</param>
    /// <param name="on">The vehicle it was on.</param>
    public ShaftAnglesSession(PropshaftComponent shaft, Vehicle? on = null) => (ComponentId, VehicleId) = (shaft.Id, on?.Id);

    internal ShaftAnglesSession() { }

    public override Later Method => new Later("shaft angles");

    /// <summary>What the readings give: the front joint and the rear one.</summary>
    /// <exception cref="RefusedException">They give nothing.</exception>
    public (JointAngle Front, JointAngle Rear) Result()
    {
        var angles = Understood();
        if (angles.GroupBy(angle => (angle.Of, angle.From)).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new RefusedException("angle", Spoken($"There are two readings of one angle, '{twice.First()}' and '{twice.Last()}': keep one."), "");

        return JointAngle.Of([.. Enum.GetValues<Member>().Select(member => new Inclination(Of(angles, member, Seen.Side), Of(angles, member, Seen.Above)))]) is [var front, var rear]
            ? (front, rear)
            : throw new RefusedException("angle", Spoken("The output, the shaft and the pinion are each read from the side."), "output side 3.5 deg");
    }

    public override void Check() => _ = Result();

    private protected override string InWords(string reading) => AngleReading.Read(reading).OrRefuse().InWords;

    internal override bool Measures(Component? component) => component is PropshaftComponent { Pieces.Count: < 2 };

    internal override IEnumerable<NumberFound> Finds() => Understood().Select(angle =>
    {
        var (name, line) = Number(angle.Of, angle.From);
        return new NumberFound(name, line.Unit, line.Known(angle.Angle, Source.Measured, name) with { Says = Says });
    });

    private List<AngleReading> Understood() => [.. Readings.Select(text => AngleReading.Read(text).OrRefuse())];

    private static Known? Of(List<AngleReading> angles, Member member, Seen from)
    {
        if (angles.Find(angle => angle.Of == member && angle.From == from) is not { } angle) return null;
        var (name, line) = Number(member, from);
        return line.Known(angle.Angle, Source.Measured, name);
    }

    private static (string Name, SpecLine Line) Number(Member member, Seen from) => (member, from) switch
    {
        (Member.Output, Seen.Side) => Of(Spec.OutputSide),
        (Member.Output, _) => Of(Spec.OutputPlan),
        (Member.Pinion, Seen.Side) => Of(Spec.PinionSide),
        (Member.Pinion, _) => Of(Spec.PinionPlan),
        (_, Seen.Side) => (SpecNumbers.OfPiece(0, SpecSheet.ShaftSide), SpecSheet.ShaftSide),
        _ => (SpecNumbers.OfPiece(0, SpecSheet.ShaftPlan), SpecSheet.ShaftPlan),
    };

    private static (string Name, SpecLine Line) Of(Spec spec) => (spec.InWords(), spec.Line());
}
