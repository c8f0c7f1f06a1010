using System.Collections.Concurrent;
using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tyres;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>Whoever types what a cure says is cured: each cure that names a number is put into the vehicle as it is written, and its finding is looked at again.</summary>
public sealed class EveryCureTests
{
    private const string N = @"(?<n>-?\d+(?:\.\d+)?)";
    private const string Range = $"{N}(?: to {N})?";

    /// <summary>What a number of these belongs to is no one part: it is the whole engine against the whole road, or a marking of which there are only whole ones.</summary>
    private static readonly string[] NotOfOnePart = ["hill", "hill-start", "top-speed", "tyre-speed", "tyre-diameter", "tyre-width"];

    private static readonly IReadOnlyList<Put> Puts =
    [
        new(".*", $"^front axle ratio {Range}", (at, typed) => at.Each(typed, ratio => at.Car with { FrontAxle = at.Car.FrontAxle! with { Ratio = Quoted(ratio) } })),
        new("propshaft-half-critical", $"^axle ratio {N} or less, or {N} or more", (at, typed) => at.Each(typed, ratio => at.Car with { RearAxle = at.Car.RearAxle! with { Ratio = Quoted(ratio) } })),
        new("propshaft-half-critical", $"^cruise at {N} km/h or less, or at {N} km/h or more", (at, typed) => typed.Select(speed => at with { Goals = at.Goals with { Cruise = [InventedCar.Goal($"{speed} km/h", "2700")] } })),
        new(".*", $"^axle ratio {Range}", (at, typed) => at.Each(typed, ratio => at.Car with { RearAxle = at.Car.RearAxle! with { Ratio = Quoted(ratio) } })),
        new(".*", $"^tyre rolling circumference {Range} m", (at, typed) => at.Each(typed, metres => at.Car with { Tyres = at.Car.Tyres! with { RollingCircumference = Metres(metres, 1) } })),
        new("cruise-band", $"^an engine whose torque peaks at {Range}", (_, _) => []), // and the goal has to be met with it
        new("gear-steps", $@"^ratio of gear (?<n>\d) {N} or", (at, typed) => [at with { Car = Gear(at.Car, int.Parse(typed[0], CultureInfo.InvariantCulture) - 1, typed[1]) }]),
        new("gear-steps", $"^a gearbox with steps of {N} or less", (at, typed) => at.Each(typed, step => Box(at.Car, box => box with { Gears = [.. box.Gears.Select((gear, k) => gear with { Ratio = InventedCar.Exactly(3.5 / Math.Pow(Number(step), k)) })] }))),
        new(".*", $@"^ratio of (?:top|gear)[^:]*? {Range}(?: or|,|$)", (at, typed) => at.Each(typed, ratio => Gear(at.Car, ^1, ratio))),
        new("overall-low", $"^first gear {Range}", (at, typed) => at.Each(typed, ratio => Gear(at.Car, 0, ratio))),
        new("overall-low", $"^transfer case low {Range}", (at, typed) => at.Each(typed, ratio => at.Car with { TransferCase = at.Car.TransferCase! with { Low = Quoted(ratio) } })),
        new("converter-stall", $"^a converter that stalls at {N} rev/min", (at, typed) => at.Each(typed, rpm => Box(at.Car, box => box with { Converter = box.Converter! with { StallSpeed = InventedShaft.Known(Number(rpm) / 60) } }))),
        new("gearbox-torque", $"^a gearbox rated for {N} N·m", (at, typed) => at.Each(typed, rating => Box(at.Car, box => box with { TorqueRating = Rated(rating) }))),
        new("clutch", $"^a (?:clutch|flexplate) rated for {N} N·m", (at, typed) => at.Each(typed, rating => Box(at.Car, box => box with { Front = box.Front with { ClutchRating = Rated(rating) } }))),
        new("axle-torque", $"^(?:an|a front) axle rated for {N} N·m", (at, typed) => at.Each(typed, rating => at.AnAxle(axle => axle with { TorqueRating = Rated(rating) }))),
        new("transfer-case-torque", $"^a transfer case rated for {N} N·m", (at, typed) => at.Each(typed, rating => at.Car with { TransferCase = at.Car.TransferCase! with { TorqueRating = Rated(rating) } })),
        new("joint-torque", $"^joints rated for {N} N·m", (at, typed) => at.Each(typed, rating => at.AShaft(shaft => Again(shaft, shaft.Pieces[0], joint: Rated(rating))))),
        new("pilot", $"^a pilot (?:bearing|bush) with a bore of {Range}", (at, typed) => at.Each(typed, bore => at.Car with { Engine = at.Car.Engine! with { Rear = at.Car.Engine.Rear with { PilotBore = Metres(bore, 1e3) } } })),
        new("propshaft-speed", $"^{N} mm or less between joint centres", (at, typed) => at.Each(typed, length => at.AShaft(shaft => Again(shaft, new(shaft.Pieces[0].Outer, shaft.Pieces[0].Wall, Metres(length, 1e3), Yokes.InLine))))),
        new("propshaft-speed", $"^a tube of {N} mm or more across", (at, typed) => at.Each(typed, outer => at.AShaft(shaft => Again(shaft, new(Metres(outer, 1e3), shaft.Pieces[0].Wall, shaft.Pieces[0].Length, Yokes.InLine))))),
        new("joint-angles", $"^an angle of {Range}° at the (?:front|rear) joint", (at, typed) => at.Each(typed, angle => at.AShaft(shaft => Again(shaft, shaft.Pieces[0], line: Bent(shaft.Line!, Number(angle)))))),
        new("torsional-residual", $"^both joints at {Range}°", (at, typed) => at.Each(typed, angle => at.AShaft(shaft => Again(shaft, shaft.Pieces[0], line: Bent(shaft.Line!, Number(angle)))))),
        new("torsional-residual", $"^a rear joint angle of {Range}°", (at, typed) => at.Each(typed, angle => at.AShaft(shaft => Again(shaft, shaft.Pieces[0], line: Behind(shaft.Line!, Number(angle)))))),
        new("slip-travel", $"^a slip joint that stands {Range} mm out at ride height, with the stroke it has", (at, typed) => at.Each(typed, stands => at.AShaft(shaft => Again(shaft, shaft.Pieces[0], slip: new(shaft.Slip!.Stroke, Metres(stands, 1e3)))))),
        new("slip-travel", $"^a slip joint that stands {N} mm out at ride height, of a stroke of {N} mm or more", (at, typed) => [at with { Car = at.AShaft(shaft => Again(shaft, shaft.Pieces[0], slip: new(Metres(typed[1], 1e3), Metres(typed[0], 1e3)))) }]),
        new("perches", $"^perches welded on {Range}", (at, typed) => at.Each(typed, apart => at.AnAxle(axle => axle with { Perches = Metres(apart, 1e3) }))),
        new("pinion-angle", $"^wedges of {Range}.* turn the pinion's front end (?:up|down)", (at, typed) => at.Each(typed, wedge => at.AnAxle(axle => axle with { PinionToPerch = Turned(axle.PinionToPerch!, at.Finding.Value!.Value > 0 ? -Number(wedge) : Number(wedge)) }))),
        new("wheel-bolts", $"^wheels with a bolt circle of {Range}", (at, typed) => at.Each(typed, circle => Wheels(at.Car, wheel => wheel with { PitchCircle = InventedShaft.Known(Number(circle) / 1e3) }))),
        new("wheel-bolts", $"^wheels bored to {Range}", (at, typed) => at.Each(typed, bore => Wheels(at.Car, wheel => wheel with { Bore = Metres(bore, 1e3) }))),
        new("wheel-bolts", $@"^rings of .* outside and {Range}", (at, typed) => at.Each(typed, inside => Wheels(at.Car, wheel => wheel with { Bore = Metres(inside, 1e3) }))),
        new("track", $"^wheels with an offset of {N} mm or more", (at, typed) => at.Each(typed, offset => at.Car with { Tyres = at.Car.Tyres! with { Wheel = at.Car.Tyres.Wheel! with { Offset = Metres(offset, 1e3) } } })),
        new("track", $"^an axle of {N} mm or less between its hub faces", (at, typed) => at.Each(typed, faces => at.AnAxle(axle => axle with { HubFaces = Metres(faces, 1e3) }))),
        new("rim-width", $"^rims of {Range} in", (at, typed) => at.Each(typed, width => at.Car with { Tyres = at.Car.Tyres! with { Wheel = at.Car.Tyres.Wheel! with { RimWidth = InventedShaft.Known(Number(width) * 0.0254) } } })),
        new("rim-width", $"^a tyre whose data sheet lists {Range}", (_, _) => []),
        new("tyre-load", $"^tyres of load index {N} or more", (at, typed) => at.Each(typed, index => at.Car with { Tyres = at.Car.Tyres! with { Size = TyreSizeText.Read($"P235/75R15 {index}S").OrRefuse() } })),
        new("tyre-load", $"^an axle load of {N} kg or less", (at, typed) => at.Each(typed, load => at.Car with { AxleMasses = at.Finding.Between.Contains(Position.FrontAxle) ? at.Car.AxleMasses! with { Front = Weighed(at.Car.AxleMasses.Front!, load) } : at.Car.AxleMasses! with { Rear = Weighed(at.Car.AxleMasses.Rear!, load) } })),
        new("speedometer", $"^a driven gear of {N} teeth", (at, typed) => at.Each(typed, teeth => at.Car with { Speedometer = at.Car.Speedometer! with { Drive = SpeedometerDrive.Gears(8, int.Parse(teeth, CultureInfo.InvariantCulture)) } })),
        new("speedometer", $"^speedometer correction factor {Range}", (at, typed) => at.Each(typed, factor => at.Car with { Speedometer = at.Car.Speedometer! with { Drive = SpeedometerDrive.Gears(8, at.Car.Speedometer.Drive!.DrivenTeeth!.Value, correction: Number(factor)) } })),
    ];

    private static readonly Gen<Case> AnyTruck =
        Gen.Select(Gen.Double[0, 1].Array[40], Gen.Bool.Array[4]).Select((at, has) =>
        {
            double Between(int k, double low, double high) => low + (at[k] * (high - low));
            Measured About(int k, double low, double high, double mostU, string name) => InventedCar.Of(Between(k, low, high), mostU * at[39 - k], name, _ => $"measure the {name}");
            Known Found(int k, double low, double high, double mostU, string name) => InventedShaft.Known(About(k, low, high, mostU, name));

            var whole = InventedTruck.Whole;
            var shaft = Again(whole.Propshaft!, new(Found(0, 0.045, 0.08, 0.0002, "tube"), Found(1, 0.0015, 0.003, 0.0001, "wall"), Found(2, 0.9, 1.6, 0.002, "length"), Yokes.InLine),
                joint: Rated(Text(Between(3, 300, 3000), 0)), slip: new(Found(4, 0.05, 0.2, 0.001, "stroke"), Found(5, 0.01, 0.06, 0.001, "slip")),
                line: [Slope(6, 0, 5, "output"), Slope(7, 2, 9, "shaft"), Slope(8, 0, 5, "pinion")]);
            var circle = has[0] ? 0.1397 : Between(9, 0.13, 0.14);
            var hub = new Bolting(6, InventedShaft.Known(0.1397), Found(10, 0.1, 0.11, 0.00005, "spigot"), "M12×1.5", Seat.Cone);
            var axle = new Axle("axle", Found(11, 3, 5, 0.03, "axle ratio"))
            {
                Hub = hub,
                HubFaces = Found(12, 1.35, 1.55, 0.002, "faces"),
                Travel = new(InventedShaft.Known(0.1), InventedShaft.Known(0.08)),
                TorqueRating = Rated(Text(Between(13, 2000, 9000), 0)),
                Perches = Found(14, 1.0, 1.03, 0.0005, "perches"),
                PinionToPerch = Slope(15, -3, 3, "pinion to perch").Side,
            };
            return new Case(
                whole with
                {
                    Engine = new("engine", InventedShaft.Known(13), InventedShaft.Known(Between(16, 4000, 6000) / 60))
                    {
                        Torque = TorqueCurve.Of([new(1000 / 60.0, Between(17, 100, 300)), new(2500 / 60.0, Between(17, 130, 390)), new(4500 / 60.0, Between(17, 105, 300))], Source.Measured, 0.05 * at[18]),
                        Rear = new() { PilotBore = Found(19, 0.0149, 0.0154, 0.00001, "pilot") },
                    },
                    Transmission = new("box", [Gear("1", Found(20, 3, 4, 0.01, "first")), Gear("2", InventedShaft.Known(2.1)), Gear("3", InventedShaft.Known(1.4)), Gear("4", Found(21, 0.8, 1, 0.004, "fourth"))])
                    {
                        Converter = has[1] ? new Converter(false, InventedShaft.Known(Between(22, 1800, 3000) / 60)) : null,
                        TorqueRating = Rated(Text(Between(23, 150, 400), 0)),
                        Front = new() { ClutchRating = Rated(Text(Between(24, 120, 450), 0)), Spigot = Found(25, 0.0149, 0.0151, 0.00001, "spigot of the box") },
                    },
                    TransferCase = whole.TransferCase! with { Low = Quoted(Text(Between(26, 1.9, 3), 2)), FrontDrive = FrontDrive.Declutch, TorqueRating = Rated(Text(Between(3, 300, 3000), 0)) },
                    Propshaft = shaft,
                    FrontPropshaft = null,
                    RearAxle = axle,
                    FrontAxle = axle with { Ratio = has[2] ? axle.Ratio : Found(27, 3, 5, 0.02, "front axle ratio"), TorqueRating = null },
                    Tyres = whole.Tyres! with
                    {
                        RollingCircumference = Found(28, 2.0, 2.5, 0.02, "roll-out"),
                        Wheel = new(InventedShaft.Known(Math.Round(Between(29, 8, 20)) / 2 * 0.0254), Found(30, -0.04, 0.04, 0.0005, "offset"), hub with { PitchCircle = InventedShaft.Known(circle), Bore = Found(31, 0.098, 0.125, 0.00005, "bore") }),
                    },
                    AxleMasses = new(Found(32, 600, 1700, 10, "front mass"), Found(33, 600, 1700, 10, "rear mass")),
                    RearHanging = new(Found(34, 1.0, 1.03, 0.0005, "springs"), Slope(35, -2, 2, "pad").Side),
                    Load = has[3] ? null : new VehicleLoad { Mass = Found(36, 1200, 2600, 20, "mass"), DragArea = InventedShaft.Known(1.0), RollingResistance = InventedShaft.Known(0.014), DrivenShare = InventedShaft.Known(0.5) },
                    Speedometer = whole.Speedometer! with { Drive = SpeedometerDrive.Gears(8, (int)Between(37, 10, 40)) },
                },
                InventedTruck.Goals with { OverallLow = OverallLowGoal.Read(Text(Between(38, 25, 60), 0)).OrRefuse() },
                null!);

            // Nobody reads an angle gauge closer than to half a tenth.
            Inclination Slope(int k, double low, double high, string name) => new(InventedShaft.Known(InventedCar.Of(Between(k, low, high), 0.03 + (0.05 * at[39 - k]), name, _ => $"measure the {name}") * InventedShaft.Degree));
        });

    [Fact]
    public void What_a_cure_says_cures_when_it_is_typed()
    {
        var uncured = new ConcurrentDictionary<string, string>();
        var walked = new ConcurrentDictionary<Put, bool>();
        AnyTruck.Sample(truck =>
        {
            foreach (var check in AllChecks.List.Where(check => !NotOfOnePart.Contains(check.Id)))
            {
                var findings = check.Look(truck.Car, truck.Goals).ToList();
                for (var k = 0; k < findings.Count; k++)
                {
                    if (findings[k].Verdict is not (Verdict.Clash or Verdict.Watch)) continue;
                    foreach (var says in findings[k].Cures.Where(cure => cure.Any(char.IsDigit)).SelectMany(cure => Uncured(truck with { Finding = findings[k] }, check, k, cure, walked)))
                        uncured.TryAdd(check.Id, says);
                }
            }
        }, iter: 3000);

        Assert.True(uncured.IsEmpty, string.Join(Environment.NewLine, uncured));
        Assert.Empty(Puts.Except(walked.Keys).Select(put => put.Says));
    }

    private static IEnumerable<string> Uncured(Case at, ICheck check, int k, string cure, ConcurrentDictionary<Put, bool> walked)
    {
        if (Puts.FirstOrDefault(put => Regex.IsMatch(check.Id, $"^{put.Check}$") && Regex.IsMatch(cure, put.Says)) is not { } put) return [$"nobody puts in \"{cure}\" here yet"];

        walked[put] = true;
        var isSure = !cure.Contains("though not surely", StringComparison.Ordinal) && !cure.Contains("tried on by hand", StringComparison.Ordinal);
        return put.In(at, [.. Regex.Match(cure, put.Says).Groups["n"].Captures.Select(number => number.Value)])
            .Select(cured => check.Look(cured.Car, cured.Goals).ElementAtOrDefault(k))
            .Where(again => again is not null && (isSure ? again.Verdict != Verdict.Fits : again.Verdict == Verdict.Clash))
            .Select(again => $"{at.Finding.Says} Cure: {cure}. Again {again!.Verdict}: {again.Says}");
    }

    private sealed record Put(string Check, string Says, Func<Case, IReadOnlyList<string>, IEnumerable<Case>> In);

    private sealed record Case(Driveline Car, OwnersGoals Goals, Finding Finding)
    {
        public IEnumerable<Case> Each(IReadOnlyList<string> typed, Func<string, Driveline> put) => typed.Select(number => this with { Car = put(number) });

        public Driveline AShaft(Func<Propshaft, Propshaft> put) => Car with { Propshaft = put(Car.Propshaft!) };

        public Driveline AnAxle(Func<Axle, Axle> put) => Finding.Between.Contains(Position.FrontAxle) && !Finding.Between.Contains(Position.RearAxle)
            ? Car with { FrontAxle = put(Car.FrontAxle!) }
            : Car with { RearAxle = put(Car.RearAxle!) };
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Text(double value, int places) => value.ToString($"F{places}", CultureInfo.InvariantCulture);

    // As the record reads it: a ratio to half its last digit, a rating as it stands, what is measured to half its last digit.
    private static Known Quoted(string ratio) => new(new BuildLog.Gearing.Ratios.QuotedRatio(Number(ratio), Half(ratio), ratio).ToMeasured("typed"), Source.MakersData, ratio);

    private static Known Rated(string newtonMetres) => new(Number(newtonMetres), Source.MakersData);

    private static Known Metres(string text, double inAMetre) => InventedShaft.Known(Measured.From(Number(text) / inAMetre, Input.Rectangular("typed", Half(text) / inAMetre, new Evidence("typed"))));

    private static Known Weighed(Known now, string kilograms) => now with { Value = now.Value - now.Value.Value + Number(kilograms) };

    private static double Half(string text) => 0.5 * Math.Pow(10, text.Contains('.', StringComparison.Ordinal) ? text.IndexOf('.', StringComparison.Ordinal) + 1 - text.Length : 0);

    private static Known Turned(Known angle, double degrees) => angle with { Value = angle.Value + (degrees * InventedShaft.Degree) };

    private static Gear Gear(string name, Known ratio) => new(name, ratio);

    private static Driveline Gear(Driveline car, Index gear, string ratio) => Box(car, box =>
    {
        List<Gear> gears = [.. box.Gears];
        gears[gear] = gears[gear] with { Ratio = Quoted(ratio) };
        return box with { Gears = gears };
    });

    private static Driveline Box(Driveline car, Func<Transmission, Transmission> put) => car with { Transmission = put(car.Transmission!) };

    private static Driveline Wheels(Driveline car, Func<Bolting, Bolting> put) => car with { Tyres = car.Tyres! with { Wheel = car.Tyres.Wheel! with { Bolting = put(car.Tyres.Wheel.Bolting!) } } };

    // The output stays, and the shaft lies so that both its joints work at this angle, known as well as they are now.
    private static IReadOnlyList<Inclination> Bent(IReadOnlyList<Inclination> line, double degrees)
    {
        var output = line[0].Side!.Value.Value;
        Inclination At(int k, double angle) => new(InventedShaft.Known(line[k].Side!.Value - line[k].Side!.Value.Value + angle));
        return [line[0], At(1, output + (degrees * InventedShaft.Degree)), At(2, output)];
    }

    // Output and shaft stay; the pinion is turned to this angle, known as well as it is now.
    private static IReadOnlyList<Inclination> Behind(IReadOnlyList<Inclination> line, double degrees)
    {
        var (shaft, pinion) = (line[1].Side!.Value.Value, line[2].Side!.Value);
        return [line[0], line[1], new(InventedShaft.Known(pinion - pinion.Value + shaft - ((pinion.Value <= shaft ? 1 : -1) * degrees * InventedShaft.Degree)))];
    }

    private static Propshaft Again(Propshaft shaft, ShaftPiece piece, Known? joint = null, SlipJoint? slip = null, IReadOnlyList<Inclination>? line = null) => new(shaft.Name, piece)
    {
        Line = line ?? shaft.Line,
        JointRating = joint ?? shaft.JointRating,
        Slip = slip ?? shaft.Slip,
    };
}
