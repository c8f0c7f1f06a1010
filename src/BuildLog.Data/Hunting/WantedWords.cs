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
        WantedKind.Engine => Spoken("engine"),
        WantedKind.Transmission => Spoken("gearbox"),
        WantedKind.Overdrive => Spoken("overdrive"),
        WantedKind.TransferCase => Spoken("transfer case"),
        WantedKind.Propshaft => Spoken("propshaft"),
        WantedKind.Axle => Spoken("axle"),
        WantedKind.Tyres => Spoken("tyres"),
        WantedKind.Wheels => Spoken("wheels"),
        WantedKind.Speedometer => Spoken("speedometer"),
        WantedKind.Other => Spoken("other"),
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No such kind."),
    };

    public static string InWords(this WantedState state) => state switch
    {
        WantedState.Hunting => Spoken("hunting"),
        WantedState.Found => Spoken("found"),
        WantedState.Dropped => Spoken("dropped"),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No such state."),
    };
}
