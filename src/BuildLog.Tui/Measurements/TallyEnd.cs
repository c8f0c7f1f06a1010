namespace BuildLog.Tui.Measurements;

/// <summary>Which end has come round once more.</summary>
public enum TallyEnd
{
    Wheel,
    Propshaft,
}
