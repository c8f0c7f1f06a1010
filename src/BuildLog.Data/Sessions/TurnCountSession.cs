using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data.Sessions;

/// <summary>An axle's turns, counted.</summary>
public sealed class TurnCountSession : Session
{
    /// <param name="axle">The axle counted.</param>
    /// <param name="on">The vehicle it was on; null on the bench.</param>
    public TurnCountSession(AxleComponent axle, Vehicle? on = null) => (ComponentId, VehicleId) = (axle.Id, on?.Id);

    internal TurnCountSession() { }

    public override Later Method => new Later("turn count");

    public Wheels Wheels { get; set; }

    /// <summary>The smallest fraction of a propshaft turn that was read, as typed.</summary>
    public string ReadTo { get; set; } = "0.25";

    /// <summary>How far off the wheel's mark may have been, in turns, as typed.</summary>
    public string Align { get; set; } = "0.02";

    /// <summary>Hub reduction that the count contains, as typed; empty for none. It matters for finding the tooth pair only.</summary>
    public string Hub { get; set; } = "";

    /// <summary>What the readings give.</summary>
    /// <exception cref="RefusedException">They give nothing.</exception>
    public TurnCount Result()
    {
        var how = new CountPrecision(QuantityText.ReadNumber(ReadTo).OrRefuse(), QuantityText.ReadNumber(Align).OrRefuse());
        return TurnCount.Of([.. Readings.Select(text => TurnReading.Read(text, Wheels).OrRefuse())], how, name: Spoken($"count of {Day.InWords}"));
    }

    public override void Check()
    {
        _ = Result();
        if (Hub.Length > 0) _ = RatioRange.Hub.Read(Hub).OrRefuse();
    }

    private protected override string InWords(string reading) => TurnReading.Read(reading, Wheels).OrRefuse().InWords;

    internal override bool Measures(Component? component) => component is AxleComponent;
}
