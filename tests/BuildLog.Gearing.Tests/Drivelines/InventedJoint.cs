using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Drivelines;

/// <summary>The invented car with an engine, known only where it meets the gearbox.</summary>
internal static class InventedJoint
{
    public static Driveline Of(EngineRear rear, GearboxFront front, bool automatic = false) => InventedCar.Plain with
    {
        Engine = new("engine") { Rear = rear },
        Transmission = InventedCar.Plain.Transmission! with { Front = front, Converter = automatic ? new Converter(true) : null },
    };

    public static Known? Millimetres(double? value) => value is { } known ? InventedShaft.Known(known / 1000) : null;
}
