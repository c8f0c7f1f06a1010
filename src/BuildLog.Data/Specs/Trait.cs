namespace BuildLog.Data.Specs;

/// <summary>Something in words that may be noted of a part. <see cref="TraitSheet"/> says what each is called and what it can be.</summary>
public enum Trait
{
    // Engine and gearbox.
    BellHousing,
    Plate,
    Starter,
    Turns,
    InputSpline,
    DiscSpline,

    // Gearbox, overdrive, transfer case, axle.
    Output,
    FrontOutput,
    SpeedometerFeed,
    ParkingBrake,
    ShiftLinkage,
    PinionFlange,

    // Propshaft.
    FrontEnd,
    RearEnd,
}
