using BuildLog.Data.Fitments;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Fitments;

/// <summary>An entry that asks what the odometer showed, with what was understood below it in both units.</summary>
internal static class OdometerEntry
{
    /// <param name="id">Its value.</param>
    /// <param name="caption">When it showed that.</param>
    /// <param name="unit">That of a bare number: the vehicle's.</param>
    /// <param name="known">What stands there at first; it may stay, however it was written.</param>
    public static TextEntry Of(string id, string caption, OdometerUnit unit, OdometerReading? known = null) => new(id, caption)
    {
        Initial = known?.InWords ?? "",
        Hint = Spoken("such as 84 210; empty if it was not read"),
        Check = values => values[id] == known?.InWords ? null : Checks.IfTyped(id, text => OdometerReading.ReadDistance(text, unit))(values),
        Echo = OtherUnits.Of(id, text => OdometerReading.ReadDistance(text, unit)),
    };
}
