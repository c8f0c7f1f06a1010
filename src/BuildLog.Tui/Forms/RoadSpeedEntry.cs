using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Forms;

/// <summary>An entry that asks for a road speed. A bare number is one in the units that are shown, and is kept with its unit.</summary>
internal static class RoadSpeedEntry
{
    private const string Id = "speed";

    public static TextEntry Of(string typed, string hint, UnitSystem units) => new(Id, Spoken("Road speed"))
    {
        Initial = typed,
        Hint = Spoken($"{hint}; a bare number is {units.Speed}"),
        Check = Checks.Needed(Id, text => Read(text, units)),
        Echo = OtherUnits.Of(Id, text => Read(text, units)),
    };

    /// <summary>What was typed, as it goes into the record.</summary>
    public static string In(FormValues values, UnitSystem units) => units.WithUnit(values[Id]);

    private static Parsed<Typed> Read(string text, UnitSystem units) => CruiseGoal.ReadSpeed(text, units.Speed);
}
