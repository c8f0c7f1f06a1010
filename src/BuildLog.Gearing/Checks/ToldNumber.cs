using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;

namespace BuildLog.Gearing.Checks;

/// <summary>A number that a driveline is computed with, and the cheapest way to know it better.</summary>
/// <param name="Position">The part it belongs to; null for the vehicle itself.</param>
/// <param name="Name">What it is.</param>
/// <param name="Known">Null where nobody knows it.</param>
/// <param name="Cure">The way to know better.</param>
/// <remarks>What follows from other numbers, and what nobody can measure at the bench, such as grip, is not among them.</remarks>
internal sealed record ToldNumber(Position? Position, string Name, Known? Known, string Cure)
{
    private const string Sheet = "read it off the maker's data";
    private const string CoastDown = "let it coast down on a level road and time it: from cruising speed for the drag, at a walk for the rolling";

    public static IEnumerable<ToldNumber> Of(Driveline driveline)
        => [.. Engine(driveline.Engine), .. Gearbox(driveline), .. Axles(driveline), .. FittedShaft.Of(driveline).SelectMany(Shaft), .. Tyres(driveline.Tyres), .. Vehicle(driveline)];

    private static IEnumerable<ToldNumber> Engine(Engine? engine)
    {
        const Position Part = Drivelines.Position.Engine;
        yield return new(Part, "idle", engine?.Idle, "read idle and redline off the maker's data");
        yield return new(Part, "redline", engine?.Redline, "read idle and redline off the maker's data");
        yield return new(Part, "torque", engine?.Torque is { } torque ? new(torque.PeakTorque, torque.Source) : null, "have the engine's torque measured on a rolling road");
        yield return new(Part, "lowest clean pull", engine?.LowestPull, "drive it in top gear and note where it begins to pull");
        yield return new(Part, "charger's critical altitude", engine?.CriticalAltitude, Sheet);
        yield return new(Part, "pilot bore", engine?.Rear.PilotBore, "measure the pilot bearing's bore with a caliper");
    }

    private static IEnumerable<ToldNumber> Gearbox(Driveline driveline)
    {
        const Position Part = Drivelines.Position.Transmission;
        var box = driveline.Transmission;
        foreach (var gear in box?.Gears ?? []) yield return new(Part, $"gear {gear.Name}", gear.Ratio, "count the gears: ten output turns in each");
        yield return new(Part, "stall speed", box?.Converter?.StallSpeed, Sheet);
        yield return new(Part, "stall torque ratio", box?.Converter?.StallTorqueRatio, Sheet);
        yield return new(Part, "torque rating", box?.TorqueRating, Sheet);
        yield return new(Part, "clutch rating", box?.Front.ClutchRating, Sheet);
        yield return new(Part, "spigot", box?.Front.Spigot, "measure the input shaft's spigot with a caliper");
        yield return new(Drivelines.Position.Overdrive, "ratio", driveline.Overdrive?.Ratio, "count the overdrive: ten output turns");
        yield return new(Drivelines.Position.TransferCase, "high ratio", driveline.TransferCase?.High, "count the transfer case: ten output turns in each range");
        yield return new(Drivelines.Position.TransferCase, "low ratio", driveline.TransferCase?.Low, "count the transfer case: ten output turns in each range");
    }

    private static IEnumerable<ToldNumber> Axles(Driveline driveline)
        => [
            .. Axle(Drivelines.Position.RearAxle, driveline.RearAxle, "count the axle's turns: ten wheel turns, one wheel held"),
            .. Axle(Drivelines.Position.FrontAxle, driveline.FrontAxle, "count the front axle's turns: ten wheel turns, one wheel held"),
        ];

    private static IEnumerable<ToldNumber> Axle(Position part, Axle? axle, string count)
    {
        yield return new(part, "ratio", axle?.Ratio, count);
        yield return new(part, "torque rating", axle?.TorqueRating, Sheet);
        yield return new(part, "bolt circle", axle?.Hub?.PitchCircle, "measure between two studs, centre to centre");
        yield return new(part, "spigot", axle?.Hub?.Bore, "measure the hub's spigot with a caliper");
        yield return new(part, "hub faces", axle?.HubFaces, "measure the axle face to face");
        yield return new(part, "droop", axle?.Travel?.Droop, "measure down from ride height");
        yield return new(part, "bump", axle?.Travel?.Bump, "measure up to the stop");
        yield return new(part, "perches apart", axle?.Perches, "measure the perches apart, centre hole to centre hole");
        yield return new(part, "pinion against the perches", axle?.PinionToPerch, "lay an angle gauge on perch and pinion");
    }

    private static IEnumerable<ToldNumber> Shaft(FittedShaft fitted)
    {
        var (part, shaft) = (fitted.Position, fitted.Shaft);
        string Of(int piece) => shaft.Pieces.Count == 1 ? "" : FormattableString.Invariant($" of piece {piece + 1}");
        for (var k = 0; k < shaft.Pieces.Count; k++)
        {
            yield return new(part, $"tube diameter{Of(k)}", shaft.Pieces[k].Outer, "measure the tube with a caliper");
            yield return new(part, $"tube wall{Of(k)}", shaft.Pieces[k].Wall, "measure the tube's wall at a weld or with an ultrasonic gauge");
            yield return new(part, $"length{Of(k)}", shaft.Pieces[k].Length, "measure it joint centre to joint centre");
        }

        var last = shaft.Pieces.Count + 1;
        foreach (var (member, k) in (shaft.Line ?? []).Select((member, k) => (member, k)))
            yield return new(part, k == 0 ? "output's angle" : k == last ? "pinion's angle" : last == 2 ? "shaft's angle" : $"angle{Of(k - 1)}", member.Side, "lay an angle gauge on the shaft line");
        yield return new(part, "joint rating", shaft.JointRating, Sheet);
        yield return new(part, "slip stroke", shaft.Slip?.Stroke, "measure the slip joint from fully in to fully out");
        yield return new(part, "slip standing out", shaft.Slip?.Out, "measure how far the slip joint stands out at ride height");
    }

    private static IEnumerable<ToldNumber> Tyres(TyreSet? tyres)
    {
        const Position Part = Drivelines.Position.Tyres;
        yield return new(Part, "circumference", tyres?.RollingCircumference, "roll the tyres out with the vehicle standing on them");
        yield return new(Part, "loaded radius", tyres?.LoadedRadius, "measure from the axle to the ground");
        yield return new(Part, "rim width", tyres?.Wheel?.RimWidth, "measure between the bead seats, or read it off the rim");
        yield return new(Part, "offset", tyres?.Wheel?.Offset, "measure from the mounting face to the rim's edge");
        yield return new(Part, "wheels' bolt circle", tyres?.Wheel?.Bolting?.PitchCircle, "measure between two holes of a wheel, edge to the same edge");
        yield return new(Part, "wheels' bore", tyres?.Wheel?.Bolting?.Bore, "measure the wheel's centre bore with a caliper");
    }

    private static IEnumerable<ToldNumber> Vehicle(Driveline driveline)
    {
        yield return new(Drivelines.Position.Speedometer, "turns the dial wants", driveline.Speedometer?.Wanted, "read the small number on the dial");
        yield return new(null, "mass", driveline.Load?.Mass, "weigh the vehicle as it is driven");
        yield return new(null, "front axle mass", driveline.AxleMasses?.Front, "stand the front wheels alone on a weighbridge");
        yield return new(null, "rear axle mass", driveline.AxleMasses?.Rear, "stand the rear wheels alone on a weighbridge");
        yield return new(null, "share on driven wheels", driveline.Load?.DrivenShare, "weigh the axles one by one");
        yield return new(null, "drag area", driveline.Load?.DragArea, CoastDown);
        yield return new(null, "rolling resistance", driveline.Load?.RollingResistance, CoastDown);
        yield return new(null, "height of the centre of gravity", driveline.Load?.GravityHeight, "weigh one axle with the other raised");
        yield return new(null, "wheelbase", driveline.Load?.Wheelbase, "measure it hub to hub");
        foreach (var (end, hanging) in ((string, Hanging)[])[("front", driveline.FrontHanging), ("rear", driveline.RearHanging)])
        {
            yield return new(null, $"{end} springs apart", hanging.Springs, "measure the springs apart, middle to middle");
            yield return new(null, $"{end} springs' angle", hanging.Pad, "lay an angle gauge on the spring at its centre bolt");
        }
    }
}
