using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;
using BuildLog.Tui.Forms;
using Drive = BuildLog.Data.RoadTests.RoadTest;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks what the odometer showed over a measured distance; what it reads, and the correction, follow.</summary>
/// <remarks>The record keeps it as a drive whose defect is the error, until it has sessions of its own for a speedometer.</remarks>
public static class SpeedometerRunForm
{
    public static Form For(Vehicle vehicle, DateOnly today, Action<Action<Drive>> save) => new()
    {
        Title = $"Speedometer run: {vehicle.Name}",
        HelpPage = "SpeedometerRun",
        Cautions = Cautions.OnTheRoad,
        SetUp = SetUps.SpeedometerRun,
        SaveCaption = "Keep",
        Entries =
        [
            Distance("real", "Measured", "the true distance, such as 10 km or 5 mi"),
            new TextEntry("realStep", "  good to") { Initial = "10 m", Hint = "posts and satellite 10 m", Check = Forms.Checks.Needed("realStep", Read) },
            Distance("shown", "Odometer showed", "last less first, such as 10.4 km"),
            new TextEntry("shownStep", "  read to") { Initial = "0.1 km", Hint = "the smallest step of its drum", Check = Forms.Checks.Needed("shownStep", Read) },
            DayEntry.Past("day", "Date", today),
        ],
        Echo = values => Run(values).Understood(out var run) ? Says(run) : [],
        Save = values => Forms.Checks.Try(() =>
        {
            var run = Run(values).OrRefuse();
            save(drive =>
            {
                drive.Date = DayText.ReadPast(values["day"], today).OrRefuse();
                drive.Defects = $"Odometer showed {values["shown"]} over a measured {values["real"]}. {string.Join(" ", Says(run))}";
            });
        }),
    };

    private static TextEntry Distance(string id, string caption, string hint) => new(id, caption) { Hint = hint, Check = Forms.Checks.Needed(id, Read), Echo = OtherUnits.Of(id, Read) };

    private static Parsed<Typed> Read(string text) => QuantityText.ReadPlain(text, Kind.Length);

    // The odometer is read to a step at both ends of the run, the distance is good to its own half-width.
    private static Parsed<Reading> Run(FormValues values)
        => Read(values["real"]).Then(real => Read(values["realStep"]).Then(realStep => Read(values["shown"]).Then(shown => Read(values["shownStep"]).Then(shownStep => Parsed.From(() =>
        {
            if (!(real.Value > 0 && shown.Value > 0)) throw new RefusedException("distance", "Both distances must be more than zero.", "10 km");
            return Reading.OdometerObserved(
                Measured.From(shown.Value, Input.Rectangular("odometer's drum", shownStep.Value, new Evidence("odometer run", _ => "drive a longer measured distance"))),
                Measured.From(real.Value, Input.Rectangular("measured distance", realStep.Value, new Evidence("measured distance", _ => "use surveyed posts"))));
        })))));

    private static IReadOnlyList<string> Says(Reading run)
    {
        var error = run.OdometerError;
        var way = error.Interval95 is { Low: <= 0, High: >= 0 } ? "right as far as this run can tell" : error.Value > 0 ? "high" : "low";
        return
        [
            $"It shows {Rounded.WithInterval(run.Share, Units.One)} of the truth (95 %): {way}.",
            $"A correction box of {Rounded.WithInterval(run.Correction, Units.One)} would set it right.",
        ];
    }
}
