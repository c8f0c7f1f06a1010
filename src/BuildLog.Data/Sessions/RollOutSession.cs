using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Data.Sessions;

/// <summary>A tyre rolled along the floor.</summary>
public sealed class RollOutSession : Session
{
    /// <param name="wheels">The set that was rolled.</param>
    /// <param name="on">The vehicle that stood on it; null for a loose wheel.</param>
    public RollOutSession(WheelSetComponent wheels, Vehicle? on = null)
        => (ComponentId, VehicleId, Construction) = (wheels.Id, on?.Id, wheels.Construction);

    internal RollOutSession() { }

    public override Later Method => new Later("roll-out");

    /// <summary>The vehicle stood on the tyre.</summary>
    public bool Loaded { get; set; }

    public Construction Construction { get; set; }

    /// <summary>How far off the tape may be, as typed.</summary>
    public string Tape { get; set; } = "2 mm";

    /// <summary>How far off the wheel's mark may have been, in turns, as typed.</summary>
    public string Align { get; set; } = "0.01";

    /// <summary>As typed; recorded only.</summary>
    public string Pressure { get; set; } = "";

    /// <summary>What the readings give.</summary>
    /// <exception cref="RefusedException">They give nothing.</exception>
    public RollOut Result()
    {
        var tape = QuantityText.Read(Tape, Kind.Length, Units.Millimetre).OrRefuse().Value;
        var how = new RollOutPrecision(Loaded, Construction, tape, QuantityText.ReadNumber(Align).OrRefuse());
        return RollOut.Of([.. Readings.Select(text => RollReading.Read(text).OrRefuse())], how, Spoken($"roll-out of {Day.InWords}"));
    }

    public override void Check()
    {
        _ = Result();
        if (Pressure.Length > 0) _ = QuantityText.Read(Pressure, Kind.Pressure, Units.Bar).OrRefuse();
    }

    internal override bool Measures(Component? component) => component is WheelSetComponent;
}
