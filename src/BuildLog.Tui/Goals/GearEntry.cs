using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Goals;

/// <summary>Asks which of the gears there are a goal is for.</summary>
internal static class GearEntry
{
    private const string Id = "gear";
    private const string Top = "top";

    /// <param name="chosen">The goal's gear; empty for the top one. It stays choosable although the gearbox that had it is out.</param>
    /// <param name="gears">What the driver can select; empty while no gearbox is fitted.</param>
    public static Entry Of(string chosen, IReadOnlyList<string> gears)
    {
        var all = chosen.Length == 0 || gears.Contains(chosen, StringComparer.OrdinalIgnoreCase) ? gears : [.. gears, chosen];
        return new ChoiceEntry(Id, Spoken("In gear"), [new(Top, Spoken("top gear")), .. all.Select(gear => new ChoiceOption(gear, Spoken($"gear {gear}")))]) { Initial = chosen.Length == 0 ? Top : chosen };
    }

    /// <summary>The gear as the goal keeps it.</summary>
    public static string In(FormValues values) => values[Id] == Top ? "" : values[Id];
}
