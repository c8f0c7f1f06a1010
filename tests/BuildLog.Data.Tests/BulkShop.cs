using Bogus;
using BuildLog.Data.Attachments;
using BuildLog.Data.Components;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Decisions;
using BuildLog.Data.Donors;
using BuildLog.Data.Goals;
using BuildLog.Data.Hunting;
using BuildLog.Data.Identity;
using BuildLog.Data.Jobs;
using BuildLog.Data.Notes;
using BuildLog.Data.Plans;
using BuildLog.Data.RoadTests;
using BuildLog.Data.Sessions;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Tests;

/// <summary>A shop of any size, the same for the same seed: vehicles, each with a full driveline, its jobs, money and papers, and axles that are swapped over months.</summary>
internal sealed class BulkShop(Shop shop, int seed = 20_260_503)
{
    private static readonly DateOnly Start = new(2020, 1, 1);
    private readonly Faker faker = new() { Random = new Randomizer(seed) };

    /// <param name="vehicles">How many vehicles.</param>
    /// <param name="swaps">Axles on each, one after the other.</param>
    public void Fill(int vehicles, int swaps)
    {
        for (var number = 1; number <= vehicles; number++) Vehicle(number, swaps);
    }

    private void Vehicle(int number, int swaps)
    {
        var vehicle = shop.Add(new Vehicle
        {
            Name = Invariant($"Project {number:0000}"),
            State = faker.PickRandom<VehicleState>(),
            Owner = faker.Random.AlphaNumeric(12),
            ChassisNumber = faker.Random.AlphaNumeric(17),
            Notes = faker.Lorem.Sentence(),
        });
        shop.Add(new CruiseGoalEntry(vehicle) { Speed = $"{faker.Random.Int(80, 130)} km/h", EngineSpeed = $"{faker.Random.Int(2000, 3500)} rpm" });
        shop.Fit(shop.Add(new EngineComponent { Name = $"engine {number}" }), vehicle, Position.Engine, Start);
        shop.Fit(
            shop.Add(new TransmissionComponent { Name = $"gearbox {number}", Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.54", "2.12", "1.38", "1.00") }),
            vehicle, Position.Transmission, Start);
        Tyres(number, vehicle);
        Paperwork(vehicle);
        Work(number, vehicle);
        Hunt(number, vehicle);
        var odometer = faker.Random.Int(0, 200_000);
        for (var k = 0; k < swaps; k++)
        {
            odometer += faker.Random.Int(1, 900);
            Axle(number, k, vehicle, odometer);
        }
    }

    private void Paperwork(Vehicle vehicle)
    {
        shop.Add(new IdentityNumber(vehicle, faker.PickRandom<Identified>()) { Number = faker.Random.AlphaNumeric(11), Where = faker.Lorem.Word(), ReadBy = faker.Name.FirstName() });
        shop.Add(new Note(vehicle) { Date = Day(), Title = faker.Lorem.Sentence(3), Body = faker.Lorem.Paragraph() });
        shop.Add(new Deadline(faker.Random.Bool(0.8f) ? vehicle : null) { What = faker.Lorem.Sentence(3), Day = Day(), Done = faker.Random.Bool() ? Day() : null });
        shop.Add(new Decision(vehicle) { Date = Day(), What = faker.Lorem.Sentence(4), Why = faker.Lorem.Sentence(), AgreedBy = faker.Name.FullName() });
        shop.Add(new Plan(vehicle) { Name = faker.Lorem.Sentence(2), Date = Day(), Changes = [new(Position.RearAxle, Invariant($"{faker.Random.Double(2.8, 4.9):0.00}"), null)], State = faker.PickRandom<PlanState>(), Reason = faker.Lorem.Sentence() });
        shop.Add(new Data.RoadTests.RoadTest(vehicle)
        {
            Date = Day(),
            Speed = Noted.Speed(Invariant($"{faker.Random.Int(70, 120)} km/h"), Source.Measured),
            EngineSpeed = Noted.EngineSpeed(Invariant($"{faker.Random.Int(1900, 3600)} rpm"), Source.Measured),
            Noises = faker.Lorem.Sentence(3),
            Defects = faker.Lorem.Sentence(3),
        });
        shop.Add(new Retorque(vehicle) { Date = Day(), What = faker.Lorem.Sentence(2), Torque = Noted.Torque(Invariant($"{faker.Random.Int(40, 120)} Nm"), Source.Measured), Initials = faker.Random.String2(2) });
    }

    private void Work(int number, Vehicle vehicle)
    {
        var supplier = shop.Add(new Supplier { Name = Invariant($"{faker.Company.CompanyName()} {number}"), Contact = faker.Phone.PhoneNumber("#### ######"), GoodFor = faker.Lorem.Word() });
        var job = shop.Add(new Job(vehicle) { Title = faker.Lorem.Sentence(3), Description = faker.Lorem.Sentence(), State = faker.PickRandom<JobState>(), Due = Day(), BeforeHandover = faker.Random.Bool() });
        shop.Add(new WorkEntry(job) { Date = Day(), Hours = Invariant($"{faker.Random.Int(0, 7)}:{faker.Random.Int(1, 59):00}"), Who = faker.Name.FirstName(), What = faker.Lorem.Sentence(3) });
        var sent = Day();
        shop.Add(new OutsideWork(job, supplier) { What = faker.Lorem.Sentence(3), Sent = sent, Promised = sent.AddDays(faker.Random.Int(1, 30)) });
        var receipt = shop.Add(new Attachment(job)
        {
            What = AttachmentKind.Receipt,
            FileName = $"{faker.Random.AlphaNumeric(8)}.pdf",
            MediaType = "application/pdf",
            Sha256 = faker.Random.Hexadecimal(64, prefix: ""),
            Length = faker.Random.Int(1, 5_000_000),
            Caption = faker.Lorem.Sentence(3),
        });
        shop.Add(new Cost(vehicle, job) { Date = Day(), What = faker.Lorem.Sentence(2), Amount = Price(), SupplierId = supplier.Id, ReceiptId = receipt.Id });
    }

    private void Hunt(int number, Vehicle vehicle)
    {
        var donor = shop.Add(new Donor { Name = $"donor {number}", ChassisNumber = faker.Random.AlphaNumeric(17), Bought = LooseDay.Read(faker.PickRandom("spring 2023", "about 2019", "May 2024", "")), Price = Price() });
        shop.Add(new DonorPiece(donor) { What = faker.Lorem.Word(), State = faker.PickRandom<PieceState>() });
        var wanted = shop.Add(new WantedPart(vehicle, WantedKind.Axle) { Title = faker.Lorem.Sentence(2), Windows = [new(WindowOf.AxleRatio, "3.23", "3.49")], Most = Price() });
        shop.Add(new Offer(wanted) { What = faker.Lorem.Sentence(3), Place = faker.Address.City(), Claimed = Invariant($"{faker.Random.Double(2.8, 4.9):0.00}"), Price = Price(), Seen = Day() });
    }

    private DateOnly Day() => Start.AddDays(faker.Random.Int(0, 2000));

    private Money Price() => Money.Of(faker.Random.Int(500, 90_000), Currency.Find("EUR")!);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private void Tyres(int number, Vehicle vehicle)
    {
        var set = shop.Add(new WheelSetComponent { Name = $"tyres {number}", SizeText = faker.PickRandom("205/65R15", "195/65R15", "235/75R15", "LT235/85R16") });
        shop.Fit(set, vehicle, Position.Tyres, Start);
        var turn = faker.Random.Int(1850, 2450);
        shop.Add(new RollOutSession(set, vehicle) { Date = Start, Loaded = faker.Random.Bool(), Readings = [$"1:{turn}mm", $"3:{(3 * turn) + faker.Random.Int(-3, 3)}mm"] });
    }

    private void Axle(int number, int k, Vehicle vehicle, int odometer)
    {
        var axle = shop.Add(new AxleComponent { Name = $"axle {number}.{k}", SerialNumber = faker.Random.AlphaNumeric(8) });
        var day = Start.AddDays(30 * k);
        shop.Fit(axle, vehicle, Position.RearAxle, day, $"{odometer} km", faker.Lorem.Sentence(4));
        shop.Add(new TurnCountSession(axle, vehicle)
        {
            Date = day.AddDays(1),
            Wheels = Wheels.OneHeld,
            Readings = [.. Enumerable.Range(0, 3).Select(_ => FormattableString.Invariant($"10:{faker.Random.Int(60, 100) / 4.0}"))],
        });
    }
}
