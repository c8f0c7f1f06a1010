using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tests.Drivelines;
using BuildLog.Gearing.Tests.RoadLoad;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>Whatever is fitted, known or wanted, the checks answer, and in good form.</summary>
public sealed class AnyDrivelineTests
{
    private static readonly Gen<Driveline> AnyCar =
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

    private static readonly OwnersGoals All = CheckCase.Cruise("100 km/h", "2600") with
    {
        Hill = HillGoal.Read("5 %", "90 km/h").OrRefuse(),
        HillStart = HillStartGoal.Read("20 %").OrRefuse(),
        TopSpeed = TopSpeedGoal.Read("140 km/h").OrRefuse(),
        OverallLow = OverallLowGoal.Read("30").OrRefuse(),
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
                if (finding.Source.Contains("common practice", StringComparison.Ordinal)) Assert.NotEqual(Verdict.Clash, finding.Verdict);
                if (finding.Verdict == Verdict.Open) Assert.Null(finding.Value);
            }), iter: 3000);

    [Fact]
    public void Without_goals_and_ratings_nothing_but_the_cruise_and_the_numbers_it_rests_on_is_open()
        => AnyCar.Sample(car =>
        {
            var unrated = car with
            {
                Engine = car.Engine is null ? null : car.Engine with { Rear = new() },
                Transmission = car.Transmission is null ? null : new Transmission(car.Transmission.Name, car.Transmission.Gears) { Converter = car.Transmission.Converter },
                RearAxle = car.RearAxle is null ? null : car.RearAxle with { TorqueRating = null },
            };
            Assert.All(AllChecks.Look(unrated, OwnersGoals.None).Where(finding => finding.Verdict == Verdict.Open), finding => Assert.Contains(finding.Check, (string[])["cruise", "ratio", "label", "not-looked-at"]));
        });

    private static Known? If(bool known, Measured value) => known ? new(value, Source.Measured) : null;
}
