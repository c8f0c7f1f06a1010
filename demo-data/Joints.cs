using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.DemoData;

/// <summary>What somebody saw at the ends of a part, before it went in. In this shop all engines turn clockwise and carry their starter on the right.</summary>
internal static class Joints
{
    /// <summary>The spline of the light gearboxes, and of the discs that go with them.</summary>
    public const string FineSpline = "26 × 1 in";

    public const string CoarseSpline = "10 × 1 1/8 in";

    public const string LightFlange = "flange 4 × 76 mm";

    public static EngineComponent LookedAt(this EngineComponent engine, string bellHousing)
    {
        (engine.BellHousing, engine.Plate, engine.Starter, engine.Turns) = (bellHousing, Plate.Flywheel, StarterSide.Right, Sense.Clockwise);
        engine.PilotBore = Noted.Of(Spec.PilotBore, "15.05 mm", Source.Measured);
        return engine;
    }

    public static TransmissionComponent LookedAt(this TransmissionComponent box, string bellHousing, string inputSpline, string discSpline)
    {
        (box.BellHousing, box.InputSpline, box.DiscSpline) = (bellHousing, inputSpline, discSpline);
        (box.Starter, box.Turns, box.ShiftLinkage) = (StarterSide.Right, Sense.Clockwise, Presence.Fitted);
        box.Spigot = Noted.Of(Spec.Spigot, "15.00 mm", Source.Measured);
        return box;
    }
}
