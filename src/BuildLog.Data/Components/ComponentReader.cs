using BuildLog.Data.Rows;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speedometers;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Data.Components;

/// <summary>Reads parts of every kind by hand, with all that hangs on them. Whatever column a kind gets, it is read here.</summary>
internal static class ComponentReader
{
    private const string Sql = """SELECT * FROM "Components" WHERE "Id" IN (SELECT value FROM json_each($ids))""";

    public static IReadOnlyList<Component> Read(Snapshot record, IReadOnlyCollection<long> ids) => Joined(record, record.Rows.Read(Sql, From, ids));

    private static List<Component> Joined(Snapshot record, List<Component> components)
    {
        SpecReader.Fill(record, components);
        GearReader.Fill(record, [.. components.OfType<TransmissionComponent>()]);
        PieceReader.Fill(record, [.. components.OfType<PropshaftComponent>()]);
        record.Donors.Load(components.Select(component => component.TakenFromId));
        record.Suppliers.Load(components.Select(component => component.SupplierId));
        foreach (var component in components)
        {
            component.TakenFrom = record.Donors.Named(component.TakenFromId);
            component.Supplier = record.Suppliers.Named(component.SupplierId);
        }

        return components;
    }

    private static Component From(Row row)
    {
        var component = row.Kept<Component>(row.Text("Kind") switch
        {
            "engine" => Engine(row),
            "transmission" => Transmission(row),
            "overdrive" => Overdrive(row),
            "transfer case" => TransferCase(row),
            "axle" => Axle(row),
            "propshaft" => new PropshaftComponent(),
            "wheels" => Wheels(row),
            "speedometer" => Speedometer(row),
            var kind => throw new FormatException($"There is no kind of part '{kind}'."),
        });
        component.Name = row.Text("Name");
        component.SerialNumber = row.Text("SerialNumber");
        component.Donor = row.Text("Donor");
        component.Shelf = row.Text("Shelf");
        component.TakenFromId = row.KeyIfAny("TakenFromId");
        component.SupplierId = row.KeyIfAny("SupplierId");
        component.Price = row.Money("Price");
        component.Bought = row.LooseDay("Bought");
        component.Condition = row.TextIfAny("Condition");
        component.Ownership = row.WordIfAny<Ownership>("Ownership");
        component.Notes = row.Text("Notes");
        return component;
    }

    private static EngineComponent Engine(Row row) => new()
    {
        Idle = row.Noted("Idle"),
        Redline = row.Noted("Redline"),
        Induction = row.WordIfAny<Induction>("Induction"),
    };

    private static TransmissionComponent Transmission(Row row) => new()
    {
        ConverterLocksUp = row.FlagIfAny("ConverterLocksUp"),
        GearTeeth = row.TextIfAny("GearTeeth"),
    };

    private static OverdriveComponent Overdrive(Row row) => new()
    {
        OverdriveRatio = row.Noted("OverdriveRatio"),
        OverdriveRing = row.CountIfAny("OverdriveRing"),
        OverdriveSun = row.CountIfAny("OverdriveSun"),
    };

    private static TransferCaseComponent TransferCase(Row row) => new()
    {
        High = row.Noted("High"),
        Low = row.Noted("Low"),
        FrontDrive = row.WordIfAny<FrontDrive>("FrontDrive"),
    };

    private static AxleComponent Axle(Row row) => Bolted(row, new AxleComponent
    {
        StatedRatio = row.Noted("StatedRatio"),
        HubReduction = row.Noted("HubReduction"),
        Ring = row.CountIfAny("Ring"),
        Pinion = row.CountIfAny("Pinion"),
    });

    private static WheelSetComponent Wheels(Row row) => Bolted(row, new WheelSetComponent
    {
        SizeText = row.Text("SizeText"),
        Worn = row.Noted("Worn"),
        StatedCircumference = row.Noted("StatedCircumference"),
        Construction = row.Word<Construction>("Construction"),
        StoredPassengerOnTruck = row.FlagIfAny("PassengerOnTruck"),
        StoredTwinRear = row.FlagIfAny("TwinRear"),
    });

    private static T Bolted<T>(Row row, T part)
        where T : BoltedComponent
    {
        part.Studs = row.CountIfAny("Studs");
        part.Thread = row.TextIfAny("Thread");
        part.Seat = row.WordIfAny<Seat>("Seat");
        return part;
    }

    private static SpeedometerComponent Speedometer(Row row) => new()
    {
        Per = row.WordIfAny<OdometerUnit>("Per"),
        Pickup = row.WordIfAny<Pickup>("Pickup"),
        DriveTeeth = row.CountIfAny("DriveTeeth"),
        DrivenTeeth = row.CountIfAny("DrivenTeeth"),
    };
}
