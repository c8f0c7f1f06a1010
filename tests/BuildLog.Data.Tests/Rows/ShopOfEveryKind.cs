using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Decisions;
using BuildLog.Data.Donors;
using BuildLog.Data.Fitments;
using BuildLog.Data.Goals;
using BuildLog.Data.Hunting;
using BuildLog.Data.Identity;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Plans;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Data.Workshops;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Data.Tests.Rows;

/// <summary>One of every kind, and in every column something that is not there by itself.</summary>
internal sealed class ShopOfEveryKind
{
    private static readonly DateOnly Day = new(2024, 5, 3);
    private static readonly LooseDay Spring = LooseDay.Read("spring 2024")!;
    private static readonly Money Price = Money.Of(18_050, Currency.Find("GBP")!);

    private readonly Shop shop;
    private readonly Vehicle vehicle;
    private readonly Supplier supplier;
    private readonly Donor donor;
    private readonly List<Entered> entries = [];

    private ShopOfEveryKind(Shop shop)
    {
        this.shop = shop;
        supplier = Add(new Supplier { Name = "Tolland yard", Contact = "at the bridge", GoodFor = "axles", Notes = "closed on Mondays" });
        donor = Add(new Donor
        {
            Name = "Wexcombe delivery van",
            ChassisNumber = "WX-DV-11853",
            SellerId = supplier.Id,
            Bought = LooseDay.Read("spring 2023"),
            Price = Price,
            Fate = DonorFate.Sell,
            Place = "behind the shed",
            Notes = "no floor",
        });
        vehicle = Add(new Vehicle
        {
            Name = "Brindle",
            State = VehicleState.OnTheRoad,
            Owner = "Agnes",
            Description = "half-ton pick-up of 1971",
            ChassisNumber = "WX-PU-20417",
            Registration = "BR 12",
            DrivesInFront = true,
            OdometerUnit = OdometerUnit.Miles,
            Notes = "green",
            BodyClass = BodyClass.All[0].Name,
            RollingClass = RollingClass.All[0].Name,
            Mass = Noted.Of(Spec.Mass, "1450 kg", Source.OwnersWord),
        });
    }

    /// <returns>What was entered, as it was handed back.</returns>
    public static IReadOnlyList<Entered> Enter(Shop shop)
    {
        var entered = new ShopOfEveryKind(shop);
        entered.Parts();
        entered.Fitments();
        entered.Goals();
        entered.Papers();
        entered.RoadTests();
        entered.ReadByTheMapper();
        return entered.entries;
    }

    private void Parts()
    {
        var box = Add(Bought(new TransmissionComponent { Name = "Delmere box", ConverterLocksUp = true, Gears = TransmissionComponent.GearsFrom(Source.MakersData, "2.40", "1.00") }));
        Add(new GearCountSession(box, "1", vehicle) { Date = Day, Helper = "Odo", Conditions = "cold", Notes = "twice", ReadTo = "0.125", Align = "0.03", Readings = ["10:24", "5:12"] });
        Add(new TransmissionComponent { Name = "counted box", GearTeeth = "29/19 31/14 25/18 1" });
        Add(new OverdriveComponent { Name = "Pell unit", OverdriveRatio = Noted.Ratio("0.78", RatioRange.Overdrive, Source.Tag), Teeth = new(96, 27), Output = "flange 4 × 80 mm" });
        Add(new TransferCaseComponent
        {
            Name = "Corvane case",
            High = Noted.Ratio("1.00", RatioRange.Transfer, Source.Tag),
            Low = Noted.Ratio("2.30", RatioRange.Transfer, Source.Tag),
            FrontDrive = FrontDrive.Declutch,
            TorqueRating = Noted.Of(Spec.TorqueRating, "1200 Nm", Source.MakersData),
        });
        Add(new PropshaftComponent { Name = "rear shaft", Pieces = [new(), Piece()] });
        Add(new SpeedometerComponent { Name = "dial", Per = OdometerUnit.Miles, Pickup = Pickup.Wheel, DriveTeeth = 8, DrivenTeeth = 21 });
        var wheels = Add(new WheelSetComponent
        {
            Name = "Tarn tyres",
            SizeText = "6.50-16",
            Construction = Construction.Bias,
            Worn = Noted.Length("2 mm", Source.Measured),
            StatedCircumference = Noted.Length("2.28 m", Source.MakersData),
            PassengerOnTruck = true,
            TwinRear = true,
            Studs = 5,
            Thread = "M12×1.5",
            Seat = Seat.Cone,
        });
        Add(new LoadedRadiusSession(wheels, vehicle) { Date = Day, Tape = "1 mm", Readings = ["330 mm", "331"] });
        Add(new BoltCircleSession(wheels, vehicle) { Date = Day, Studs = 6, Between = Chord.Across, Tape = "0.05 mm", Readings = ["139.7"] });
        Add(new WeighbridgeSession(vehicle) { Date = Day, Step = "10 kg", Readings = ["front 700 kg", "rear 750 kg", "whole 1450 kg"] });
        Add(new SpeedometerRunSession(vehicle) { Date = Day, Tape = "20 m", Step = "0.2 km", Readings = ["10 km: 10.4 km"] });
        Add(new ShaftAnglesSession(Add(new PropshaftComponent { Name = "one piece", Pieces = [Piece()] }), vehicle) { Date = Day, Readings = ["output side 3.5 deg", "shaft side 5 deg", "pinion side 3 deg"] });
        Add(new RollOutSession(wheels, vehicle) { Date = Day, Loaded = true, Tape = "3 mm", Align = "0.02", Pressure = "2.2 bar", Readings = ["1:2280mm"] });
    }

    private void Fitments()
    {
        var engine = Add(new EngineComponent
        {
            Name = "Corvane six",
            Idle = Noted.EngineSpeed("700 rpm", Source.OwnersWord),
            Redline = Noted.EngineSpeed("5500 rpm", Source.Tag),
            Induction = Induction.Charged,
            LowestPull = Noted.Of(Spec.LowestPull, "1200 rpm", Source.OwnersWord),
            BellHousing = "Corvane six",
        });
        shop.Fit(engine, vehicle, Position.Engine, new(2023, 2, 1), "70 000", "it was there");
        shop.TakeOffSometime(engine, LooseDay.Read("spring 2025")!, "80 000", "knocks");
        var axle = Add(Bought(new AxleComponent
        {
            Name = "Harrow 4.10 axle",
            StatedRatio = Noted.Ratio("4.10", RatioRange.Axle, Source.Tag),
            HubReduction = Noted.Ratio("1.5", RatioRange.Hub, Source.MakersData),
            Teeth = new(41, 10),
        }));
        shop.FitSometime(axle, vehicle, Position.RearAxle, LooseDay.Read("spring 2024")!, "71 000", "whines less");
        Add(new TeethSession(axle, vehicle) { Date = Day, Readings = ["41/10", "41/10"] });
        Add(new TurnCountSession(axle, vehicle) { Day = Spring, Wheels = Wheels.Together, ReadTo = "0.125", Align = "0.03", Hub = "1.5", Readings = ["10:61.5"] });
        Add(new OdometerChange(vehicle, OdometerChanged.Reset)
        {
            Day = new(2025, 9, 1),
            Last = OdometerReading.Read("84 000", OdometerUnit.Miles),
            First = OdometerReading.Read("5", OdometerUnit.Miles),
            Reason = "new cable",
        });
        Add(new IdentityNumber(axle, Identified.RearAxle) { Number = "HW*410*", Where = "tube, right", Read = LooseDay.Read("about 2019"), ReadBy = "Odo" });
        Add(new IdentityNumber(vehicle, Identified.Body) { Number = "B 17" });
        Work(axle);
    }

    private void Goals()
    {
        Add(new CruiseGoalEntry(vehicle) { Speed = "110 km/h", EngineSpeed = "2400 rpm", Tolerance = "5 %", Gear = "2" });
        Add(new HillGoalEntry(vehicle) { Gradient = "6 %", Speed = "80 km/h", Gear = "1" });
        Add(new LimitGoalEntry(vehicle, Limited.TopSpeed) { Limit = "150 km/h" });
        Add(new BudgetGoalEntry(vehicle) { Most = Price });
    }

    private void Papers() => Add(new Attachment(supplier)
    {
        What = AttachmentKind.Receipt,
        FileName = "card.jpg",
        MediaType = "image/jpeg",
        Sha256 = new('a', 64),
        Length = 3,
        Caption = "both sides",
        Taken = LooseDay.Read("May 2024"),
    });

    private void RoadTests()
    {
        Add(new Data.RoadTests.RoadTest(vehicle)
        {
            Day = Spring,
            Odometer = OdometerReading.Read("71 200", OdometerUnit.Miles),
            Speed = Noted.Speed("100 km/h", Source.Measured),
            EngineSpeed = Noted.EngineSpeed("2500 rpm", Source.Measured),
            Gear = "2",
            Temperatures = "water 88 °C",
            Vibration = "85 to 95 km/h",
            Noises = "hum",
            Defects = "seal weeps",
            Fix = "new seal",
        });
        Add(new Retorque(vehicle) { Date = Day, What = "propshaft flange", Torque = Noted.Torque("65 Nm", Source.Measured), Initials = "AT" });
    }

    private void Work(AxleComponent axle)
    {
        var wanted = Add(new WantedPart(vehicle, WantedKind.Tyres)
        {
            Title = "longer tyres",
            PlanId = Add(new Plan(vehicle) { Name = "all of it taller", Date = Day, Wishes = [new(Wish.OverallLow, "40")] }).Id,
            Windows = [new(WindowOf.Circumference, "2.2 m", "2.4 m")],
            MustHaves = [new("bolt circle", "5 × 139.7")],
            Most = Price,
            Deadline = new(2026, 8, 1),
            State = WantedState.Dropped,
            DroppedFor = "too wide",
            Notes = "ask at the bridge",
        });
        var job = Add(new Job(vehicle)
        {
            Title = "Swap the axle",
            Description = "with new seals",
            State = JobState.UnderWay,
            Due = new(2026, 6, 1),
            BeforeHandover = true,
            BlockedBy = "machine shop",
            WaitsForId = wanted.Id,
        });
        Add(new WorkEntry(job) { Day = Spring, Hours = "2:30", Who = "Odo", What = "pulled the shafts" });
        var receipt = Add(new Attachment(job) { FileName = "receipt.pdf", MediaType = "application/pdf", Sha256 = new('b', 64), Length = 9 });
        Add(new Cost(vehicle, job) { Day = Spring, What = "axle", Amount = Price, SupplierId = supplier.Id, ComponentId = axle.Id, ReceiptId = receipt.Id });
    }

    // What no list that has to be quick shows.
    private void ReadByTheMapper()
    {
        var job = Add(new Job(vehicle) { Title = "Balance the shaft" });
        Add(new OutsideWork(job, supplier) { What = "balance", SentDay = Spring, Promised = Day.AddDays(7), BackDay = Spring, Certificate = "1182" });
        var hunt = Add(new WantedPart(vehicle, WantedKind.Axle) { Title = "longer axle" });
        Add(new Offer(hunt)
        {
            What = "axle from a van",
            Place = "row 6",
            SupplierId = supplier.Id,
            Claimed = "3.08",
            Price = Price,
            Contact = "after six",
            SeenDay = Spring,
            Expires = Day.AddDays(30),
            Notes = "rusty",
        });
        var axle = Add(new AxleComponent { Name = "van axle" });
        Add(new DonorPiece(donor) { What = "axle", State = PieceState.Taken, Day = LooseDay.Read("May 2024"), ComponentId = axle.Id, Income = Price });
        Add(new Plan(vehicle) { Name = "longer legs", Date = Day, Changes = [new(Position.RearAxle, "3.08", null), new(Position.Tyres, "", Add(new WheelSetComponent { Name = "tall", SizeText = "235/75R15" }).Id)], Wishes = [new(Wish.Cruise, "90 km/h at 2600 rpm")], State = PlanState.Rejected, Reason = "too slow uphill" });
        Add(new Deadline(vehicle) { What = "second look", Day = Day, DoneDay = Spring });
        var decision = Add(new Decision(vehicle) { Day = Spring, What = "3.08", Why = "quiet", AgreedBy = "Agnes" });
        Add(new Note(decision) { Day = Spring, Title = "asked twice", Body = "on the telephone" });
        Add(new Workshop { Name = "Thorley's shed", Address = "at the bridge", Currency = "GBP" });
    }

    private T Add<T>(T entry)
        where T : Entered
    {
        entries.Add(shop.Add(entry));
        return entry;
    }

    private static StatedPiece Piece() => new(
        Noted.Of(SpecSheet.ShaftOuter, "76 mm", Source.Measured),
        Noted.Of(SpecSheet.ShaftWall, "2 mm", Source.Measured),
        Noted.Of(SpecSheet.ShaftLength, "1.2 m", Source.Measured),
        Yokes.QuarterTurn,
        Noted.Of(SpecSheet.ShaftSide, "3°", Source.Measured),
        Noted.Of(SpecSheet.ShaftPlan, "1°", Source.Measured));

    private T Bought<T>(T part)
        where T : Component
    {
        (part.SerialNumber, part.Donor, part.Shelf, part.Condition, part.Notes) = ("17 A", "a van", "B 2", "rebuilt", "keep dry");
        (part.TakenFromId, part.SupplierId, part.Price, part.Bought, part.Ownership) = (donor.Id, supplier.Id, Price, LooseDay.Read("before May 2023"), Ownership.Lent);
        return part;
    }
}
