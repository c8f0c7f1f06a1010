namespace BuildLog.Data.Specs;

/// <summary>A number that may be noted of a part or a vehicle. <see cref="SpecSheet"/> says what each is called and what it can be.</summary>
public enum Spec
{
    // Engine.
    TorquePoints,
    PeakTorque,
    PeakTorqueAt,
    PeakPower,
    PeakPowerAt,
    LowestPull,
    CriticalAltitude,
    PilotBore,

    // Gearbox, and axle.
    StallSpeed,
    StallTorqueRatio,
    TorqueRating,
    Spigot,
    ClutchRating,
    Reverse,

    // Axle and wheels.
    LowStep,
    PitchCircle,
    Bore,
    HubFaces,
    Droop,
    Bump,
    Perches,
    PinionToPerch,
    LoadedRadius,
    RimWidth,
    Offset,

    // Propshaft.
    JointRating,
    SlipStroke,
    SlipOut,
    OutputSide,
    OutputPlan,
    PinionSide,
    PinionPlan,

    // Speedometer.
    TurnsWanted,
    PulsesPerTurn,
    Correction,

    // Vehicle.
    Mass,
    FrontAxleMass,
    RearAxleMass,
    DragArea,
    RollingResistance,
    DrivenShare,
    Altitude,
    GravityHeight,
    Wheelbase,
    FrontSprings,
    RearSprings,
    FrontPad,
    RearPad,
}
