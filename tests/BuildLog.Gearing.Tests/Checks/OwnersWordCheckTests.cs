using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tests.Drivelines;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class OwnersWordCheckTests
{
    [Fact]
    public void Where_every_number_has_evidence_one_finding_says_so()
    {
        var finding = Assert.Single(Look(InventedCar.Plain));

        Assert.Equal((Verdict.Fits, Because.Inside), (finding.Verdict, finding.Because));
        Assert.Empty(finding.Between);
    }

    [Fact]
    public void Each_part_that_rests_on_somebodys_word_is_a_watch_with_the_way_to_know_better()
    {
        var box = new Transmission("box", [new("1", new(3.5, Source.MakersData)), new("2", new(2.1, Source.OwnersWord)), new("3", new(1.4, Source.OwnersWord)), new("4", new(1, Source.Assumed))]);
        var findings = Look(InventedCar.Plain with { Transmission = box, RearAxle = new("axle", new(4.10, Source.OwnersWord)) });

        Assert.All(findings, finding => Assert.Equal((Verdict.Watch, Because.UnverifiedLimit), (finding.Verdict, finding.Because)));
        Assert.Equal(
            ["The gearbox: nothing but somebody's word for gear 2, gear 3 (owner's word), gear 4 (assumed).", "The axle: nothing but somebody's word for ratio (owner's word)."],
            findings.Select(finding => finding.Says));
        Assert.Equal(["count the gears: ten output turns in each"], findings[0].Cures);
    }

    [Fact]
    public void Where_no_part_has_a_number_there_is_nothing_to_call_right()
    {
        Assert.Empty(Look(new Driveline { Load = new() { Mass = new(1500, Source.Measured) } }));
        Assert.DoesNotContain(AllChecks.Look(new Driveline { Load = new() { Wheelbase = new(2.5, Source.Measured) } }, OwnersGoals.None), finding => finding.Verdict == Verdict.Fits);
    }

    [Theory]
    [InlineData(Source.TeethCounted)]
    [InlineData(Source.Measured)]
    [InlineData(Source.MakersData)]
    [InlineData(Source.Tag)]
    public void A_tag_or_better_is_more_than_a_word(Source source)
        => Assert.Equal(Verdict.Fits, Assert.Single(Look(InventedCar.Plain with { RearAxle = new("axle", new(4.10, source)) })).Verdict);

    [Theory]
    [InlineData(Position.Engine)]
    [InlineData(Position.Transmission)]
    [InlineData(Position.Overdrive)]
    [InlineData(Position.TransferCase)]
    [InlineData(Position.RearAxle)]
    [InlineData(Position.FrontAxle)]
    [InlineData(Position.Tyres)]
    public void No_part_is_forgotten(Position position)
    {
        var told = new Known(1, Source.OwnersWord);
        var car = position switch
        {
            Position.Engine => new Driveline { Engine = new("engine", null, told) },
            Position.Transmission => new Driveline { Transmission = new("box", [new("1", told)]) },
            Position.Overdrive => new Driveline { Overdrive = new("unit", told) },
            Position.TransferCase => new Driveline { TransferCase = new("case", null, told) },
            Position.RearAxle => new Driveline { RearAxle = new("rear", told) },
            Position.FrontAxle => new Driveline { FrontAxle = new("front", told) },
            _ => new Driveline { Tyres = new("tyres", told, null) },
        };

        Assert.Equal([position], Assert.Single(Look(car)).Between);
    }

    [Fact]
    public void The_vehicles_own_numbers_and_the_new_parts_are_asked_about_too()
    {
        var told = new Known(1, Source.OwnersWord);
        var vehicle = Assert.Single(Look(new Driveline { Load = new() { Mass = told }, AxleMasses = new(told) }));

        Assert.Equal("The vehicle: nothing but somebody's word for mass, front axle mass (owner's word).", vehicle.Says);
        Assert.Empty(vehicle.Between);
        Assert.Equal([Position.Propshaft], Assert.Single(Look(new Driveline { Propshaft = new("shaft", new ShaftPiece()) { JointRating = told } })).Between);
        Assert.Equal([Position.Speedometer], Assert.Single(Look(new Driveline { Speedometer = new("dial", told) })).Between);
    }

    // A vehicle of which everything is somebody's word: each number is named under its part.
    [Fact]
    public void No_number_is_forgotten()
    {
        static Known Told(double value) => new(value, Source.OwnersWord);
        Bolting bolting = new(5, Told(0.1143), Told(0.07));
        var car = new Driveline
        {
            Engine = new("engine", Told(13), Told(75))
            {
                Torque = TorqueCurve.Of([new(20, 180), new(60, 200)], Source.OwnersWord),
                LowestPull = Told(20),
                CriticalAltitude = Told(2000),
                Rear = new() { PilotBore = Told(0.015) },
            },
            Transmission = new("box", [new("1", Told(3.5))])
            {
                Converter = new(true, Told(35), Told(2)),
                TorqueRating = Told(300),
                Front = new() { ClutchRating = Told(300), Spigot = Told(0.015) },
            },
            Overdrive = new("unit", Told(0.8)),
            TransferCase = new("case", Told(1), Told(2.7)),
            RearAxle = new("axle", Told(4.1))
            {
                TorqueRating = Told(3000),
                Hub = bolting,
                HubFaces = Told(1.5),
                Travel = new(Told(0.1), Told(0.08)),
                Perches = Told(1.1),
                PinionToPerch = Told(0.1),
            },
            Propshaft = new("shaft", new ShaftPiece(Told(0.0762), Told(0.0021), Told(1.3)))
            {
                Line = [new(Told(0.05)), new(Told(0.1)), new(Told(0.05))],
                JointRating = Told(1200),
                Slip = new(Told(0.1), Told(0.035)),
            },
            Tyres = new("tyres", Told(2), null) { LoadedRadius = Told(0.3), Wheel = new(Told(0.15), Told(0.02), bolting) },
            Speedometer = new("dial", Told(0.6)),
            Load = new() { Mass = Told(1500), DrivenShare = Told(0.5), DragArea = Told(0.8), RollingResistance = Told(0.014), GravityHeight = Told(0.6), Wheelbase = Told(2.5) },
            AxleMasses = new(Told(700), Told(800)),
            RearHanging = new(Told(1.1), Told(0.02)),
        };

        Assert.Equal(
            [
                "engine: idle, redline, torque, lowest clean pull, charger's critical altitude, pilot bore",
                "gearbox: gear 1, stall speed, stall torque ratio, torque rating, clutch rating, spigot",
                "overdrive: ratio",
                "transfer case: high ratio, low ratio",
                "axle: ratio, torque rating, bolt circle, hub spigot, hub faces, droop, bump, perches apart, pinion against the perches",
                "propshaft: tube diameter, tube wall, length, output's angle, shaft's angle, pinion's angle, joint rating, slip stroke, slip standing out",
                "tyres: circumference, loaded radius, rim width, offset, wheels' bolt circle, wheels' bore",
                "speedometer: turns the dial wants",
                "vehicle: mass, front axle mass, rear axle mass, share on driven wheels, drag area, rolling resistance, height of the centre of gravity, wheelbase, rear springs apart, rear springs' angle",
            ],
            Look(car).Select(finding => finding.Says.Replace("The ", "", StringComparison.Ordinal).Replace("nothing but somebody's word for ", "", StringComparison.Ordinal).Replace(" (owner's word).", "", StringComparison.Ordinal)));
    }

    [Fact]
    public void No_two_numbers_of_a_divided_shaft_are_called_the_same()
    {
        var told = new Known(0.1, Source.OwnersWord);
        ShaftPiece piece = new(told, new(0.002, Source.OwnersWord), new(1, Source.OwnersWord));
        var says = Assert.Single(Look(new Driveline { Propshaft = new("shaft", piece, piece) { Line = [new(told), new(told), new(told), new(told)] } })).Says;

        Assert.EndsWith(
            "tube diameter of piece 1, tube wall of piece 1, length of piece 1, tube diameter of piece 2, tube wall of piece 2, length of piece 2, output's angle, angle of piece 1, angle of piece 2, pinion's angle (owner's word).",
            says, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_no_number_is_known_nothing_is_said()
    {
        Assert.Empty(Look(new Driveline()));
        Assert.Empty(Look(new Driveline { RearAxle = new("axle", null), Engine = new("engine") }));
    }

    private static List<Finding> Look(Driveline driveline) => [.. new OwnersWordCheck().Look(driveline, OwnersGoals.None)];
}
