using BuildLog.Data;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>Everything the record knows of one vehicle on one day, read once and judged once, for screen, sheet and command line.</summary>
public sealed record VehicleOnBench
{
    public required Vehicle Vehicle { get; init; }

    public required DrivelineOfDay Fitted { get; init; }

    public required OwnersGoals Goals { get; init; }

    public required IReadOnlyList<Finding> Findings { get; init; }

    public required IReadOnlyList<Session> Sessions { get; init; }

    public IReadOnlyList<Drive> Drives { get; init; } = [];

    public required IReadOnlyList<Swap> History { get; init; }

    public Driveline Driveline => Fitted.Driveline;

    public static VehicleOnBench Read(Shop shop, Vehicle vehicle, DateOnly day) => Read(shop, JudgedVehicle.Read(shop, vehicle, day));

    /// <summary>The rest of a vehicle that has been judged already.</summary>
    public static VehicleOnBench Read(Shop shop, JudgedVehicle judged) => new()
    {
        Vehicle = judged.Vehicle,
        Fitted = judged.Fitted,
        Goals = judged.Goals,
        Findings = judged.Findings,
        Sessions = shop.Sessions(judged.Vehicle),
        Drives = [.. shop.RoadTests(judged.Vehicle).Select(test => new Drive(test, judged.Vehicle.Name, shop.DrivelineWhen(judged.Vehicle, test.Day)?.Driveline))],
        History = shop.History(judged.Vehicle),
    };

    /// <param name="units">The units to show.</param>
    /// <param name="speeds">What the table of speeds shows; null for the usual.</param>
    public VehicleModel ToModel(UnitSystem units, SpeedsWish? speeds = null) => new(
        Vehicle.Id,
        Vehicle.Name,
        Facts(),
        DrivelineBoxes.Of(Driveline, Findings, units),
        FindingsWords.Of(Findings, units),
        SpeedsWords.Of(Driveline, Goals, units, speeds),
        MeasurementsWords.Of(Sessions, Drives, units),
        GoalWords.Of(Goals, DrivelineWindows.Of(Driveline, Goals, Findings), units),
        HistoryWords.Of(History, Goals, units, Fitted.Doubts));

    private string Facts() => string.Join(", ", ((string[])[Vehicle.State.InWords(), Vehicle.Owner, Vehicle.Registration, Fitted.Doubts.Count > 0 ? Spoken("what is fitted today is not certain, see History") : ""]).Where(fact => fact.Length > 0));
}
