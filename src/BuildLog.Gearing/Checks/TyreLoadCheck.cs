using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres of each axle carry what rests on them.</summary>
/// <remarks>
/// <code>axle mass / sum of the tyres' loads ≤ 1</code>
/// <para>
/// Where wheelbase and height of gravity are known, what the lower axle carries on the owner's hill is told, not judged: a tyre that stands or creeps may carry
/// more. See <see cref="WeightTransfer"/>.
/// </para>
/// <para>Loads, the passenger tyre on a truck and their sources see <see cref="TyreLoad"/>.</para>
/// </remarks>
internal sealed class TyreLoadCheck : ICheck
{
    private static string Limit => Spoken("sum of the tyres' load indices, a vehicle maker's manual and the load index table");

    public string Id => "tyre-load";

    public string Title => Spoken("Tyre load");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => driveline is { AxleMasses: { } masses, Tyres: { } tyres }
            ? [Judge(tyres, Position.FrontAxle, masses.Front, twin: false, OnTheHill(driveline, goals, down: true)), Judge(tyres, Position.RearAxle, masses.Rear, tyres.TwinRear, OnTheHill(driveline, goals, down: false))]
            : [];

    private Finding Judge(TyreSet tyres, Position axle, Known? mass, bool twin, Sentence further)
    {
        IReadOnlyList<Position> joint = [axle, Position.Tyres];
        var pair = tyres.On(axle);
        var where = axle == Position.FrontAxle ? Spoken("front") : Spoken("rear");
        if (mass is null || pair.Size is not { } size || TyreLoad.OfAxle(size, twin, tyres.PassengerOnTruck) is not { } capacity)
            return this.Open(joint, Spoken($"Whether the {where} tyres carry their axle"), [.. Lacking(pair, where, mass, twin)], Limit);

        var share = mass.Value / capacity;
        var need = TyreLoad.IndexFor(mass.Value.Interval95.High / (twin ? 2 : 1), tyres.PassengerOnTruck);
        return this.Judged(new(
            joint, share, Units.PercentUnit, Window.AtMost(1),
            $"The {where} axle carries {Said.Number(mass.Value, Units.Kilogram, 0)}; its tyres ({size.Designation}) may carry "
                + $"{Said.Number(Math.Floor(capacity), Units.Kilogram, 0)}{(tyres.PassengerOnTruck ? Spoken(", as passenger tyres on a truck") : "")}.{further}",
            Limit)
        {
            // Weighed no better than now.
            Cures = [
                .. need is { } index ? [Spoken($"tyres of load index {index} or more{(twin ? Spoken(", the second figure") : "")}")] : Array.Empty<string>(),
                $"an axle load of {Said.OrLess(capacity - mass.Value.Expanded95, Units.Kilogram, 0)}",
            ],
        });
    }

    private static Sentence OnTheHill(Driveline driveline, OwnersGoals goals, bool down)
    {
        if ((goals.HillStart?.Gradient ?? goals.Hill?.Gradient) is not { } hill
            || driveline is not { AxleMasses: { Front.Value: { } front, Rear.Value: { } rear }, Load: { GravityHeight.Value: { } height, Wheelbase.Value: { } wheelbase } })
            return "";

        var slope = Math.Atan(hill.Value);
        var moved = WeightTransfer.ToRear(front + rear, 0, height, wheelbase, slope);
        var carried = ((down ? front : rear) * Math.Cos(slope)) + moved;
        return Said.As($" {(down ? Spoken("Down") : Spoken("Up"))} a hill of {Said.Number(hill.Value, Units.PercentUnit, 0)} it carries {Said.Number(carried, Units.Kilogram, 0)} while that lasts; judged is the load on the level.");
    }

    private static IEnumerable<Missing> Lacking(TyreSet pair, string where, Known? mass, bool twin)
    {
        if (mass is null) yield return new(Spoken($"the {where} axle was not weighed"), $"stand the {where} wheels alone on a weighbridge, the vehicle laden");
        if (pair.Size is null) yield return new(Spoken("the tyre size is not known"), Spoken("read the tyre's marking"));
        else if ((twin ? pair.Size.LoadIndexDual : pair.Size.LoadIndex) is null)
            yield return new(twin ? Spoken("the load index for twin tyres is not known") : Spoken("the load index is not known"), Spoken("read the figures behind the size on the side wall, such as 94H"));
    }
}
