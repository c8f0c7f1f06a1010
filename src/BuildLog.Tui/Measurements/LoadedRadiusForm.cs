using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for the height of the hub's middle over the floor; the mean is noted on the wheels.</summary>
public static class LoadedRadiusForm
{
    private const string Example = "312 mm";

    public static Form For(WheelSetComponent wheels, Action<Action<WheelSetComponent>> save) => new()
    {
        Title = $"Loaded radius: {wheels.Name}",
        HelpPage = "LoadedRadius",
        Cautions = Cautions.AtTheWheel,
        SetUp = SetUps.LoadedRadius,
        SaveCaption = "Keep",
        Entries = [.. ReadingsEntries.For("Hub over floor", Example, "2 mm")],
        Echo = values => Mean(values).Understood(out var radius) ? Says(wheels, radius) : [],
        Save = values => Forms.Checks.Try(() =>
        {
            var noted = Noted.Of(Spec.LoadedRadius, Rounded.WithInterval(Mean(values).OrRefuse(), Units.Millimetre), Source.Measured);
            save(edited => edited.LoadedRadius = noted);
        }),
    };

    private static IReadOnlyList<string> Says(WheelSetComponent wheels, Measured radius)
    {
        var line = $"Loaded radius {Rounded.WithInterval(radius, Units.Millimetre)} (95 %).";
        if (wheels.Size is not { } size) return [line];
        var squat = (size.OverallDiameter / 2) - radius.Value;
        return squat > 0
            ? [line, $"The tyre squats {Rounded.Fixed(squat * 1000, 0)} mm under its load. It is not the rolling radius: a roll-out tells the circumference."]
            : [line, $"That is more than half the {size.Designation}'s diameter: look at the readings and the size."];
    }

    private static Parsed<Measured> Mean(FormValues values) => ReadingsEntries.Mean(values, "loaded radius", Example);
}
