using BuildLog.Data.RoadTests;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Sheets;

/// <summary>The drives of a vehicle for paper, and the bolts that were tightened again.</summary>
internal static class RoadTestsOfVehicle
{
    public static IEnumerable<RoadTestRow> Drives(VehicleFolder folder, SheetWishes wishes)
        => folder.RoadTests.Where(test => wishes.Holds(test.Date)).Select(Row);

    public static IEnumerable<TightenedRow> Tightened(VehicleFolder folder, SheetWishes wishes)
        => folder.Retorques.Where(bolt => wishes.Holds(bolt.Date)).Select(bolt => new TightenedRow(DayText.InShort(bolt.Date), bolt.What, bolt.Torque?.InWords, bolt.Initials));

    /// <summary>What a drive showed and nobody has put right.</summary>
    public static IEnumerable<string> OpenDefects(VehicleFolder folder)
        => folder.RoadTests.Where(test => test.Defects.Length > 0 && test.Fix.Length == 0)
            .Select(test => Spoken($"{test.Defects.TrimEnd('.')} (road test of {test.Day.InWords})."));

    private static RoadTestRow Row(RoadTest test) => new()
    {
        Date = DayText.InShort(test.Day),
        Odometer = test.Odometer?.InWords,
        Read = Told(", ", Joined(test), test.Temperatures),
        Noticed = Told("; ", test.Vibration.Length > 0 ? Spoken($"shakes {test.Vibration}") : "", test.Noises),
        Defects = Told("", test.Defects),
        Fix = Told("", test.Fix),
    };

    private static string Joined(RoadTest test)
    {
        var gear = test.Gear.Length > 0 ? Spoken($"in {test.Gear}") : "";
        return Told(" ", test.EngineSpeed?.InWords ?? "", test.Speed is { } speed ? Spoken($"at {speed.InWords}") : "", gear) ?? "";
    }

    /// <summary>Null where there is nothing to tell.</summary>
    private static string? Told(string between, params IReadOnlyList<string> facts)
        => facts.Where(fact => fact.Length > 0).ToList() is { Count: > 0 } told ? string.Join(between, told) : null;
}
