namespace BuildLog.Data.Vehicles;

/// <summary>How far a build has come.</summary>
public enum VehicleState
{
    Planned,
    InBuild,
    OnTheRoad,
    LaidUp,
    HandedOver,
}

/// <summary>What the odometer counts.</summary>
public enum OdometerUnit
{
    Kilometres,
    Miles,
}

public static class VehicleWords
{
    public static string InWords(this VehicleState state) => state switch
    {
        VehicleState.Planned => Spoken("planned"),
        VehicleState.InBuild => Spoken("in build"),
        VehicleState.OnTheRoad => Spoken("on the road"),
        VehicleState.LaidUp => Spoken("laid up"),
        VehicleState.HandedOver => Spoken("handed over"),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No such state."),
    };

    public static string InWords(this OdometerUnit unit) => unit switch
    {
        OdometerUnit.Kilometres => "km",
        OdometerUnit.Miles => Spoken("mi"),
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No such unit."),
    };
}
