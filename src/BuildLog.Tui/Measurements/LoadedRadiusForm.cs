using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for the height of the hub's middle over the floor.</summary>
public static class LoadedRadiusForm
{
    /// <param name="wheels">The set the vehicle stands on.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="known">The session that is put right.</param>
    /// <param name="units">The units to show; null for metric ones.</param>
    public static Form For(WheelSetComponent wheels, DateOnly today, Action<Action<LoadedRadiusSession>> save, LoadedRadiusSession? known = null, UnitSystem? units = null) => new()
    {
        Title = SessionEntries.Title(Spoken("Loaded radius"), wheels.Name, known),
        HelpPage = "LoadedRadius",
        Cautions = known is null ? Cautions.AtTheWheel : [],
        SetUp = known is null ? SetUps.LoadedRadius : [],
        SaveCaption = Spoken("Keep"),
        Entries = [.. ReadingsEntries.For(Spoken("Hub over floor"), "312 mm", known?.Tape ?? "2 mm", known), .. SessionEntries.For(today, known)],
        Echo = values => Parsed.From(() => Filled(values, new(wheels)).Result()).Understood(out var radius) ? Says(wheels.Size, radius, units ?? UnitSystem.Metric) : [],
        Save = values => Forms.Checks.Try(() => save(session => SessionEntries.Apply(values, Filled(values, session), today))),
    };

    /// <summary>What the radius says of the tyre's squat.</summary>
    public static IReadOnlyList<string> Says(TyreSize? size, Measured radius, UnitSystem units)
    {
        var line = Spoken($"Loaded radius {Rounded.WithInterval(radius, units.Shown(Units.Millimetre))} (95 %).");
        if (size is null) return [line];
        var squat = (size.OverallDiameter / 2) - radius.Value;
        return squat > 0
            ? [line, Spoken($"The tyre squats {units.ToACaliper(squat)} under its load. It is not the rolling radius: a roll-out tells the circumference.")]
            : [line, Spoken($"That is more than half the {size.Designation}'s diameter: look at the readings and the size.")];
    }

    private static LoadedRadiusSession Filled(FormValues values, LoadedRadiusSession session)
    {
        (session.Readings, session.Tape) = ReadingsEntries.Of(values);
        return session;
    }
}
