using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Identity;

/// <summary>What a number identifies.</summary>
public enum Identified
{
    Chassis,
    Body,
    Engine,
    Gearbox,
    TransferCase,
    FrontAxle,
    RearAxle,
    Casting,
    DateCode,
    Other,
}

public static class IdentifiedWords
{
    public static string InWords(this Identified identified) => identified switch
    {
        Identified.Chassis => Spoken("chassis"),
        Identified.Body => Spoken("body"),
        Identified.Engine => Spoken("engine"),
        Identified.Gearbox => Spoken("gearbox"),
        Identified.TransferCase => Spoken("transfer case"),
        Identified.FrontAxle => Spoken("front axle"),
        Identified.RearAxle => Spoken("rear axle"),
        Identified.Casting => Spoken("casting"),
        Identified.DateCode => Spoken("date code"),
        Identified.Other => Spoken("other"),
        _ => throw new ArgumentOutOfRangeException(nameof(identified), identified, "No such number."),
    };
}

/// <summary>A number as it was read off a vehicle or a part, by whom and when.</summary>
public sealed class IdentityNumber : Entered
{
    public IdentityNumber(Vehicle vehicle, Identified identified) => (VehicleId, Identified) = (vehicle.Id, identified);

    public IdentityNumber(Component component, Identified identified) => (ComponentId, Identified) = (component.Id, identified);

    internal IdentityNumber() { }

    public long? VehicleId { get; internal set; }

    public long? ComponentId { get; internal set; }

    public Identified Identified { get; internal set; }

    /// <summary>Exactly as stamped, spaces and stars included.</summary>
    public string Number { get; set; } = "";

    /// <summary>Where it stands: <c>frame rail, right, behind the spring hanger</c>.</summary>
    public string Where { get; set; } = "";

    public LooseDay? Read { get; set; }

    /// <summary>Who read it.</summary>
    public string ReadBy { get; set; } = "";

    public override void Check()
    {
        TextRules.CheckTitle(Number, new Later("number"), "WX-PU-20417");
        TextRules.CheckLine(Where, new Later("place of the number"), "frame rail, right");
        TextRules.CheckLine(ReadBy, new Later("name of the reader"), "Agnes");
    }

    public override string ToString() => Number;
}
