using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Charts;

/// <summary>The chart in words, for those who cannot see it.</summary>
internal static class SawtoothWords
{
    public static string Of(Sawtooth chart)
    {
        var gears = chart.Gears.Select(gear => Spoken($"{gear.Name} from {gear.FromSpeed:0} to {gear.ToSpeed:0} {chart.SpeedUnit} at {gear.FromEngine:0} to {gear.ToEngine:0} {chart.EngineUnit}"));
        var goal = chart.Goal is { } mark ? Spoken($". Marked: {mark.Label}") : "";
        return PlainText.Line(Spoken($"Chart of engine speed against road speed. {string.Join("; ", gears)}{goal}."));
    }
}
