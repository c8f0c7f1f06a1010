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
    private static string Sheet => Spoken("read it off the maker's data");
    private static string CoastDown => Spoken("let it coast down on a level road and time it: from cruising speed for the drag, at a walk for the rolling");

    public static IEnumerable<ToldNumber> Of(Driveline driveline)
        => [.. Engine(driveline.Engine), .. Gearbox(driveline), .. Axles(driveline), .. FittedShaft.Of(driveline).SelectMany(Shaft), .. Tyres(driveline.Tyres), .. Vehicle(driveline)];

    private static IEnumerable<ToldNumber> Engine(Engine? engine)
    {
        const Position Part = Drivelines.Position.Engine;
        yield return new(Part, Spoken("idle"), engine?.Idle, Spoken("read idle and redline off the maker's data"));
        yield return new(Part, Spoken("redline"), engine?.Redline, Spoken("read idle and redline off the maker's data"));
        yield return new(Part, engine?.Torque is { Source: Source.Assumed } ? Spoken("torque away from its two peaks") : Spoken("torque"), engine?.PeakTorque is { } torque ? new(torque, engine.Torque?.Source ?? engine.ToldTorque!.Source) : null, Spoken("have the engine's torque measured on a rolling road"));
        yield return new(Part, Spoken("lowest clean pull"), engine?.LowestPull, Spoken("drive it in top gear and note where it begins to pull"));
        yield return new(Part, Spoken("charger's critical altitude"), engine?.CriticalAltitude, Sheet);
        yield return new(Part, Spoken("pilot bore"), engine?.Rear.PilotBore, Spoken("measure the pilot bearing's bore with a caliper"));
    }

    private static IEnumerable<ToldNumber> Gearbox(Driveline driveline)
    {
        const Position Part = Drivelines.Position.Transmission;
        var box = driveline.Transmission;
        foreach (var gear in box?.Gears ?? []) yield return new(Part, Spoken($"gear {gear.Name}"), gear.Ratio, Spoken("count the gears: ten output turns in each"));
        yield return new(Part, Spoken("stall speed"), box?.Converter?.StallSpeed, Sheet);
        yield return new(Part, Spoken("stall torque ratio"), box?.Converter?.StallTorqueRatio, Sheet);
        yield return new(Part, Spoken("torque rating"), box?.TorqueRating, Sheet);
        yield return new(Part, Spoken("clutch rating"), box?.Front.ClutchRating, Sheet);
        yield return new(Part, Spoken("spigot"), box?.Front.Spigot, Spoken("measure the input shaft's spigot with a caliper"));
        yield return new(Drivelines.Position.Overdrive, Spoken("ratio"), driveline.Overdrive?.Ratio, Spoken("count the overdrive: ten output turns"));
        yield return new(Drivelines.Position.TransferCase, Spoken("high ratio"), driveline.TransferCase?.High, Spoken("count the transfer case: ten output turns in each range"));
        yield return new(Drivelines.Position.TransferCase, Spoken("low ratio"), driveline.TransferCase?.Low, Spoken("count the transfer case: ten output turns in each range"));
        yield return new(Drivelines.Position.TransferCase, Spoken("torque rating"), driveline.TransferCase?.TorqueRating, Sheet);
    }

    private static IEnumerable<ToldNumber> Axles(Driveline driveline)
        => [
            .. Axle(Drivelines.Position.RearAxle, driveline.RearAxle, Spoken("count the axle's turns: ten wheel turns, one wheel held")),
            .. Axle(Drivelines.Position.FrontAxle, driveline.FrontAxle, Spoken("count the front axle's turns: ten wheel turns, one wheel held")),
        ];

    private static IEnumerable<ToldNumber> Axle(Position part, Axle? axle, string count)
    {
        yield return new(part, Spoken("ratio"), axle?.Ratio, count);
        yield return new(part, Spoken("torque rating"), axle?.TorqueRating, Sheet);
        yield return new(part, Spoken("bolt circle"), axle?.Hub?.PitchCircle, Spoken("measure between two studs, centre to centre"));
        yield return new(part, Spoken("hub spigot"), axle?.Hub?.Bore, Spoken("measure the hub's spigot with a caliper"));
        yield return new(part, Spoken("hub faces"), axle?.HubFaces, Spoken("measure the axle face to face"));
        yield return new(part, Spoken("droop"), axle?.Travel?.Droop, Spoken("measure down from ride height"));
        yield return new(part, Spoken("bump"), axle?.Travel?.Bump, Spoken("measure up to the stop"));
        yield return new(part, Spoken("perches apart"), axle?.Perches, Spoken("measure the perches apart, centre hole to centre hole"));
        yield return new(part, Spoken("pinion against the perches"), axle?.PinionToPerch, Spoken("lay an angle gauge on perch and pinion"));
    }

    private static IEnumerable<ToldNumber> Shaft(FittedShaft fitted)
    {
        var (part, shaft) = (fitted.Position, fitted.Shaft);
        string Of(int piece) => shaft.Pieces.Count == 1 ? "" : Spoken($" of piece {piece + 1}");
        for (var k = 0; k < shaft.Pieces.Count; k++)
        {
            yield return new(part, Spoken($"tube diameter{Of(k)}"), shaft.Pieces[k].Outer, Spoken("measure the tube with a caliper"));
            yield return new(part, Spoken($"tube wall{Of(k)}"), shaft.Pieces[k].Wall, Spoken("measure the tube's wall at a weld or with an ultrasonic gauge"));
            yield return new(part, Spoken($"length{Of(k)}"), shaft.Pieces[k].Length, Spoken("measure it joint centre to joint centre"));
        }

        var last = shaft.Pieces.Count + 1;
        foreach (var (member, k) in (shaft.Line ?? []).Select((member, k) => (member, k)))
            yield return new(part, k == 0 ? Spoken("output's angle") : k == last ? Spoken("pinion's angle") : last == 2 ? Spoken("shaft's angle") : Spoken($"angle{Of(k - 1)}"), member.Side, Spoken("lay an angle gauge on the shaft line"));
        yield return new(part, Spoken("joint rating"), shaft.JointRating, Sheet);
        yield return new(part, Spoken("slip stroke"), shaft.Slip?.Stroke, Spoken("measure the slip joint from fully in to fully out"));
        yield return new(part, Spoken("slip standing out"), shaft.Slip?.Out, Spoken("measure how far the slip joint stands out at ride height"));
    }

    private static IEnumerable<ToldNumber> Tyres(TyreSet? tyres)
    {
        const Position Part = Drivelines.Position.Tyres;
        yield return new(Part, Spoken("circumference"), tyres?.RollingCircumference, Spoken("roll the tyres out with the vehicle standing on them"));
        yield return new(Part, Spoken("loaded radius"), tyres?.LoadedRadius, Spoken("measure from the axle to the ground"));
        yield return new(Part, Spoken("rim width"), tyres?.Wheel?.RimWidth, Spoken("measure between the bead seats, or read it off the rim"));
        yield return new(Part, Spoken("offset"), tyres?.Wheel?.Offset, Spoken("measure from the mounting face to the rim's edge"));
        yield return new(Part, Spoken("wheels' bolt circle"), tyres?.Wheel?.Bolting?.PitchCircle, Spoken("measure between two holes of a wheel, edge to the same edge"));
        yield return new(Part, Spoken("wheels' bore"), tyres?.Wheel?.Bolting?.Bore, Spoken("measure the wheel's centre bore with a caliper"));
    }

    private static IEnumerable<ToldNumber> Vehicle(Driveline driveline)
    {
        yield return new(Drivelines.Position.Speedometer, Spoken("turns the dial wants"), driveline.Speedometer?.Wanted, Spoken("read the small number on the dial"));
        yield return new(null, Spoken("mass"), driveline.Load?.Mass, Spoken("weigh the vehicle as it is driven"));
        yield return new(null, Spoken("front axle mass"), driveline.AxleMasses?.Front, Spoken("stand the front wheels alone on a weighbridge"));
        yield return new(null, Spoken("rear axle mass"), driveline.AxleMasses?.Rear, Spoken("stand the rear wheels alone on a weighbridge"));
        yield return new(null, Spoken("share on driven wheels"), driveline.Load?.DrivenShare, Spoken("weigh the axles one by one"));
        yield return new(null, Spoken("drag area"), driveline.Load?.DragArea, CoastDown);
        yield return new(null, Spoken("rolling resistance"), driveline.Load?.RollingResistance, CoastDown);
        yield return new(null, Spoken("height of the centre of gravity"), driveline.Load?.GravityHeight, Spoken("weigh one axle with the other raised"));
        yield return new(null, Spoken("wheelbase"), driveline.Load?.Wheelbase, Spoken("measure it hub to hub"));
        foreach (var (end, hanging) in ((string, Hanging)[])[(Spoken("front"), driveline.FrontHanging), (Spoken("rear"), driveline.RearHanging)])
        {
            yield return new(null, Spoken($"{end} springs apart"), hanging.Springs, Spoken("measure the springs apart, middle to middle"));
            yield return new(null, Spoken($"{end} springs' angle"), hanging.Pad, Spoken("lay an angle gauge on the spring at its centre bolt"));
        }
    }
}
