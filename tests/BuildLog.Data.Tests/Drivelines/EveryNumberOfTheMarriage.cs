using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using Xunit;

namespace BuildLog.Data.Tests.Drivelines;

/// <summary>What is noted of parts and vehicle reaches the driveline after a restart. Values by hand from the units; u = half the last digit / √3.</summary>
public sealed class EveryNumberOfTheMarriage : IDisposable
{
    private static readonly DateOnly Day = new(2026, 3, 1);

    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Of_the_engine_comes_from_points_or_is_drawn_from_two_peaks()
    {
        var engine = new EngineComponent
        {
            Name = "six",
            TorquePoints = Is(Spec.TorquePoints, "1500:180 Nm; 3000:210 Nm"),
            LowestPull = Is(Spec.LowestPull, "1200 rpm"),
            Induction = Induction.Charged,
        };
        var fitted = Fitted(engine, Position.Engine).Engine!;
        Assert.Equal((2, 210.0, 50.0), (fitted.Torque!.Points.Count, fitted.Torque.PeakTorque.Value, fitted.Torque.StrongestPoint.EngineSpeed));
        Assert.Equal((20.0, Induction.Charged), (fitted.LowestPull!.Value.Value, fitted.Induction));

        test.Shop.Change(engine, e =>
        {
            e.TorquePoints = null;
            (e.PeakTorque, e.PeakTorqueAt) = (Is(Spec.PeakTorque, "210 Nm"), Is(Spec.PeakTorqueAt, "2500"));
            (e.PeakPower, e.PeakPowerAt) = (Is(Spec.PeakPower, "77 kW"), Is(Spec.PeakPowerAt, "4500"));
        });
        var drawn = Driveline().Engine!.Torque!;
        Assert.Equal(Source.Assumed, drawn.Source);
        Assert.Equal(77_000, drawn.PowerAt(4500 / 60.0)!.Value, 1.0);
        Assert.Equal(77_000, drawn.PeakPower.Value, 1e-6);
        Assert.Equal(5L, test.Ask("SELECT count(*) FROM Specs"));
    }

    [Fact]
    public void Of_the_engine_of_which_only_the_peak_of_torque_is_told()
    {
        var engine = new EngineComponent { Name = "six", PeakTorque = Noted.Of(Spec.PeakTorque, "400 Nm", Source.OwnersWord) };
        var fitted = Fitted(engine, Position.Engine).Engine!;
        Assert.Equal((null, 400.0, Source.OwnersWord), (fitted.Torque, fitted.PeakTorque!.Value, fitted.ToldTorque!.Source));

        test.Shop.Change(engine, e => (e.PeakTorqueAt, e.PeakPower, e.PeakPowerAt) = (Is(Spec.PeakTorqueAt, "2500"), Is(Spec.PeakPower, "140 kW"), Is(Spec.PeakPowerAt, "4500")));
        Assert.Null(Driveline().Engine!.ToldTorque);
    }

    [Fact]
    public void Of_gearbox_and_transfer_case()
    {
        var box = new TransmissionComponent { Name = "box", ConverterLocksUp = true, StallSpeed = Is(Spec.StallSpeed, "2100 rpm"), StallTorqueRatio = Is(Spec.StallTorqueRatio, "2.1"), TorqueRating = Is(Spec.TorqueRating, "300 Nm") };
        Assert.Null(Fitted(new TransferCaseComponent { Name = "case", FrontDrive = FrontDrive.Declutch }, Position.TransferCase).Transmission);
        var driveline = Fitted(box, Position.Transmission);
        Assert.Equal((true, 35.0, 2.1), (driveline.Transmission!.Converter!.LocksUp, driveline.Transmission.Converter.StallSpeed!.Value.Value, driveline.Transmission.Converter.StallTorqueRatio!.Value.Value));
        Assert.Equal(300, driveline.Transmission.TorqueRating!.Value.Value);
        Assert.Equal(FrontDrive.Declutch, driveline.TransferCase!.FrontDrive);
    }

    // Teeth are exact whoever counted them: 1 + 18/46. A reverse is as sure as its last digit.
    [Fact]
    public void Of_reverse_and_a_two_speed_axle()
    {
        var reverse = Fitted(new TransmissionComponent { Name = "box", Reverse = Is(Spec.Reverse, "2.20") }, Position.Transmission).Transmission!.Reverse!.Value;
        var step = Fitted(new AxleComponent { Name = "axle", LowStep = Is(Spec.LowStep, "planetary 46/18") }, Position.RearAxle).RearAxle!.LowStep!.Value;

        Assert.Equal(2.20, reverse.Value, 1e-12);
        Assert.Equal(0.005 / Math.Sqrt(3), reverse.StandardUncertainty, 1e-9);
        Assert.Equal(64 / 46.0, step.Value, 1e-12);
        Assert.True(step.IsExact);
    }

    [Fact]
    public void Of_front_wheels_with_a_set_of_their_own()
    {
        Fitted(new WheelSetComponent { Name = "rear", SizeText = "235/75R15" }, Position.Tyres);
        var driveline = Fitted(new WheelSetComponent { Name = "front", SizeText = "205/75R15" }, Position.FrontTyres);

        Assert.Equal(("rear", "front"), (driveline.Tyres!.Name, driveline.Tyres.FrontPair!.Name));
        Assert.Equal("front", driveline.Tyres.On(Position.FrontAxle).Name);
    }

    // Whichever of the two sets was fitted first.
    [Fact]
    public void Of_front_wheels_alone_until_the_rear_ones_are_there()
    {
        var alone = Fitted(new WheelSetComponent { Name = "front", SizeText = "205/75R15" }, Position.FrontTyres);
        Assert.Null(alone.Tyres);
        Assert.Equal("front", alone.LoneFrontTyres!.Name);
        Assert.NotNull(alone.LoneFrontTyres.RollingCircumference);

        var both = Fitted(new WheelSetComponent { Name = "rear", SizeText = "235/75R15" }, Position.Tyres);
        Assert.Equal(("rear", "front"), (both.Tyres!.Name, both.Tyres.FrontPair!.Name));
        Assert.Null(both.LoneFrontTyres);
    }

    [Fact]
    public void Of_axle_and_wheels_with_their_uncertainty()
    {
        var axle = new AxleComponent
        {
            Name = "axle",
            Studs = 5,
            PitchCircle = Is(Spec.PitchCircle, "4.5 in"),
            Bore = Is(Spec.Bore, "70.6 mm"),
            Thread = "1/2-20",
            Seat = Seat.Cone,
            HubFaces = Is(Spec.HubFaces, "1480 mm"),
            TorqueRating = Is(Spec.TorqueRating, "2500 Nm"),
            Droop = Is(Spec.Droop, "90 mm"),
        };
        var wheels = new WheelSetComponent
        {
            Name = "wheels",
            LoadedRadius = Is(Spec.LoadedRadius, "312 mm"),
            RimWidth = Is(Spec.RimWidth, "6 in"),
            Offset = Is(Spec.Offset, "-12 mm ± 1 mm"),
            PitchCircle = Is(Spec.PitchCircle, "114.3 mm"),
            TwinRear = true,
        };
        _ = Fitted(axle, Position.FrontAxle);
        var driveline = Fitted(wheels, Position.Tyres);
        var hub = driveline.FrontAxle!.Hub!;
        Assert.Equal((5, "1/2-20", Seat.Cone), (hub.Studs, hub.Thread, hub.Seat));
        Assert.Equal((0.1143, 0.0), (hub.PitchCircle!.Value.Value, hub.PitchCircle.Value.StandardUncertainty));
        Assert.Equal(0.00005 / Math.Sqrt(3), hub.Bore!.Value.StandardUncertainty, 1e-12);
        Assert.Equal((1.48, 2500, 0.09), (driveline.FrontAxle.HubFaces!.Value.Value, driveline.FrontAxle.TorqueRating!.Value.Value, driveline.FrontAxle.Travel!.Droop!.Value.Value));
        Assert.Null(driveline.FrontAxle.Travel.Bump);

        var tyres = driveline.Tyres!;
        Assert.Equal((true, false), (tyres.TwinRear, tyres.PassengerOnTruck));
        Assert.Equal((0.312, -0.012), (tyres.LoadedRadius!.Value.Value, tyres.Wheel!.Offset!.Value.Value));
        Assert.Equal(0.001, tyres.Wheel.Offset.Value.Expanded95, 1e-6);
        Assert.Equal(0.1524, tyres.Wheel.RimWidth!.Value.Value, 1e-12);
    }

    [Fact]
    public void Of_a_propshaft_of_two_pieces()
    {
        var driveline = Fitted(
            new PropshaftComponent
            {
                Name = "shaft",
                Pieces =
                [
                    new(Is(SpecSheet.ShaftOuter, "76 mm"), Is(SpecSheet.ShaftWall, "2.1 mm"), Is(SpecSheet.ShaftLength, "0.80 m"), Yokes.InLine, Is(SpecSheet.ShaftSide, "3 deg")),
                    new(Length: Is(SpecSheet.ShaftLength, "1.10 m"), Side: Is(SpecSheet.ShaftSide, "6")),
                ],
                OutputSide = Is(Spec.OutputSide, "3"),
                PinionSide = Is(Spec.PinionSide, "-2"),
                PinionPlan = Is(Spec.PinionPlan, "1"),
                JointRating = Is(Spec.JointRating, "900 Nm"),
                SlipStroke = Is(Spec.SlipStroke, "90 mm"),
                SlipOut = Is(Spec.SlipOut, "35 mm"),
            },
            Position.FrontPropshaft);
        Assert.Null(driveline.Propshaft);
        var shaft = driveline.FrontPropshaft!;
        Assert.Equal((0.076, 0.8), (shaft.Pieces[0].Tube!.Outer.Value, shaft.Pieces[0].Tube!.Length.Value));
        Assert.Equal(0.0021, shaft.Pieces[0].Tube!.Wall.Value, 1e-12);
        Assert.Equal((null, 1.1, null), (shaft.Pieces[1].Tube, shaft.Pieces[1].Length!.Value.Value, shaft.Pieces[1].Yokes));
        Assert.Equal([3, 3, 6, -2], shaft.Line!.Select(member => Math.Round(member.Side!.Value.Value * 180 / Math.PI, 9)));
        Assert.Equal(1, shaft.Line![3].Plan!.Value.Value * 180 / Math.PI, 1e-9);
        Assert.Equal((900, 0.09, 0.035), (shaft.JointRating!.Value.Value, shaft.Slip!.Stroke!.Value.Value, shaft.Slip.Out!.Value.Value));
    }

    [Fact]
    public void Of_a_speedometer()
    {
        var meter = Fitted(new SpeedometerComponent { Name = "clock", TurnsWanted = Is(Spec.TurnsWanted, "1000"), Per = OdometerUnit.Miles, DriveTeeth = 8, DrivenTeeth = 20, Pickup = Pickup.GearboxOutput, Correction = Is(Spec.Correction, "0.5") }, Position.Speedometer).Speedometer!;
        Assert.Equal(1000 / 1609.344, meter.Wanted!.Value.Value, 1e-12);
        Assert.Equal((Pickup.GearboxOutput, 0.2), (meter.Drive!.Pickup, meter.Drive.PerTurn.Value));
    }

    [Fact]
    public void What_was_seen_at_the_joints()
    {
        var engine = new EngineComponent { Name = "e", BellHousing = " Corvane six ", Plate = Plate.Flexplate, Starter = StarterSide.Left, Turns = Sense.Anticlockwise, PilotBore = Is(Spec.PilotBore, "15.05 mm") };
        var box = new TransmissionComponent
        {
            Name = "b",
            InputSpline = "26 × 1 in",
            DiscSpline = "10 × 1 in",
            ClutchRating = Is(Spec.ClutchRating, "260 Nm"),
            Spigot = Is(Spec.Spigot, "15.00 mm"),
            Output = "27 splines",
            SpeedometerFeed = SpeedometerFeed.Cable,
            ParkingBrake = Presence.Absent,
            ShiftLinkage = Presence.Fitted,
        };
        var axle = new AxleComponent { Name = "a", PinionFlange = "flange 4 × 80 mm", ParkingBrake = Presence.Fitted, Perches = Is(Spec.Perches, "1020 mm"), PinionToPerch = Is(Spec.PinionToPerch, "3 deg") };
        _ = Fitted(engine, Position.Engine);
        _ = Fitted(box, Position.Transmission);
        var driveline = Fitted(axle, Position.RearAxle);

        Assert.Equal(("Corvane six", Plate.Flexplate, StarterSide.Left, Sense.Anticlockwise), (driveline.Engine!.Rear.BellHousing, driveline.Engine.Rear.Plate, driveline.Engine.Rear.Starter, driveline.Engine.Rear.Turns));
        Assert.Equal(0.01505, driveline.Engine.Rear.PilotBore!.Value.Value, 1e-12);
        var front = driveline.Transmission!.Front;
        Assert.Equal((null, "26 × 1 in", "10 × 1 in", 260.0), (front.BellHousing, front.InputSpline, front.DiscSpline, front.ClutchRating!.Value.Value));
        Assert.Equal(("27 splines", SpeedometerFeed.Cable, Presence.Absent, Presence.Fitted), (driveline.Transmission.Output, driveline.Transmission.SpeedometerFeed, driveline.Transmission.ParkingBrake, driveline.Transmission.ShiftLinkage));
        Assert.Equal(("flange 4 × 80 mm", Presence.Fitted), (driveline.RearAxle!.PinionFlange, driveline.RearAxle.ParkingBrake));
        Assert.Equal(3, driveline.RearAxle.PinionToPerch!.Value.Value * 180 / Math.PI, 1e-9);

        test.Shop.Change(box, b => (b.InputSpline, b.ParkingBrake) = (null, null));
        var changed = Driveline().Transmission!;
        Assert.Equal((null, null, "10 × 1 in"), (changed.Front.InputSpline, changed.ParkingBrake, changed.Front.DiscSpline));
    }

    [Fact]
    public void Of_gears_and_overdrive_from_their_teeth()
    {
        _ = Fitted(new TransmissionComponent { Name = "box", GearTeeth = "29/19 31/14 25/18 1", Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.32", "2.12", "1.00") }, Position.Transmission);
        var driveline = Fitted(new OverdriveComponent { Name = "unit", Teeth = new(78, 22), OverdriveRatio = Noted.Ratio("0.78", Gearing.Ratios.RatioRange.Overdrive, Source.Tag) }, Position.Overdrive);
        var first = driveline.Transmission!.Gears[0];

        // 29/19 · 31/14 = 3.37970.
        Assert.Equal((3, Source.TeethCounted, "29/19 x 31/14", "3.32"), (driveline.Transmission.Gears.Count, first.Ratio.Source, first.Ratio.Says, first.Quoted!.Says));
        Assert.Equal(3.37970, first.Ratio.Value.Value, 1e-5);
        Assert.Equal((0.78, Source.TeethCounted, Source.Tag), (driveline.Overdrive!.Ratio!.Value.Value, driveline.Overdrive.Ratio.Source, driveline.Overdrive.Quoted!.Source));
    }

    [Fact]
    public void Of_gears_that_nobody_wrote_down_but_their_teeth()
        => Assert.Equal(["1", "2"], Fitted(new TransmissionComponent { Name = "box", GearTeeth = "29/19 31/14 1" }, Position.Transmission).Transmission!.Gears.Select(gear => gear.Name));

    // SAE J1349: 1.18 · 99/95 · √(303/298) − 0.18 = 1.05996.
    [Fact]
    public void Of_the_engine_as_read_on_the_dynamometer_is_corrected_to_the_standard_day()
    {
        var engine = new EngineComponent { Name = "six", TorquePoints = Is(Spec.TorquePoints, "1500:180 Nm; 3000:210 Nm; air 95 kPa 30 °C") };

        Assert.Equal(210 * 1.05996, Fitted(engine, Position.Engine).Engine!.Torque!.PeakTorque.Value, 0.01);
        Assert.Throws<RefusedException>(() => Is(Spec.TorquePoints, "1500:180 Nm; 3000:210 Nm; air thin"));
    }

    // 1 + 62/36 = 2.722 exactly; 30/20 · 40/30 = 2; one less 28 % is 0.72 to half a per cent.
    [Fact]
    public void Of_ranges_by_their_teeth_and_of_an_overdrive_by_its_share()
    {
        var low = Fitted(new TransferCaseComponent { Name = "case", Low = Noted.TransferLow("planetary 62/36", Source.TeethCounted) }, Position.TransferCase).TransferCase!.Low!;
        Assert.Equal((1 + (62 / 36.0), true, "planetary 62/36"), (low.Value.Value, low.Value.IsExact, low.Says));
        Assert.Equal(2, Noted.TransferLow("30/20 40/30", Source.TeethCounted).Si, 1e-12);
        Assert.Equal("2.30", Noted.TransferLow("2.30", Source.Tag).Text);

        var unit = Fitted(new OverdriveComponent { Name = "unit", OverdriveRatio = Noted.Overdrive("28 %", Source.Tag) }, Position.Overdrive).Overdrive!.Ratio!;
        Assert.Equal((0.72, "28 %"), (unit.Value.Value, unit.Says));
        Assert.Equal(0.005 / Math.Sqrt(3), unit.Value.StandardUncertainty, 1e-12);
    }

    [Fact]
    public void Of_the_vehicle_which_the_first_screen_reads_too()
    {
        test.Shop.Add(new Vehicle
        {
            Name = "Brindle",
            Mass = Is(Spec.Mass, "1450 kg"),
            FrontAxleMass = Is(Spec.FrontAxleMass, "800 kg"),
            RearAxleMass = Is(Spec.RearAxleMass, "700 kg"),
            BodyClass = "saloon, 1980–95",
            RollingResistance = Is(Spec.RollingResistance, "0.014"),
            Altitude = Is(Spec.Altitude, "1500 m"),
        });
        test.Reopen();
        var read = test.Shop.FindVehicle("Brindle");
        Assert.Equal(("1450 kg", "saloon, 1980–95", null), (read.Mass!.Text, read.BodyClass, read.DragArea));
        test.Shop.Change(read, v => v.Mass = Is(Spec.Mass, "1500 kg"));
        var driveline = Driveline();
        Assert.Equal((1500.0, 0.014, 1500.0), (driveline.Load!.Mass!.Value.Value, driveline.Load.RollingResistance!.Value.Value, driveline.Load.Altitude));

        // Class: 0.35 · 1.95 m². On the driven rear axle 700 of 1500.
        Assert.Equal(0.35 * 1.95, driveline.Load.DragArea!.Value.Value, 1e-12);
        Assert.Equal(7 / 15.0, DrivenWheels.ShareOnTheRoad(driveline)!.Value, 1e-12);
        var mass = test.Shop.DrivelineOn(test.Shop.FindVehicle("Brindle"), Day).Numbers.Single(known => known.Number == "mass as driven");
        Assert.Equal((null, "1500 kg"), (mass.Position, mass.Used.Says));

        // No surer than a weighbridge reads, ± 10 kg rectangular, though it ends in whole kilograms.
        Assert.Equal(10 / Math.Sqrt(3), mass.Used.Value.StandardUncertainty, 1e-9);
        Assert.Equal((800, 700), (driveline.AxleMasses!.Front!.Value.Value, driveline.AxleMasses.Rear!.Value.Value));
    }

    public static readonly TheoryData<Func<Entered>, string> Impossible = new()
    {
        { () => new EngineComponent { Name = "e", TorquePoints = Is(Spec.TorquePoints, "1500-180") }, "'1500-180' is not a torque point: write engine speed, a colon, torque." },
        { () => new EngineComponent { Name = "e", TorquePoints = Is(Spec.TorquePoints, "1500:180 Nm") }, "'1500:180 Nm': a torque curve needs at least two points." },
        { () => new AxleComponent { Name = "a", Studs = 12 }, "A wheel has 3 to 10 studs, not 12." },
        { () => new AxleComponent { Name = "a", HubFaces = Is(Spec.HubFaces, "14 mm") }, "'14 mm' cannot be the hub face to hub face: it lies between 600 and 3000 mm." },
        { () => new TransmissionComponent { Name = "b", StallSpeed = Is(Spec.StallSpeed, "2100") }, "A stall ('2100') is a torque converter's: say whether the converter locks up, or leave the stall out." },
        { () => new PropshaftComponent { Name = "p" }, "A propshaft has one to three pieces, not 0." },
        { () => new PropshaftComponent { Name = "p", Pieces = [new(Is(SpecSheet.ShaftOuter, "50 mm"), Is(SpecSheet.ShaftWall, "30 mm"), Is(SpecSheet.ShaftLength, "1 m"))] }, "The wall of a 50 mm tube is more than 0 and at most half of that, not 30 mm." },
        { () => new SpeedometerComponent { Name = "s", DriveTeeth = 8 }, "Speedometer gears come in pairs: give the teeth of the drive gear and of the driven gear, or neither." },
        { () => new SpeedometerComponent { Name = "s", DriveTeeth = 80, DrivenTeeth = 20 }, "A speedometer drive gear has 1 to 60 teeth, not 80." },
        { () => new SpeedometerComponent { Name = "s", TurnsWanted = Is(Spec.TurnsWanted, "1000") }, "1000 turns over what? Say whether the dial means a kilometre or a mile." },
        { () => new TransmissionComponent { Name = "b", BellHousing = "" }, "For the bell-housing pattern write 1 to 40 characters." },
        { () => new TransmissionComponent { Name = "b", GearTeeth = "29/19 31/14 1", Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.3", "2.1", "1") }, "The teeth are of 2 gears, the ratios of 3: both name every forward gear, or one is left out." },
        { () => new Vehicle { Name = "v", Mass = Is(Spec.Mass, "14 kg") }, "'14 kg' cannot be: a road vehicle weighs 100 kg to 60 t." },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void The_impossible_is_refused_and_nothing_stored(Func<Entered> entry, string sentence)
    {
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(entry()));
        Assert.Equal(sentence, refused.Message);
        Assert.Empty(test.Shop.Parts());
        Assert.Empty(test.Shop.Vehicles());
    }

    private static Noted Is(Spec spec, string text) => Noted.Of(spec, text, spec is Spec.PitchCircle ? Source.MakersData : Source.Measured);

    private static Noted Is(SpecLine line, string text) => Noted.Of(line, text, Source.Measured);

    private Driveline Fitted(Component part, Position position)
    {
        if (test.Shop.Vehicles().Count == 0) test.Vehicle("Brindle");
        test.Shop.Fit(part, test.Shop.FindVehicle("Brindle"), position, Day);
        test.Reopen();
        return Driveline();
    }

    private Driveline Driveline() => test.Shop.DrivelineOn(test.Shop.FindVehicle("Brindle"), Day).Driveline;
}
