using System.Reflection;
using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.Data.Plans;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.DemoData;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Plans;

/// <summary>Every number that a check can read is tried in a what-if; one that nobody thought of turns this red.</summary>
public sealed class EverythingIsTriedTests : IDisposable
{
    private static readonly Dictionary<Wish, string> OfTheVehicle = new()
    {
        [Wish.Mass] = "2150 kg",
        [Wish.DrivenShare] = "57 %",
        [Wish.FrontAxleMass] = "810 kg",
        [Wish.RearAxleMass] = "930 kg",
        [Wish.DragArea] = "1.31 m²",
        [Wish.RollingResistance] = "0.019",
        [Wish.Altitude] = "1870 m",
        [Wish.GravityHeight] = "710 mm",
        [Wish.Wheelbase] = "2345 mm",
        [Wish.FrontSprings] = "777 mm",
        [Wish.FrontPad] = "1.7 deg",
        [Wish.RearSprings] = "1033 mm",
        [Wish.RearPad] = "2.3 deg",
        [Wish.Cruise] = "97 km/h at 2410 rpm ± 110 rpm in 3",
        [Wish.Hill] = "7 % at 63 km/h in 3",
        [Wish.TopSpeed] = "141 km/h",
        [Wish.HillStart] = "33 %",
        [Wish.OverallLow] = "47",
        [Wish.TyreDiameter] = "811 mm",
        [Wish.TyreWidth] = "233 mm",
        [Wish.Track] = "1497 mm",
    };

    private static readonly Dictionary<string, (Position Position, string Text)> OfParts = new()
    {
        ["Engine.Idle"] = (Position.Engine, "idle 640 rpm"),
        ["Engine.Redline"] = (Position.Engine, "5130 rpm"),
        ["Engine.LowestPull"] = (Position.Engine, "lowest clean pull 1340 rpm"),
        ["Engine.CriticalAltitude"] = (Position.Engine, "charger's critical altitude 2100 m"),
        ["EngineRear.PilotBore"] = (Position.Engine, "pilot bore 15.7 mm"),
        ["Converter.Slip"] = (Position.Transmission, "slip 3.3 %"),
        ["Converter.StallSpeed"] = (Position.Transmission, "stall 2130 rpm"),
        ["Converter.StallTorqueRatio"] = (Position.Transmission, "stall torque ratio 2.3"),
        ["Gear.Ratio"] = (Position.Transmission, "3.17 2.03 1.37 1.00"),
        ["Transmission.TorqueRating"] = (Position.Transmission, "torque rating 317 Nm"),
        ["Transmission.Reverse"] = (Position.Transmission, "reverse ratio 2.97"),
        ["GearboxFront.Spigot"] = (Position.Transmission, "spigot 15.3 mm"),
        ["GearboxFront.ClutchRating"] = (Position.Transmission, "clutch rating 307 Nm"),
        ["Overdrive.Ratio"] = (Position.Overdrive, "0.77"),
        ["TransferCase.High"] = (Position.TransferCase, "high 1.07"),
        ["TransferCase.Low"] = (Position.TransferCase, "low 2.17"),
        ["TransferCase.TorqueRating"] = (Position.TransferCase, "torque rating 1177 Nm"),
        ["ShaftPiece.Outer"] = (Position.Propshaft, "tube 71 mm"),
        ["ShaftPiece.Wall"] = (Position.Propshaft, "wall 2.3 mm"),
        ["ShaftPiece.Length"] = (Position.Propshaft, "length 1.17 m"),
        ["Propshaft.JointRating"] = (Position.Propshaft, "joint 877 Nm"),
        ["SlipJoint.Stroke"] = (Position.Propshaft, "stroke 87 mm"),
        ["SlipJoint.Out"] = (Position.Propshaft, "out 37 mm"),
        ["Inclination.Side"] = (Position.Propshaft, "angles 3.3 5.7 3.1"),
        ["Inclination.Plan"] = (Position.Propshaft, "above 0.3 1.7 0.1"),
        ["Axle.Ratio"] = (Position.RearAxle, "3.37"),
        ["Axle.HubReduction"] = (Position.RearAxle, "hub reduction 1.97"),
        ["Axle.LowStep"] = (Position.RearAxle, "low over high of a two-speed axle 1.37"),
        ["Axle.TorqueRating"] = (Position.RearAxle, "torque rating 3170 Nm"),
        ["Axle.HubFaces"] = (Position.RearAxle, "hub face to hub face 1477 mm"),
        ["Axle.Perches"] = (Position.RearAxle, "perches apart 1017 mm"),
        ["Axle.PinionToPerch"] = (Position.RearAxle, "pinion against the perches 3.7 deg"),
        ["WheelTravel.Droop"] = (Position.RearAxle, "droop 93 mm"),
        ["WheelTravel.Bump"] = (Position.RearAxle, "bump 83 mm"),
        ["Bolting.PitchCircle"] = (Position.RearAxle, "bolt circle 117.3 mm"),
        ["Bolting.Bore"] = (Position.RearAxle, "centre bore 67.3 mm"),
        ["TyreSet.RollingCircumference"] = (Position.Tyres, "2.13 m"),
        ["TyreSet.LoadedRadius"] = (Position.Tyres, "loaded radius 317 mm"),
        ["Wheel.RimWidth"] = (Position.Tyres, "rim width 6.5 in"),
        ["Wheel.Offset"] = (Position.Tyres, "wheel offset 23 mm"),
        ["Speedometer.Wanted"] = (Position.Speedometer, "dial 977 per km"),
    };

    private readonly string path = DemoShop.CreateFreshCopy();
    private readonly Shop shop;
    private readonly VehicleOnBench haldor;

    public EverythingIsTriedTests()
    {
        shop = ShopFile.Open(path);
        haldor = VehicleOnBench.Read(shop, shop.FindVehicle("Haldor"), new(2026, 5, 20));
    }

    public void Dispose()
    {
        shop.Dispose();
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    public static TheoryData<string> Parts => [.. OfParts.Keys];

    public static TheoryData<Wish> Wishes => [.. WishSheet.All];

    // By the names of the properties: whoever adds a number to a vehicle, a goal or a part finds his way here. What is only quoted of an axle, and what was
    // rolled of a loose wheel, nobody types.
    [Fact]
    public void Every_number_of_vehicle_goals_and_parts_is_among_them()
    {
        var wishes = Enum.GetNames<Wish>().Order().ToList();
        Assert.Equal(wishes, WishSheet.All.Select(wish => wish.ToString()).Order());
        Assert.Equal(
            wishes,
            typeof(Vehicle).GetProperties().Where(number => number.PropertyType == typeof(Noted)).Concat(typeof(OwnersGoals).GetProperties(BindingFlags.Public | BindingFlags.Instance)).Select(each => each.Name).Order());

        Assert.Equal(
            OfParts.Keys.Order(),
            PartsIn(typeof(Driveline)).Distinct().SelectMany(kind => kind.GetProperties().Where(number => number.PropertyType == typeof(Known) && number.Name is not (nameof(Axle.Quoted) or nameof(TyreSet.FreeCircumference))).Select(number => $"{kind.Name}.{number.Name}")).Order());
    }

    [Theory]
    [MemberData(nameof(Parts))]
    public void A_number_of_a_part_is_what_was_typed(string number)
    {
        var (position, text) = OfParts[number];
        var before = haldor.Driveline;

        var after = PlannedDriveline.Read(before, position, text).OrRefuse();

        Assert.NotEqual(Values(before, number), Values(after, number));
    }

    [Theory]
    [MemberData(nameof(Wishes))]
    public void A_number_of_the_vehicle_or_a_wish_changes_what_is_judged(Wish wish)
    {
        var after = new TriedWishes([new(wish, OfTheVehicle[wish])]).On(haldor);

        Assert.NotEqual((haldor.Driveline.Load, haldor.Driveline.AxleMasses, haldor.Driveline.FrontHanging, haldor.Driveline.RearHanging, haldor.Goals), (after.Driveline.Load, after.Driveline.AxleMasses, after.Driveline.FrontHanging, after.Driveline.RearHanging, after.Goals));
        Assert.NotNull(wish.Refuses("much"));
    }

    // The names of the command are those of the record, with strokes.
    [Fact]
    public void The_command_takes_them_all_at_once_and_a_plan_keeps_every_one()
    {
        shop.Dispose();
        string Word(Wish wish) => string.Concat(wish.ToString().Select((letter, k) => char.IsUpper(letter) ? $"{(k > 0 ? "-" : "")}{char.ToLowerInvariant(letter)}" : $"{letter}"));

        var said = Said.By(["what-if", "Haldor", .. WishSheet.All.SelectMany(wish => (string[])["--set", $"{Word(wish)}={OfTheVehicle[wish]}"]), "--keep", "all of it", "--database", path]);

        Assert.Equal(0, said.ExitCode);
        using var kept = ShopFile.Open(path);
        Assert.Equal(WishSheet.All.Order().Select(wish => new PlannedWish(wish, OfTheVehicle[wish])), Assert.Single(kept.Plans(kept.FindVehicle("Haldor"))).Wishes);
    }

    // 4.10 through a hub of 2.00 is 8.20; 8.20 of which the hub is 2.00 through one of 1.50 is 6.15.
    [Fact]
    public void A_hub_reduction_turns_the_gears_that_are_there_or_those_typed_beside_it()
    {
        var car = new Driveline { RearAxle = new Axle("own", new(8.20, Source.TeethCounted)) { HubReduction = new(2.00, Source.MakersData) } };

        Axle Tried(string text) => PlannedDriveline.Read(car, Position.RearAxle, text).OrRefuse().RearAxle!;

        Assert.Equal(6.15, Tried("hub reduction 1.50").Ratio!.Value.Value, 1e-9);
        Assert.Equal(4.65, Tried("3.10; hub reduction 1.50").Ratio!.Value.Value, 1e-9);
        Assert.Equal(1.50, Tried("3.10; hub reduction 1.50").HubReduction!.Value.Value, 1e-9);
        Assert.Equal(3.10, Tried("3.10").Ratio!.Value.Value, 1e-9);
    }

    // 600 and 400 kg of 1000: 1200 and 800 of 2000; with 70 % on the driven rear axle 300 and 700.
    [Fact]
    public void Weighed_axles_carry_another_mass_or_share_between_them()
    {
        var car = new Trial(new Driveline { RearAxle = new("rear", null), AxleMasses = new(new(600, Source.Measured), new(400, Source.Measured)) }, OwnersGoals.None);

        (double, double) Carried(Wish wish, string text)
            => wish.Line().Put(car, text).Driveline.AxleMasses is { Front.Value.Value: var front, Rear.Value.Value: var rear } ? (Math.Round(front, 6), Math.Round(rear, 6)) : default;

        Assert.Equal((1200, 800), Carried(Wish.Mass, "2000 kg"));
        Assert.Equal((300, 700), Carried(Wish.DrivenShare, "70 %"));
        Assert.Equal((650, 400), Carried(Wish.FrontAxleMass, "650 kg"));
    }

    [Fact]
    public void Any_part_is_gone_without_and_the_front_wheels_have_tyres_of_their_own()
    {
        Assert.Null(PlannedDriveline.Read(haldor.Driveline, Position.FrontAxle, "none").OrRefuse().FrontAxle);

        var apart = PlannedDriveline.Read(haldor.Driveline, Position.FrontTyres, "185/65R15").OrRefuse();
        Assert.Equal(haldor.Driveline.Tyres, apart.Tyres! with { FrontPair = haldor.Driveline.Tyres!.FrontPair });
        Assert.StartsWith("185/65", apart.Tyres.FrontPair!.Size!.Designation, StringComparison.Ordinal);
        Assert.Null(PlannedDriveline.Read(apart, Position.FrontTyres, "none").OrRefuse().Tyres!.FrontPair);
    }

    private static IReadOnlyList<double> Values(object? part, string number)
    {
        if (part is null or string || part.GetType() is { IsPrimitive: true } or { IsEnum: true }) return [];
        if (part is System.Collections.IEnumerable several) return [.. several.Cast<object?>().SelectMany(each => Values(each, number))];
        if (part.GetType().Namespace?.StartsWith("BuildLog.Gearing", StringComparison.Ordinal) != true || part is Known or Measured) return [];

        return [.. part.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(each => each.GetIndexParameters().Length == 0 && part is not Driveline || PositionsOf(each)).SelectMany(each =>
            $"{part.GetType().Name}.{each.Name}" == number && each.GetValue(part) is Known known ? [known.Value.Value] : IsPart(each.PropertyType) ? Values(each.GetValue(part), number) : [])];
    }

    // The parts of a driveline and what they are made of; a set of tyres may hold another.
    private static IEnumerable<Type> PartsIn(Type whole)
        => whole.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(each => whole != typeof(Driveline) || PositionsOf(each))
            .Select(each => each.PropertyType.IsGenericType ? each.PropertyType.GetGenericArguments()[0] : each.PropertyType)
            .Where(type => type != whole && !type.IsEnum && IsPart(type))
            .SelectMany(type => PartsIn(type).Prepend(type));

    private static bool IsPart(Type type) => type != typeof(Known) && (type.Namespace is "BuildLog.Gearing.Drivelines" or "BuildLog.Gearing.Engines" or "BuildLog.Gearing.Propshafts" or "BuildLog.Gearing.RunningGear" or "BuildLog.Gearing.Speedometers" || type.IsGenericType);

    private static bool PositionsOf(PropertyInfo property) => Enum.TryParse<Position>(property.Name, out _);
}
