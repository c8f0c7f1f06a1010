using BuildLog.Sheet.Content;

namespace BuildLog.Sheet.Tests.Samples;

/// <summary>An invented vehicle with everything a sheet can carry. Its numbers agree with each other.</summary>
internal static class KestrelPickup
{
    public static SheetContent Sheet { get; } = new()
    {
        Id = new Guid("6f1f1b0a-2c55-4d0e-9a51-0d5f6c1c7b11"),
        Created = new DateTimeOffset(2026, 11, 25, 14, 30, 0, TimeSpan.Zero),
        PrintedOn = "25 November 2026",
        Vehicle = new VehicleTitle
        {
            ShopName = "Harrow Lane Restomods",
            Name = "Kestrel pickup",
            Identity =
            [
                new("Make and model", "Merlin Works Kestrel, long bed"),
                new("Year", "1968"),
                new("Chassis number", "KW-L-104 882"),
                new("Engine number", "OR6-30 1177"),
                new("Registration", null),
            ],
            Owner = "A. Osei",
            State = "Running, trim open",
            Odometer = "61 240 km",
        },
        Driveline =
        [
            new("Engine", "Orrin 3.0 straight six", "idle 750, limit 5200 rev/min", "maker's data"),
            new("Gearbox", "Tarn G5 five-speed", "top gear 0.810 : 1", "teeth counted"),
            new("Propshaft", "One piece, 76 mm tube", null, null),
            new("Rear axle", "Fell 9-bolt, open differential", "3.545 ± 0.004 : 1", "measured, 20 turns"),
            new("Tyres", "225/75R15 on 6J × 15", "rolls 2.118 ± 0.009 m a turn", "measured, loaded"),
        ],
        KeyFigures =
        [
            new("Engine speed at 110 km/h, top gear", "2486 ± 11 rev/min"),
            new("Road speed per 1000 rev/min, top", "44.3 ± 0.2 km/h"),
            new("Overall ratio, top gear", "2.871 ± 0.003"),
            new("Drop at the shift into top at 4500", "855 rev/min"),
        ],
        CruiseGoal = "110 km/h in top gear at 2300 to 2600 rev/min.",
        Speeds = new SpeedsTable(
            ["Gear", "Ratio", "Overall", "1500 rev/min", "2500", "3500", "4500", "5200"],
            [
                ["1", "3.680", "13.05", "14.6", "24.3", "34.1", "43.8", "50.6"],
                ["2", "2.140", "7.59", "25.1", "41.9", "58.6", "75.4", "87.1"],
                ["3", "1.410", "5.00", "38.1", "63.6", "89.0", "114", "132"],
                ["4", "1.000", "3.545", "53.8", "89.6", "125", "161", "186"],
                ["5", "0.810", "2.871", "66.4", "111", "155", "199", "230"],
            ],
            "Road speeds in km/h. Driveline locked up, no slip; they are known to ± 0.4 %, nearly all of it the tyre's."),
        Sawtooth = new Sawtooth
        {
            SpeedUnit = "km/h",
            EngineUnit = "rev/min",
            SpeedMax = 200,
            EngineMax = 5200,
            Gears =
            [
                new("1", 7.3, 750, 43.8, 4500),
                new("2", 16.8, 1000, 75.4, 4500),
                new("3", 25.4, 1000, 114.4, 4500),
                new("4", 35.8, 1000, 161.3, 4500),
                new("5", 44.2, 1000, 199.1, 4500),
            ],
            Goal = new GoalMark(110, 2300, 2600, "goal: 110 km/h at 2300 to 2600 rev/min"),
        },
        Findings =
        [
            new("fits", "Cruise goal", "At 110 km/h in top gear the engine turns 2486 rev/min (2464 to 2508, 95 %), inside 2300 to 2600 rev/min."),
            new("watch", "Tyre against wheel arch", "The tyre is 719 ± 4 mm across; the arch leaves room for 722 mm at full bump.",
                "a 215/75R15 is 15 mm smaller", "measure the arch at full bump with the springs out"),
            new("clash", "Speedometer", "It shows 104 km/h at a true 110 km/h: it may never show less than the true speed.",
                "a driven gear of 18 teeth instead of 20"),
            new("open", "Propshaft speed", "The length between the joints is missing.", null, "measure it, car on its wheels"),
        ],
        Evidence =
        [
            new EvidenceEntry
            {
                What = "Rear axle ratio",
                Date = "14 November 2026",
                Who = "J. Marsh, helped by A. Osei",
                Method = "Turns counted, one wheel held",
                Conditions = "On stands, gearbox in neutral, 12 °C",
                Readings = ["35 3/8 turns for 20", "35 1/2 turns for 20", "70 7/8 turns for 40"],
                Result = "3.545 ± 0.004",
                Interval95 = "3.537 to 3.553",
            },
            new EvidenceEntry
            {
                What = "Rolling circumference",
                Date = "15 November 2026",
                Who = "J. Marsh",
                Method = "Roll-out, three turns, chalk marks",
                Conditions = "Loaded with driver, 2.4 bar, level floor",
                Readings = ["6352 mm", "6358 mm", "6349 mm"],
                Result = "2.118 ± 0.009 m",
                Interval95 = "2.100 to 2.136 m",
            },
        ],
        History =
        [
            new HistoryRow
            {
                Date = "2026-03-02", Odometer = "60 880 km", Position = "Gearbox", Removed = "Tarn G4 four-speed",
                Fitted = "Tarn G5 five-speed", Reason = "No tall gear for the motorway", Effect = "cruise 3070 → 2486 rev/min",
            },
            new HistoryRow
            {
                Date = "2026-05-17", Odometer = "60 995 km", Position = "Tyres", Removed = "6.00-16 cross-ply",
                Fitted = "225/75R15", Reason = "Perished", Effect = "cruise + 2 %",
            },
        ],
        Pull = new Pull(
            new CurveChart
            {
                Title = "Power at the wheels and road load",
                Across = "road speed, km/h",
                Up = "power, kW",
                Curves =
                [
                    new("4", CurveKind.Does, [new(36, 15), new(90, 48), new(150, 74), new(186, 70)]),
                    new("5", CurveKind.Does, [new(44, 15), new(111, 48), new(185, 74), new(199, 73)]),
                    new("road load", CurveKind.Needs, [new(0, 0), new(60, 7), new(110, 24), new(170, 74)]),
                ],
            },
            new CurveChart
            {
                Title = "Steepest hill held in each gear",
                Across = "road speed, km/h",
                Up = "gradient, %",
                Curves = [new("4", CurveKind.Does, [new(36, 9), new(90, 11), new(150, 4)]), new("5", CurveKind.Does, [new(44, 7), new(111, 6.5), new(165, 0.5)])],
            },
            "Full throttle, still air, 1640 kg (measured)."),
        Speedometer = new SpeedometerFacts(
            [new("Reads right at", "1000 turns a kilometre"), new("Driven by", "gears 6/20 at the propshaft"), new("Shows at a true 110 km/h", "104.0 ± 0.5 km/h")],
            new CurveChart
            {
                Title = "Shown beyond the truth, against UN R39",
                Across = "true speed, km/h",
                Up = "shown minus true, km/h",
                Curves =
                [
                    new("this speedometer", CurveKind.Does, [new(30, -1.6), new(130, -7.1)]),
                    new("most allowed", CurveKind.Limit, [new(30, 7), new(130, 17)]),
                ],
            }),
        RunningGear =
        [
            new RunningGearRow { Axle = "Front", Tyre = "225/75R15 102S", Wheel = "rim 6 in wide, offset 0 mm", AxleMass = "780 kg, measured", TyresCarry = "1700 kg", SpeedLimit = "S: 180 km/h" },
            new RunningGearRow { Axle = "Rear", Tyre = "225/75R15 102S", Wheel = "rim 6 in wide, offset 0 mm", AxleMass = "860 kg, measured", TyresCarry = "1700 kg", SpeedLimit = "S: 180 km/h" },
        ],
        Propshafts = [new PropshaftRow { Piece = "Propshaft", Tube = "76.2 mm across, wall 2.1 mm", Yokes = "in line" }],
        Work = new WorkDone([new("14 Nov 2026", "axle counted and checked", "J. Marsh", "3.5"), new("15 Nov 2026", "tyres rolled out", "J. Marsh", "1.5")], "5.0 h"),
        Costs = new MoneySpent([new("2 Mar 2026", "gearbox", "Bastian's yard", "R-104", "EUR 640.00")], ["EUR 640.00"]),
        Defects = ["The speedometer shows less than the true speed."],
        Assumptions = ["Grip of the tyres: 0.8, a dry road."],
        OpenPoints =
        [
            "The engine's limit is the maker's figure for a new engine; this one has not been opened.",
            "Tyre growth at speed is not counted in.",
        ],
        Signatures = [new("Built and measured by", "J. Marsh"), new("Received by")],
    };
}
