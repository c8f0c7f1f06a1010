using Bogus;
using BuildLog.Data.Components;
using BuildLog.Data.Goals;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Tests;

/// <summary>A shop of any size, the same for the same seed: vehicles, each with a full driveline, and axles that are swapped over months.</summary>
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
            Name = FormattableString.Invariant($"Project {number:0000}"),
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
        var odometer = faker.Random.Int(0, 200_000);
        for (var k = 0; k < swaps; k++)
        {
            odometer += faker.Random.Int(1, 900);
            Axle(number, k, vehicle, odometer);
        }
    }

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
