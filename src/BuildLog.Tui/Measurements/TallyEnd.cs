namespace BuildLog.Tui.Measurements;

/// <summary>Which end has come round once more.</summary>
public enum TallyEnd
{
    /// <summary>The slow end: a wheel, a gearbox's output.</summary>
    Driven,

    /// <summary>The quick one: the propshaft, a gearbox's input.</summary>
    Driving,

    /// <summary>The other wheel, where each is counted.</summary>
    OtherDriven,
}
