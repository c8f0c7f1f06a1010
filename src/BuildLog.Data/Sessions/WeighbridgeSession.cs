using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Data.Sessions;

/// <summary>A vehicle on the weighbridge.</summary>
public sealed class WeighbridgeSession : Session
{
    public WeighbridgeSession(Vehicle vehicle) => VehicleId = vehicle.Id;

    internal WeighbridgeSession() { }

    public override Later Method => new Later("weighbridge");

    /// <summary>The smallest step of its display, as typed.</summary>
    public string Step { get; set; } = "20 kg";

    public static Parsed<Typed> ReadStep(string text) => QuantityText.ReadPlain(text, Kind.Mass, Units.Kilogram);

    /// <summary>What the readings give.</summary>
    /// <exception cref="RefusedException">They give nothing.</exception>
    public Weighing Result() => Weighing.Of([.. Readings.Select(text => WeighReading.Read(text).OrRefuse())], ReadStep(Step).OrRefuse().Value);

    public override void Check() => _ = Result();

    private protected override string InWords(string reading) => WeighReading.Read(reading).OrRefuse().InWords;

    internal override bool Measures(Component? component) => component is null && VehicleId is not null;

    internal override IEnumerable<NumberFound> Finds()
    {
        var weighing = Result();
        if (weighing.Whole is { } whole) yield return Found(Spec.Mass, whole);
        if (weighing.Front is { } front) yield return Found(Spec.FrontAxleMass, front);
        if (weighing.Rear is { } rear) yield return Found(Spec.RearAxleMass, rear);
    }
}
