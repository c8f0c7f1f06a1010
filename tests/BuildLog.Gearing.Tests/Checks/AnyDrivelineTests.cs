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
using BuildLog.Gearing.Tests.RoadLoad;
using BuildLog.Gearing.Tyres;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>Whatever is fitted, known or wanted, the checks answer, and in good form.</summary>
public sealed class AnyDrivelineTests
{
    private static readonly string[] Markings = ["205/65R15 94V", "195R14C 106/104Q", "31x10.50R15LT 109Q", "6.00-16", "P215/75R15 100S", "225/75R16 121/120R", "165/80R13"];

    private static readonly Gen<Driveline> AnyBareCar =
        Gen.Select(Gen.Bool.Array[26], Gen.Double[20, 400], Gen.Double[0.5, 1.5], Gen.Double[2, 7], Gen.Double[0, 0.1]).Select((has, torque, stretch, axle, u) => new Driveline
        {
            Engine = has[0] ? null : new("engine", If(has[1], 13), If(has[2], 80 * (stretch - 0.4)))
            {
                Torque = has[3] ? null : InventedLoad.Curve((900, torque), (2000 * stretch, 1.2 * torque), (5000, torque)),
                LowestPull = If(has[4], 25),
                Rear = !has[20] ? new() : new() { BellHousing = has[21] ? "six" : null, Plate = has[22] ? Plate.Flexplate : null, PilotBore = If(has[23], 0.015 * stretch), Turns = Sense.Clockwise },
            },
            Transmission = has[5] ? null : new("box", [.. ((double[])[3.5, 2.1, 1.4, 1, 0.7]).Take(has[6] ? 5 : 2).Select((ratio, k) => InventedCar.Gear($"{k + 1}", ratio))])
            {
                Untold = has[8] && has[9] ? new(has[23] ? ["6"] : [], has[21], has[24]) : null,
                Converter = has[7] ? null : new Converter(has[8], If(has[9], 35)),
                TorqueRating = If(has[10], 250),
                Front = !has[24] ? new() : new() { BellHousing = has[22] ? "four" : null, Spigot = If(has[21], 0.015), ClutchRating = If(has[23], 250), InputSpline = has[22] ? "26 fine" : null, DiscSpline = "26 coarse" },
                ParkingBrake = has[25] ? Presence.Absent : null,
                ShiftLinkage = has[21] ? Presence.Absent : null,
            },
            Overdrive = has[11] ? null : new("unit", If(has[12], 0.8)),
            TransferCase = has[13] ? null : new("case", If(has[14], 1), If(has[12], 2.5)),
            RearAxle = has[15] ? null : new("axle", If(has[16], InventedCar.Of(axle, u))) { TorqueRating = If(has[10], 2500) },
            Tyres = has[17] ? null : new("tyres", If(has[18], InventedCar.Of(2, 10 * u / 50)), null),
            Load = has[19] ? null : new VehicleLoad { Mass = If(has[1], 1500), DragArea = If(has[2], 0.8), RollingResistance = If(has[4], 0.014), DrivenShare = If(has[7], 0.5) },
        });

    // Some of what hangs on it, from a little that is known to all of it: marked tyres, wheels and hubs, shafts, travel, what feeds the dial, what stands on the axles.
    private static readonly Gen<Driveline> AnyCar =
        Gen.Select(AnyBareCar, Gen.Bool.Array[34], Gen.Int[0, Markings.Length - 1], Gen.Double[0.5, 1.5], Gen.Double[-8, 8]).Select((car, has, marked, stretch, degrees) => car with
        {
            Tyres = car.Tyres is not { } tyres || has[0] ? car.Tyres : tyres with
            {
                Size = TyreSizeText.Read(Markings[marked]).OrRefuse(),
                LoadedRadius = If(has[1], 0.31 * stretch),
                Wheel = has[2] ? null : new(If(has[3], 0.152 * stretch), If(has[4], 0.01 * degrees), has[5] ? null : new(has[6] ? 5 : null, If(has[7], 0.1143), If(has[8], 0.0661), has[9] ? "M12×1.5" : null, has[10] ? Seat.Cone : null)),
                PassengerOnTruck = has[11],
                TwinRear = has[12] && has[13],
                FrontPair = has[14] || has[15] ? null : new("front tyres", If(has[16], 1.9), TyreSizeText.Read("195/65R15 91H").OrRefuse()),
            },
            RearAxle = car.RearAxle is not { } axle ? null : Hung(axle, has, stretch, degrees),
            FrontAxle = has[17] || has[18] ? null : Hung(new("front axle", If(has[19], 4.1 * stretch)), has, 1, -degrees),
            Propshaft = has[20] ? null : Shaft("propshaft", has, stretch, degrees),
            FrontPropshaft = has[20] || has[21] ? null : Shaft("front propshaft", has, 0.7, degrees),
            Speedometer = has[22] ? null : new("dial", If(has[23], 0.6 * stretch), has[24] ? null : has[25] ? SpeedometerDrive.Gears(8, 21) : SpeedometerDrive.Pulses(16)) { Takes = has[26] ? SpeedometerFeed.Cable : null },
            AxleMasses = has[27] ? null : new(If(has[28], 700 * stretch), If(has[29], 750)),
            RearHanging = has[30] ? new() : new(If(has[31], 1.02 * stretch), If(has[32], degrees / 60)),
            Load = car.Load is { } load ? load with { GravityHeight = If(has[33], 0.6 * stretch), Wheelbase = If(has[33], 2.6) } : null,
        });

    private static readonly OwnersGoals All = CheckCase.Cruise("100 km/h", "2600") with
    {
        Hill = HillGoal.Read("5 %", "90 km/h").OrRefuse(),
        HillStart = HillStartGoal.Read("20 %").OrRefuse(),
        TopSpeed = TopSpeedGoal.Read("140 km/h").OrRefuse(),
        OverallLow = OverallLowGoal.Read("30").OrRefuse(),
        TyreDiameter = LengthLimit.ReadTyreDiameter("700 mm").OrRefuse(),
        TyreWidth = LengthLimit.ReadTyreWidth("225 mm").OrRefuse(),
        Track = LengthLimit.ReadTrack("1450 mm").OrRefuse(),
    };

    [Fact]
    public void Every_check_answers_and_says_how_to_go_on()
        => Gen.Select(AnyCar, Gen.Bool).Sample((car, goals) =>
            Assert.All(AllChecks.Look(car, goals ? All : OwnersGoals.None), finding =>
            {
                Assert.NotEmpty(finding.Says);
                Assert.EndsWith(".", finding.Says, StringComparison.Ordinal);
                if (finding.Verdict is Verdict.Open or Verdict.Clash) Assert.NotEmpty(finding.Cures);
                if (finding.Verdict == Verdict.Fits) Assert.Empty(finding.Cures);
                if (finding.Source.Split(';').All(source => source.Contains("common practice", StringComparison.Ordinal))) Assert.NotEqual(Verdict.Clash, finding.Verdict);
                if (finding.Verdict == Verdict.Open) Assert.Null(finding.Value);
            }), iter: 3000);

    [Fact]
    public void Without_goals_and_ratings_nothing_but_the_cruise_and_the_numbers_it_rests_on_is_open()
        => AnyBareCar.Sample(car =>
        {
            var unrated = car with
            {
                Engine = car.Engine is null ? null : car.Engine with { Rear = new() },
                Transmission = car.Transmission is null ? null : new Transmission(car.Transmission.Name, car.Transmission.Gears) { Converter = car.Transmission.Converter },
                RearAxle = car.RearAxle is null ? null : car.RearAxle with { TorqueRating = null },
            };
            Assert.All(AllChecks.Look(unrated, OwnersGoals.None).Where(finding => finding.Verdict == Verdict.Open), finding => Assert.Contains(finding.Check, (string[])["cruise", "ratio", "label", "not-looked-at"]));
        });

    private static Axle Hung(Axle axle, bool[] has, double stretch, double degrees) => axle with
    {
        Hub = has[2] ? null : new(has[4] ? 5 : 4, If(has[5], 0.1143 * (has[6] ? 1 : 1.05)), If(has[7], 0.0661), has[8] ? "M12×1.5" : null),
        HubFaces = If(has[9], 1.48 * stretch),
        Travel = has[10] ? null : new(If(has[11], 0.09), If(has[12], 0.08)),
        Perches = If(has[13], 1.02),
        PinionToPerch = If(has[14], degrees / 60),
        PinionFlange = has[15] ? "flange 4 × 80 mm" : null,
        ParkingBrake = has[16] ? Presence.Fitted : null,
    };

    private static Propshaft Shaft(string name, bool[] has, double stretch, double degrees)
    {
        var piece = new ShaftPiece(If(has[1], 0.0762 * stretch), If(has[3], 0.0021), If(has[5], 1.3 * stretch), has[7] ? Yokes.InLine : has[8] ? Yokes.QuarterTurn : null);
        Inclination[] line = [Lies(has[9], degrees), .. has[10] ? (Inclination[])[Lies(true, 4)] : [Lies(true, 4), Lies(has[11], 5)], Lies(has[12], 3)];
        return new(name, has[10] ? [piece] : [piece, piece])
        {
            Line = has[13] ? null : line,
            JointRating = If(has[14], 900),
            Slip = has[15] ? null : new(If(has[16], 0.09), If(has[17], 0.035)),
            FrontEnd = has[18] ? "flange 4 × 80 mm" : null,
            RearEnd = has[19] ? "flange 4 × 90 mm" : null,
        };
    }

    private static Inclination Lies(bool known, double degrees) => new(If(known, degrees * Math.PI / 180));

    private static Known? If(bool known, Measured value) => known ? new(value, Source.Measured) : null;
}
