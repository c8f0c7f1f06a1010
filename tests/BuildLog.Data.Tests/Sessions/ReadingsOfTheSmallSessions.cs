using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Languages;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using Xunit;

namespace BuildLog.Data.Tests.Sessions;

/// <summary>Loaded radius, bolt circle, weighbridge, shaft angles, teeth and speedometer run: readings are kept, and the driveline rests on them.</summary>
public sealed class ReadingsOfTheSmallSessions : IDisposable
{
    private static readonly DateOnly May3 = new(2026, 5, 3);

    private readonly TestShop test = new();
    private readonly Vehicle vehicle;
    private readonly AxleComponent axle;
    private readonly WheelSetComponent wheels;
    private readonly PropshaftComponent shaft;

    public ReadingsOfTheSmallSessions()
    {
        vehicle = test.Vehicle("Brindle");
        axle = test.Axle("Harrow axle", "3.90");
        wheels = test.Wheels();
        shaft = test.Shop.Add(new PropshaftComponent { Name = "shaft", Pieces = [new()] });
        test.Shop.Fit(axle, vehicle, Position.RearAxle, new(2026, 1, 1));
        test.Shop.Fit(wheels, vehicle, Position.Tyres, new(2026, 1, 1));
        test.Shop.Fit(shaft, vehicle, Position.Propshaft, new(2026, 1, 1));
    }

    private DrivelineOf Now => new(test.Shop.DrivelineOn(vehicle, May3));

    public void Dispose() => test.Dispose();

    [Fact]
    public void Survive_a_restart_letter_by_letter()
    {
        Session[] entered =
        [
            new TeethSession(axle, vehicle) { Date = May3, Readings = ["41/10", "41 : 10"] },
            new LoadedRadiusSession(wheels, vehicle) { Date = May3, Readings = ["12 1/4 in", "312,0"], Tape = "1/16 in" },
            new BoltCircleSession(axle, vehicle) { Date = May3, Readings = ["67.2 mm"], Studs = 5, Between = Chord.Adjacent, Tape = "0.05 mm" },
            new ShaftAnglesSession(shaft, vehicle) { Date = May3, Readings = ["output side 3.5 deg", "Shaft  side 5", "pinion side 3°", "pinion above -1 deg"] },
            new WeighbridgeSession(vehicle) { Date = May3, Readings = ["front 700 kg", "REAR 1650 lb"], Step = "10 kg", Helper = "Odo" },
            new SpeedometerRunSession(vehicle) { Date = May3, Readings = ["10 km: 10.4 km", "5 mi:5.2 mi"], Tape = "20 m", Step = "0.1 mi" },
        ];
        foreach (var session in entered) test.Shop.Add(session);
        test.Reopen();

        var kept = test.Shop.Sessions(vehicle).ToDictionary(session => session.Method.Text);
        Assert.Equal(entered.Select(session => session.Method.Text).Order(), kept.Keys.Order());
        Assert.All(entered, session => Assert.Equal(session.Readings, kept[session.Method].Readings));
        Assert.Equal(("Brindle", "Odo", "10 kg"), (kept["weighbridge"].Subject, kept["weighbridge"].Helper, ((WeighbridgeSession)kept["weighbridge"]).Step));
        Assert.Equal(("20 m", "0.1 mi"), (((SpeedometerRunSession)kept["speedometer run"]).Tape, ((SpeedometerRunSession)kept["speedometer run"]).Step));
        Assert.Equal((5, Chord.Adjacent, "0.05 mm"), kept["bolt circle"] is BoltCircleSession circle ? (circle.Studs, circle.Between, circle.Tape) : default);
    }

    [Fact]
    public void Are_told_with_their_units_in_the_marks_of_the_language()
    {
        using var spoken = Language.Dutch.Speak();

        Assert.Equal(["312,5 mm", "12 1/4 in"], new LoadedRadiusSession(wheels) { Readings = ["312.5", "12 1/4 in"] }.ReadingsInWords);
        Assert.Equal(["67,2 mm"], new BoltCircleSession(axle) { Readings = ["67.2"] }.ReadingsInWords);
        Assert.Equal(["voor 870 kg", "achter 1650,5 lb"], new WeighbridgeSession(vehicle) { Readings = ["front 870", "REAR 1650.5 lb"] }.ReadingsInWords);
        Assert.Equal(["uitgang van opzij 3,5°"], new ShaftAnglesSession(shaft) { Readings = ["output side 3.5"] }.ReadingsInWords);
        Assert.Equal(["10 km: 10,4 km"], new SpeedometerRunSession(vehicle) { Readings = ["10 km: 10.4 km"] }.ReadingsInWords);
        Assert.Equal(["41/10"], new TeethSession(axle) { Readings = ["41/10"] }.ReadingsInWords);
    }

    // 41/10 = 4.10 against a stated 3.90.
    [Fact]
    public void Of_teeth_are_the_axles_ratio_until_the_session_is_struck()
    {
        var session = test.Shop.Add(new TeethSession(axle, vehicle) { Date = May3, Readings = ["41/10", "41/10"] });
        Assert.Equal((4.1, Source.TeethCounted, "3.90"), (Now.Number("ratio").Used.Value.Value, Now.Number("ratio").Used.Source, Assert.Single(Now.Number("ratio").PassedOver).Says));
        Assert.Equal(session.Uid, Now.Number("ratio").Session!.Uid);

        test.Shop.Remove(session);
        Assert.Equal("3.90", Now.Number("ratio").Used.Says);
        test.Shop.Undo();
        Assert.Equal(4.1, Now.Number("ratio").Used.Value.Value, 1e-12);
    }

    // 67.2 / sin 36° = 114.33 mm; the mean of 310 and 312 mm is 311.
    [Fact]
    public void Of_wheels_are_their_bolts_and_their_radius()
    {
        test.Shop.Add(new BoltCircleSession(wheels, vehicle) { Date = May3, Readings = ["67.2"], Studs = 5, Between = Chord.Adjacent });
        test.Shop.Add(new LoadedRadiusSession(wheels, vehicle) { Date = May3, Readings = ["310", "312"] });

        var tyres = Now.Driveline.Tyres!;
        Assert.Equal(5, tyres.Wheel!.Bolting!.Studs);
        Assert.Equal(0.11433, tyres.Wheel.Bolting.PitchCircle!.Value.Value, 1e-5);
        Assert.Equal((0.311, Source.Measured, "loaded radius of 3 May 2026"), (Math.Round(tyres.LoadedRadius!.Value.Value, 9), tyres.LoadedRadius.Source, tyres.LoadedRadius.Says));
    }

    // The axles' sum stands for the whole until that is weighed: 700 + 750.
    [Fact]
    public void Of_the_weighbridge_are_the_vehicles_masses_and_the_latest_counts()
    {
        test.Shop.Change(vehicle, edited => edited.Mass = Noted.Of(Spec.Mass, "1300 kg", Source.OwnersWord));
        var first = test.Shop.Add(new WeighbridgeSession(vehicle) { Date = May3, Readings = ["front 700 kg", "rear 750 kg"] });
        Assert.Equal((700, 750, 1450), (Now.Driveline.AxleMasses!.Front!.Value.Value, Now.Driveline.AxleMasses.Rear!.Value.Value, Now.Driveline.Load!.Mass!.Value.Value));
        Assert.Equal("1300 kg", Assert.Single(Now.Number("mass as driven").PassedOver).Says);

        test.Shop.Add(new WeighbridgeSession(vehicle) { Date = May3.AddDays(1), Readings = ["whole 1500 kg"] });
        Assert.Equal((700, 1500), (Now.Driveline.AxleMasses!.Front!.Value.Value, Now.Driveline.Load!.Mass!.Value.Value));

        test.Shop.Change(first, edited => edited.Readings = ["front 720 kg", "rear 750 kg"]);
        Assert.Equal(720, Now.Driveline.AxleMasses!.Front!.Value.Value);
    }

    // Another vehicle's scales say nothing of this one.
    [Fact]
    public void Of_another_vehicle_stay_there()
    {
        test.Shop.Add(new WeighbridgeSession(test.Vehicle("Ottery")) { Date = May3, Readings = ["whole 1500 kg"] });
        Assert.Null(Now.Driveline.Load);
        Assert.Empty(test.Shop.Sessions(vehicle));
    }

    // 5 - 3.5 = 1.5 and 3 - 5 = -2 degrees.
    [Fact]
    public void Of_a_shaft_line_are_its_angles()
    {
        test.Shop.Add(new ShaftAnglesSession(shaft, vehicle) { Date = May3, Readings = ["output side 3.5 deg", "shaft side 5 deg", "pinion side 3 deg"] });
        var line = Now.Driveline.Propshaft!.Line!;
        Assert.Equal([3.5, 5, 3], line.Select(member => Math.Round(member.Side!.Value.Value * 180 / Math.PI, 9)));
    }

    [Fact]
    public void That_give_nothing_are_refused_and_nothing_is_stored()
    {
        Refuses("The counts differ, 41/10 and 43/10: count until two agree.", new TeethSession(axle) { Date = May3, Readings = ["41/10", "43/10"] });
        Refuses("Count the teeth twice: two counts that agree make the ratio exact.", new TeethSession(axle) { Date = May3, Readings = ["41/10"] });
        Refuses("No loaded radius was read.", new LoadedRadiusSession(wheels) { Date = May3 });
        Refuses("The readings make a loaded radius of 3120 mm, and it lies between 100 mm and 1000 mm.", new LoadedRadiusSession(wheels) { Date = May3, Readings = ["3120"] });
        Refuses("A chord of 672 mm makes a bolt circle of 706.6 mm; road wheels have 50 to 400 mm.", new BoltCircleSession(wheels) { Date = May3, Readings = ["672"] });
        Refuses("'left 700 kg' is no weighing: write front, rear or whole, then what the display shows.", new WeighbridgeSession(vehicle) { Date = May3, Readings = ["left 700 kg"] });
        Refuses("Nothing was weighed.", new WeighbridgeSession(vehicle) { Date = May3 });
        Refuses("'shaft 5 deg' is no angle of a shaft line: write output, shaft or pinion, then side or above, then the angle.", new ShaftAnglesSession(shaft) { Date = May3, Readings = ["shaft 5 deg"] });
        Refuses("The output, the shaft and the pinion are each read from the side.", new ShaftAnglesSession(shaft) { Date = May3, Readings = ["shaft side 5 deg"] });
        Refuses("There are two readings of one angle, 'shaft side 5 deg' and 'shaft side 6 deg': keep one.", new ShaftAnglesSession(shaft) { Date = May3, Readings = ["shaft side 5 deg", "shaft side 6 deg"] });
        Refuses("'10 km' is no run: write the true distance, a colon, what the odometer showed.", new SpeedometerRunSession(vehicle) { Date = May3, Readings = ["10 km"] });
        Assert.Empty(test.Shop.Sessions(vehicle));
        Assert.Equal(0L, test.Ask("SELECT count(*) FROM Readings"));
    }

    [Fact]
    public void Go_along_when_the_shop_moves()
    {
        test.Shop.Add(new WeighbridgeSession(vehicle) { Date = May3, Readings = ["front 700 kg", "rear 750 kg"] });
        test.Shop.Add(new TeethSession(axle, vehicle) { Date = May3, Readings = ["41/10", "41/10"] });
        var zip = Path.Combine(test.Folder, "brindle.zip");
        test.Shop.Export(zip, vehicle);
        using var there = new TestShop();
        there.Shop.Import(zip);
        Assert.Equal(["teeth", "weighbridge"], there.Shop.Sessions(there.Shop.FindVehicle("Brindle")).Select(session => session.Method.Text).Order());
        Assert.Equal(700, there.Shop.DrivelineOn(there.Shop.FindVehicle("Brindle"), May3).Driveline.AxleMasses!.Front!.Value.Value);
        there.Shop.Undo();
        Assert.Empty(there.Shop.Vehicles());
    }

    private void Refuses(string sentence, Session session) => Assert.Equal(sentence, Assert.Throws<RefusedException>(() => test.Shop.Add(session)).Message);

    private sealed record DrivelineOf(Data.Drivelines.DrivelineOfDay Day)
    {
        public Driveline Driveline => Day.Driveline;

        public Data.Drivelines.NumberKnown Number(string name) => Day.Numbers.Single(number => number.Number == name);
    }
}
