using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Tests.Samples;

/// <summary>Other sheets that tests print.</summary>
internal static class Sheets
{
    public static SheetContent Empty { get; } = new()
    {
        Id = new Guid("0b0c5c9e-8a8f-4f50-a2f5-0c9b8a1d2e3f"),
        Created = new DateTimeOffset(2026, 1, 2, 3, 4, 5, TimeSpan.Zero),
    };

    public static SheetContent Named(string vehicle) => Empty with { Vehicle = new VehicleTitle { Name = vehicle } };

    public static SheetContent WithHistory(int rows) => KestrelPickup.Sheet with
    {
        History = [.. Enumerable.Range(1, rows).Select(i => new HistoryRow { Date = $"day{i:000}", Position = "Rear axle", Fitted = $"axle {i}" })],
    };

    /// <summary>The same text wherever a sheet takes one.</summary>
    public static SheetContent Everywhere(string text) => Empty with
    {
        PrintedOn = text,
        Vehicle = new VehicleTitle { ShopName = text, Name = text, Identity = [new(text, text)], Owner = text, State = text, Odometer = text },
        Driveline = [new(text, text, text, text), new(text, text, text, text)],
        KeyFigures = [new(text, text), new(text, text)],
        PowerAndValue = [new(text, text)],
        CruiseGoal = text,
        Judged = text,
        Speeds = new SpeedsTable([text, text, text], [[text, text, text], [text, text, text]], text),
        Sawtooth = new Sawtooth
        {
            SpeedUnit = "km/h",
            EngineUnit = "rev/min",
            SpeedMax = 160,
            EngineMax = 5000,
            Gears = [new(text, 10, 1000, 50, 5000), new(text, 20, 1000, 100, 5000)],
            Goal = new GoalMark(90, 2300, 2600, text),
        },
        Findings = [new(text, text, text, text, text)],
        PartWindows = [text, text],
        AxleAndTyre = new RegionMap([text, text], text, text, ["xxF+", "FFw?"]),
        Options = new ComparedOptions([text, text], [new(text, [text, text]), new(text, [text, null])]),
        Evidence = [new EvidenceEntry { What = text, Date = text, Method = text, Who = text, Conditions = text, Readings = [text, text], Result = text, Interval95 = text }],
        History = [new HistoryRow { Date = text, Odometer = text, Position = text, Removed = text, Fitted = text, Reason = text, Effect = text }],
        Reader = SheetReader.Own,
        Pull = new Pull(Chart(text), Chart(text), text),
        Speedometer = new SpeedometerFacts([new(text, text)], Chart(text)),
        RunningGear = [new RunningGearRow { Axle = text, Tyre = text, Wheel = text, AxleMass = text, TyresCarry = text, SpeedLimit = text }],
        Propshafts = [new PropshaftRow { Piece = text, Tube = text, Length = text, JointAngles = text, Yokes = text, CriticalSpeed = text, FastestTurn = text }],
        RoadTests = [new RoadTestRow { Date = text, Odometer = text, Read = text, Noticed = text, Defects = text, Fix = text }],
        Tightened = [new TightenedRow(text, text, text, text)],
        Work = new WorkDone([new(text, text, text, text)], text),
        Costs = new MoneySpent([new(text, text, text, text, text)], [text, text]),
        Photos = [new SheetPhoto(text, new byte[] { 1, 2, 3 }, text)],
        Defects = [text],
        Assumptions = [text],
        OpenPoints = [text, text],
        ToDo = [text],
        Unfinished = [text],
        Watched = [text],
        Cautions = [text],
        Signatures = [new(text, text, text)],
    };

    private static CurveChart Chart(string text) => new()
    {
        Title = text,
        Across = text,
        Up = text,
        Curves = [new(text, CurveKind.Does, [new(0, 0), new(10, 20)]), new(text, CurveKind.Limit, [new(0, 5), new(10, 5)])],
    };
}
