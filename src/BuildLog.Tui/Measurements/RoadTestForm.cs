using BuildLog.Data;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;
using Drive = BuildLog.Data.RoadTests.RoadTest;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for one steady run: road speed by satellite, engine speed by the rev counter; the axle ratio follows.</summary>
public static class RoadTestForm
{
    /// <param name="vehicle">What was driven.</param>
    /// <param name="driveline">Today's, for its gears and tyres.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the drive with the edit applied.</param>
    public static Form For(Vehicle vehicle, Driveline driveline, DateOnly today, Action<Action<Drive>> save) => new()
    {
        Title = Spoken($"Road test: {vehicle.Name}"),
        HelpPage = "RoadTest",
        Cautions = Cautions.OnTheRoad,
        SetUp = SetUps.RoadTest,
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            new TextEntry("speed", Spoken("Road speed")) { Hint = Spoken("by satellite, such as 80 km/h"), Check = Forms.Checks.Needed("speed", CruiseGoal.ReadSpeed), Echo = OtherUnits.Of("speed", CruiseGoal.ReadSpeed) },
            new TextEntry("engine", Spoken("Engine speed")) { Hint = Spoken("such as 2450 rpm"), Check = Forms.Checks.Needed("engine", CruiseGoal.ReadEngineSpeed), Echo = OtherUnits.Of("engine", CruiseGoal.ReadEngineSpeed) },
            new ChoiceEntry("gear", Spoken("In gear"), [.. driveline.Steps.Select(step => new ChoiceOption(step.Name, step.Name))]) { Initial = driveline.Steps is [.., var top] ? top.Name : "" },
            new TextEntry("temperatures", Spoken("Temperatures")) { Hint = Spoken("such as water 88 °C, gearbox 71 °C") },
            new TextEntry("vibration", Spoken("Shakes between")) { Hint = Spoken("such as 85 to 95 km/h; empty for nowhere") },
            new TextEntry("noises", Spoken("Noises")) { IsRemembered = true, Hint = Spoken("in which gear, on drive or overrun") },
            new TextEntry("defects", Spoken("Defects")) { Hint = Spoken("what has to be seen to") },
            DayEntry.Past("day", Spoken("Date"), today),
        ],
        Echo = values => Says(values, driveline),
        Save = values => Forms.Checks.Try(() => save(drive =>
        {
            drive.Date = DayText.ReadPast(values["day"], today).OrRefuse();
            drive.Speed = Noted.Speed(values["speed"], Source.Measured);
            drive.EngineSpeed = Noted.EngineSpeed(values["engine"], Source.Measured);
            (drive.Gear, drive.Temperatures, drive.Vibration) = (values["gear"], values["temperatures"], values["vibration"]);
            (drive.Noises, drive.Defects) = (values["noises"], values["defects"]);
        })),
    };

    private static IReadOnlyList<string> Says(FormValues values, Driveline driveline)
    {
        if (!CruiseGoal.ReadSpeed(values["speed"]).Understood(out var speed) || !CruiseGoal.ReadEngineSpeed(values["engine"]).Understood(out var engine)) return [];
        if (driveline.Step(values["gear"]) is not { } step) return [Spoken("The gear's ratio is not known, so nothing follows for the axle; the run is kept all the same.")];
        if (driveline.Tyres?.RollingCircumference is not { } circumference) return [Spoken("The tyres' circumference is not known, so nothing follows for the axle; the run is kept all the same.")];

        var ratio = Parsed.From(() => RoadTest.AxleRatio(speed.Value, engine.Value, step.Gear, circumference.Value, transfer: step.Transfer));
        if (!ratio.Understood(out var axle)) return [ratio.Refusal!.Sentence];
        var said = Spoken($"The axle would be {Rounded.WithInterval(axle, Units.One)} (95 %).");
        return driveline.AtDriving(axle) is { } contradiction ? [said, contradiction] : [said];
    }

    // What the fitted axle is known to be, against what the run says.
    private static string? AtDriving(this Driveline driveline, Measured axle)
    {
        var known = driveline.DrivingPosition == Position.FrontAxle ? driveline.FrontAxle?.Ratio : driveline.RearAxle?.Ratio;
        if (known is null) return null;
        return (axle - known.Value).Interval95 is { Low: <= 0, High: >= 0 }
            ? Spoken($"That agrees with the {Rounded.Value(known.Value, Units.One)} it is known as.")
            : Spoken($"It is known as {Rounded.Value(known.Value, Units.One)}: converter slip, the wrong gear, or the rev counter. Count its turns.");
    }
}
