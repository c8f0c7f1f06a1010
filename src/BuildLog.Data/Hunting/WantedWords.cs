namespace BuildLog.Data.Hunting;

/// <summary>What kind of part is hunted.</summary>
public enum WantedKind
{
    Engine,
    Transmission,
    Overdrive,
    TransferCase,
    Propshaft,
    Axle,
    Tyres,
    Wheels,
    Speedometer,
    Other,
}

/// <summary>How the hunt stands.</summary>
public enum WantedState
{
    Hunting,
    Found,
    Dropped,
}

public static class WantedWords
{
    public static string InWords(this WantedKind kind) => kind switch
    {
        WantedKind.Engine => "engine",
        WantedKind.Transmission => "gearbox",
        WantedKind.Overdrive => "overdrive",
        WantedKind.TransferCase => "transfer case",
        WantedKind.Propshaft => "propshaft",
        WantedKind.Axle => "axle",
        WantedKind.Tyres => "tyres",
        WantedKind.Wheels => "wheels",
        WantedKind.Speedometer => "speedometer",
        WantedKind.Other => "other",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    public static string InWords(this WantedState state) => state switch
    {
        WantedState.Hunting => "hunting",
        WantedState.Found => "found",
        WantedState.Dropped => "dropped",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No such state."),
    };
}
