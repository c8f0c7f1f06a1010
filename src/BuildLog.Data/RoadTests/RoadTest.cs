using BuildLog.Data.Days;
using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using Run = BuildLog.Gearing.Ratios.RoadTest;

namespace BuildLog.Data.RoadTests;

/// <summary>One drive with an ear on the driveline.</summary>
public sealed class RoadTest : Dated
{
    public RoadTest(Vehicle vehicle) => VehicleId = vehicle.Id;

    internal RoadTest() { }

    public long VehicleId { get; internal set; }

    public OdometerReading? Odometer { get; set; }

    /// <summary>Road speed at which the engine speed was read.</summary>
    public Noted? Speed { get; set; }

    public Noted? EngineSpeed { get; set; }

    /// <summary>By its name on the knob.</summary>
    public string Gear { get; set; } = "";

    /// <summary>As read: <c>water 88 °C, gearbox 71 °C</c>.</summary>
    public string Temperatures { get; set; } = "";

    /// <summary>Between which speeds it shakes: <c>85 to 95 km/h</c>.</summary>
    public string Vibration { get; set; } = "";

    public string Noises { get; set; } = "";

    public string Defects { get; set; } = "";

    /// <summary>What was done about it.</summary>
    public string Fix { get; set; } = "";

    /// <summary>The axle ratio that follows with the parts it was driven with; null where one of the numbers is not known.</summary>
    public Parsed<Measured>? AxleRatio(Driveline driven) => Speed is { } speed && EngineSpeed is { } engine ? Run.AxleRatio(driven, Gear, speed.Si, engine.Si) : null;

    public override string ToString() => Spoken($"of {Day.InWords}");

    public override void Check()
    {
        TextRules.CheckDay(Date, new Later("day of the road test"));
        TextRules.CheckLine(Gear, new Later("gear"), "4");
        TextRules.CheckLine(Temperatures, new Later("temperatures"), "water 88 °C");
        TextRules.CheckLine(Vibration, new Later("vibration"), "85 to 95 km/h");
        TextRules.CheckText(Noises, new Later("noises"));
        TextRules.CheckText(Defects, new Later("defects"));
        TextRules.CheckText(Fix, new Later("fix"));
    }
}
