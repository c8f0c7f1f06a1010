using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres of each axle carry what rests on them.</summary>
/// <remarks>
/// <code>axle mass / sum of the tyres' loads ≤ 1;   axles not weighed: whole mass / sum of all tyres' loads ≤ 1</code>
/// <para>
/// What all tyres together do not carry, no spread over two axles makes them carry. What they do carry together one axle may still be too heavy with: open.
/// </para>
/// <para>
/// Where wheelbase and height of gravity are known, what the lower axle carries on the owner's hill is told, not judged: a tyre that stands or creeps may carry
/// more. See <see cref="WeightTransfer"/>.
/// </para>
/// <para>Loads, the passenger tyre on a truck and their sources see <see cref="TyreLoad"/>.</para>
/// </remarks>
internal sealed class TyreLoadCheck : ICheck, ILookedAt
{
    private static string Limit => Spoken("sum of the tyres' load indices, a vehicle maker's manual and the load index table");

    public string Id => "tyre-load";

    public string Title => Spoken("Tyre load");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => driveline.Tyres is not { } tyres ? []
            :
            [
                .. driveline.AxleMasses is { } masses
                    ? [Judge(tyres, Position.FrontAxle, masses.Front, twin: false, OnTheHill(driveline, goals, down: true)), Judge(tyres, Position.RearAxle, masses.Rear, tyres.TwinRear, OnTheHill(driveline, goals, down: false))]
                    : Array.Empty<Finding>(),
                .. driveline.AxleMasses is not { Front: not null, Rear: not null } ? All(driveline, tyres) : [],
            ];

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
    {
        if (driveline.Tyres is not { } tyres) yield break;

        if (tyres.Size is null) yield return new(Position.Tyres, Spoken("marking"), Spoken("read size, load index and speed symbol on the side wall"));
        if (driveline.AxleMasses is null) yield return new(null, Spoken("axle masses"), Missing.WeighItsAxles);
    }

    // Where an axle was weighed, what is missing of the other is asked for there.
    private IEnumerable<Finding> All(Driveline driveline, TyreSet tyres)
    {
        if (driveline.Load?.Mass?.Value is not { } mass
            || Capacity(tyres, Position.FrontAxle) is not { } front || Capacity(tyres, Position.RearAxle) is not { } rear) yield break;

        IReadOnlyList<Position> joint = [Position.RearAxle, Position.Tyres];
        var (whole, all) = (Said.Number(mass, Units.Kilogram, 0), Said.Number(Math.Floor(front + rear), Units.Kilogram, 0));
        var finding = this.Judged(new(
            joint, mass / (front + rear), Units.PercentUnit, Window.AtMost(1),
            $"The vehicle's mass is {whole}; all of its tyres together ({string.Join(", ", new[] { tyres.On(Position.FrontAxle).Size!.Designation, tyres.On(Position.RearAxle).Size!.Designation }.Distinct())}) may carry {all}{(tyres.PassengerOnTruck ? Spoken(", as passenger tyres on a truck") : "")}.",
            Limit)
        {
            Cures = [$"tyres that together may carry {Said.AtLeast(mass.Interval95.High, Units.Kilogram)} or more; which axle needs how much, the axles' masses tell"],
        });
        if (finding.Verdict != Verdict.Fits) yield return finding;
        else if (driveline.AxleMasses is null)
            yield return this.Plain(
                joint, Verdict.Open, Because.MissingInput, $"Whether the tyres carry their axles cannot be said: all together may carry {all} and the vehicle's mass is {whole}, but the axles were not weighed.",
                Limit, Missing.WeighItsAxles);
    }

    private static double? Capacity(TyreSet tyres, Position axle)
        => tyres.On(axle).Size is { } size ? TyreLoad.OfAxle(size, axle == Position.RearAxle && tyres.TwinRear, tyres.PassengerOnTruck) : null;

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
