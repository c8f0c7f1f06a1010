using BuildLog.Data;
using BuildLog.Data.Days;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using Drive = BuildLog.Data.RoadTests.RoadTest;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for one steady run: road speed by satellite, engine speed by the rev counter; the axle ratio follows.</summary>
public static class RoadTestForm
{
    /// <param name="vehicle">What was driven.</param>
    /// <param name="fittedOn">The driveline of a day, for its gears and tyres: a drive speaks of the parts it was driven with. Null where the day leaves open which those were.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the drive with the edit applied.</param>
    /// <param name="known">The drive that is put right.</param>
    /// <param name="units">The units to show; null for metric ones.</param>
    public static Form For(Vehicle vehicle, Func<LooseDay, Driveline?> fittedOn, DateOnly today, Action<Action<Drive>> save, Drive? known = null, UnitSystem? units = null) => new()
    {
        Title = known is null ? Spoken($"Road test: {vehicle.Name}") : Spoken($"Correct the {Spoken("road test")} {known}: {vehicle.Name}"),
        HelpPage = "RoadTest",
        Cautions = Cautions.OnTheRoad,
        SetUp = SetUps.RoadTest,
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            RoadSpeedEntry.Of(known?.Speed?.Text ?? "", Spoken("by satellite, such as 80 km/h"), units ?? UnitSystem.Metric),
            new TextEntry("engine", Spoken("Engine speed"))
            {
                Initial = known?.EngineSpeed?.Text ?? "",
                Hint = Spoken("such as 2450 rpm"),
                Check = Forms.Checks.Needed("engine", CruiseGoal.ReadEngineSpeed),
                Echo = OtherUnits.Of("engine", CruiseGoal.ReadEngineSpeed),
            },
            Gears(fittedOn(LooseDay.On(known?.Date ?? today)), known?.Gear),
            new TextEntry("temperatures", Spoken("Temperatures")) { Initial = known?.Temperatures ?? "", Hint = Spoken("such as water 88 °C, gearbox 71 °C") },
            new TextEntry("vibration", Spoken("Shakes between")) { Initial = known?.Vibration ?? "", Hint = Spoken("such as 85 to 95 km/h; empty for nowhere") },
            new TextEntry("noises", Spoken("Noises")) { Initial = known?.Noises ?? "", IsRemembered = true, Hint = Spoken("in which gear, on drive or overrun") },
            new TextEntry("defects", Spoken("Defects")) { Initial = known?.Defects ?? "", Hint = Spoken("what has to be seen to") },
            DayEntry.Past("day", Spoken("Date"), today, known?.Day),
        ],
        Echo = values => CruiseGoal.ReadSpeed(RoadSpeedEntry.In(values, units ?? UnitSystem.Metric)).Understood(out var speed) && CruiseGoal.ReadEngineSpeed(values["engine"]).Understood(out var engine)
            ? Says(fittedOn(DayText.ReadLoosePast(values["day"], today).Understood(out var day) ? day : LooseDay.On(today)), values["gear"], speed.Value, engine.Value)
            : [],
        Save = values => Forms.Checks.Try(() => save(drive =>
        {
            drive.Day = DayEntry.In(values, "day", today);
            drive.Speed = Noted.Speed(RoadSpeedEntry.In(values, units ?? UnitSystem.Metric), Source.Measured);
            drive.EngineSpeed = Noted.EngineSpeed(values["engine"], Source.Measured);
            (drive.Gear, drive.Temperatures, drive.Vibration) = (values["gear"], values["temperatures"], values["vibration"]);
            (drive.Noises, drive.Defects) = (values["noises"], values["defects"]);
        })),
    };

    /// <summary>What a drive says of the axle that was in the vehicle then.</summary>
    public static IReadOnlyList<string> Says(Driveline? driven, string gear, double speed, double engine)
    {
        if (driven is null) return [Spoken("That day leaves open whether it was before or after a swap, so nothing follows for the axle; the run is kept all the same.")];
        if (driven.Step(gear) is null) return [Spoken("The gear's ratio is not known, so nothing follows for the axle; the run is kept all the same.")];
        if (RoadTest.AxleRatio(driven, gear, speed, engine) is not { } ratio) return [Spoken("The tyres' circumference is not known, so nothing follows for the axle; the run is kept all the same.")];
        if (!ratio.Understood(out var axle)) return [ratio.Refusal!.Sentence];

        var said = Spoken($"The axle would be {Rounded.WithInterval(axle, Units.One)} (95 %).");
        return driven.DrivingAxle?.Ratio is { } known ? [said, Against(known, axle)] : [said];
    }

    // A gear that the vehicle no longer has is still the one it was driven in.
    private static ChoiceEntry Gears(Driveline? driven, string? gear)
    {
        List<string> names = [.. driven?.Steps.Select(step => step.Name) ?? []];
        if (gear is not null && !names.Contains(gear)) names.Add(gear);
        return new("gear", Spoken("In gear"), [.. names.Select(name => new ChoiceOption(name, name))]) { Initial = gear ?? names.LastOrDefault() ?? "" };
    }

    private static string Against(Known known, Measured axle)
        => known.Value.AgreesWith(axle)
            ? Spoken($"That agrees with the {Rounded.Value(known.Value, Units.One)} it is known as.")
            : Spoken($"It is known as {Rounded.Value(known.Value, Units.One)}: converter slip, the wrong gear, or the rev counter. Count its turns.");
}
