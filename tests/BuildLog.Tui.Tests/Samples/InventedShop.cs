using BuildLog.Gearing.Checks;
using BuildLog.Tui.WhatNow;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Samples;

/// <summary>A small shop written out by hand. Every name and number in it is invented.</summary>
internal static class InventedShop
{
    public const string Banner = "Demo shop, all of it invented; thrown away when you quit.";

    public static WorkbenchModel Workbench(long chosen = 1, string? banner = Banner)
    {
        VehicleModel[] all = [Heron, Drover, Wren];
        return new WorkbenchModel(
            [
                new VehicleRow(1, "Heron estate", "being built", new VerdictCounts(Clash: 1, Open: 1, Watch: 1, Fits: 1)),
                new VehicleRow(2, "Drover 4×4", "on the road", new VerdictCounts(Watch: 1, Fits: 2)),
                new VehicleRow(3, "Wren coupé", "waiting for an axle", new VerdictCounts()),
            ],
            all.Single(vehicle => vehicle.Id == chosen),
            banner);
    }

    /// <summary>Pages without a record: they show what the vehicle's model says.</summary>
#pragma warning disable CA2000 // The screen the pages are added to disposes them.
    public static IReadOnlyList<VehiclePage> Pages() => [new FindingsPage(), new SpeedsPage(), new MeasuredPage(), new GoalPage(), new HistoryPage()];
#pragma warning restore CA2000

    public static IReadOnlyList<WhatNowRow> WhatNow { get; } =
    [
        new(1, "Heron estate", "being built", new VerdictCounts(Clash: 1, Open: 1, Watch: 1, Fits: 1))
        {
            Cruise = "3670 ± 55 rev/min",
            CruiseWanted = "2500 to 3000 rev/min",
            NextJob = "Paint the axle",
            WaitsFor = ["Fit the axle: waits for a part, the longer axle"],
            IdleDays = 12,
            Hours = "41:30 h",
            Spent = "1250.50 EUR",
        },
        new(2, "Drover 4×4", "on the road", new VerdictCounts(Watch: 1, Fits: 2)) { Late = ["by 3 May 2026: test station"], IdleDays = 1 },
        new(3, "Wren coupé", "laid up", new VerdictCounts()) { IsAtRest = true },
    ];

    public static VehicleModel Heron { get; } = new(
        1,
        "Heron estate",
        "being built · 48,310 km",
        DrivelineModel.Single(
            new DrivelineBox("engine", "engine", "Marlin straight six", "2300 rev/min", "", "goal"),
            new DrivelineBox("transmission", "gearbox", "Tarn 4-speed", "1.00", "", "tag", Verdict.Fits),
            new DrivelineBox("axle", "axle", "Hedge 8 beam axle", "4.08", "0.02", "counted", Lines: ["Counted 3 May 2026, one wheel held, three counts of 10 wheel turns."]),
            new DrivelineBox("tyres", "tyres", "205/65R15 on Pond rims", "2.04 m", "0.03", "rolled", Verdict.Clash)),
        new FindingsModel(
        [
            new FindingRow(
                Verdict.Clash,
                "cruise",
                "At 110 km/h the engine turns 3670 ± 55 rev/min; at most 3000 is wanted.",
                "between axle and tyres",
                "The whole interval lies above the wanted window.",
                new WindowBar(3615, 3670, 3725, 2500, 3000, "3670 ± 55 rev/min, wanted 2500 to 3000 rev/min"),
                ["axle ratio 2.79 to 3.34", "an overdrive of 0.68 to 0.81 behind the gearbox"],
                null,
                "owner's goal"),
            new FindingRow(
                Verdict.Open,
                "tyre diameter",
                "Cannot be said: the largest diameter the arches clear is not known.",
                "at the tyres",
                "An input is missing.",
                SettledBy: "measure from the wheel centre to the arch on full bump"),
            new FindingRow(
                Verdict.Watch,
                "axle identity",
                "4.10 (41/10) is likely at 61 %, 45/11 is not excluded.",
                "at the axle",
                "The uncertainty reaches both.",
                new WindowBar(4.06, 4.08, 4.10, 4.095, 4.105, "4.08 ± 0.02, the listed 4.10"),
                SettledBy: "30 wheel turns read to a quarter turn",
                Source: "listed ratios"),
            new FindingRow(Verdict.Fits, "first-gear step", "The step from first to second is 1.62.", "at the gearbox", "Inside.", Source: "common practice, no source"),
        ]),
        new SpeedsModel(
            "Fourth: 30.0 ± 0.4 km/h per 1000 rev/min; 110 km/h at 3670 rev/min",
            ["ratio", "1000", "2000", "3000", "4000", "drop"],
            [
                new SpeedsRow("1st", ["3.54", "8.5", "17", "25", "34", "38 %"]),
                new SpeedsRow("2nd", ["2.18", "13.8", "28", "41", "55", "35 %"]),
                new SpeedsRow("3rd", ["1.41", "21.3", "43", "64", "85", "29 %"]),
                new SpeedsRow("4th", ["1.00", "30.0", "60", "90", "120", ""]),
            ],
            new Sheet.Content.Sawtooth
            {
                Gears = [Gear("1st", 8.47), Gear("2nd", 13.76), Gear("3rd", 21.28), Gear("4th", 30.0)],
                SpeedUnit = "km/h",
                EngineUnit = "rev/min",
                SpeedMax = 135,
                EngineMax = 4500,
                Goal = new(110, 2500, 3000, "cruise goal", "4th"),
            }),
        new MeasurementsModel(
        [
            new SessionRow(
                2,
                "2026-05-03",
                "turn count",
                "Hedge 8 beam axle",
                "4.08 ± 0.02",
                ["one wheel held, read to a quarter turn", "alone"],
                ["10:20 1/2", "10:20.25", "20:40 3/4"],
                ["41/10 at 61 %, 45/11 at 22 %, not listed at 5 %"],
                [new BudgetShare("reading to a quarter turn", 0.83), new BudgetShare("alignment of the wheel's mark", 0.17)]),
            new SessionRow(
                1,
                "2026-04-26",
                "roll-out",
                "205/65R15 on Pond rims",
                "2.04 ± 0.03 m",
                ["loose wheel, unloaded; 2.2 bar"],
                ["1:2101mm", "3:6305mm"],
                ["loaded factor 0.971 ± 0.020 applied"],
                [new BudgetShare("loaded factor of a radial", 0.98), new BudgetShare("tape", 0.02)]),
        ]),
        new GoalModel(
            ["Cruise at 110 km/h in fourth with the engine between 2500 and 3000 rev/min."],
            ["Axle ratio 2.79 to 3.34 with these tyres.", "Rolling circumference 2.50 to 2.99 m with this axle: no tyre that clears the arches."]),
        new HistoryModel(
        [
            new HistoryRow("2026-05-02", "axle", "Dale 7 axle", "Hedge 8 beam axle", "The old one whined and its ratio was too short.", "4020 rev/min", "3670 rev/min"),
            new HistoryRow("2026-04-12", "tyres", null, "205/65R15 on Pond rims", "First set that holds air."),
        ]));

    public static VehicleModel Drover { get; } = new(
        2,
        "Drover 4×4",
        "on the road · 121,400 km",
        new DrivelineModel(
            [
                new DrivelineBox("engine", "engine", "Otter four", "2500 rev/min", "", "goal"),
                new DrivelineBox("transmission", "gearbox", "Fell 5-speed", "0.83", "", "maker"),
                new DrivelineBox("transfer", "transfer case", "Fell two-range", "1.22", "", "teeth"),
            ],
            [
                [
                    new DrivelineBox("front-axle", "front axle", "Ridge front", "4.69", "0.03", "counted", Verdict.Watch),
                    new DrivelineBox("front-tyres", "front tyres", "7.50R16 bar tread", "2.46 m", "0.04", "label"),
                ],
                [
                    new DrivelineBox("rear-axle", "rear axle", "Ridge rear", "4.70", "", "teeth", Verdict.Fits),
                    new DrivelineBox("rear-tyres", "rear tyres", "7.50R16 bar tread", "2.46 m", "0.04", "label", Verdict.Fits),
                ],
            ]),
        new FindingsModel(
        [
            new FindingRow(
                Verdict.Watch,
                "front against rear",
                "The front turns 0.2 ± 0.9 % slower than the rear; within 1 % is wanted.",
                "between front axle and rear axle",
                "The uncertainty reaches past the limit.",
                new WindowBar(-1.1, -0.2, 0.7, -1, 1, "-0.2 ± 0.9 %, wanted -1 to 1 %"),
                null,
                "count the front axle's teeth, or 40 wheel turns",
                "common practice, no source"),
            new FindingRow(Verdict.Fits, "cruise", "At 90 km/h the engine turns 2900 ± 50 rev/min.", "between rear axle and tyres", "Inside.", new WindowBar(2850, 2900, 2950, null, 3100, "2900 ± 50 rev/min, wanted at most 3100"), Source: "owner's goal"),
            new FindingRow(Verdict.Fits, "low range", "Overall low ratio 52 to 1.", "at the transfer case", "Inside."),
        ]),
        SpeedsModel.Without("The gears below fifth are not known yet. Count each with the gearbox on the bench, or type the maker's ratios with Enter on the gearbox."),
        new MeasurementsModel([]),
        GoalModel.None,
        new HistoryModel([]));

    public static VehicleModel Wren { get; } = new(
        3,
        "Wren coupé",
        "waiting for an axle",
        DrivelineModel.Single(
            new DrivelineBox("engine", "engine", "Marlin straight six", "2300 rev/min", "", "assumed"),
            new DrivelineBox("transmission", "gearbox", "Tarn 4-speed", "1.00", "", "tag"),
            new DrivelineBox("overdrive", "overdrive", "Beck unit", "0.78", "0.01", "counted"),
            new DrivelineBox("axle", "axle", null),
            new DrivelineBox("tyres", "tyres", "185/70R14", "1.93 m", "0.04", "label", Verdict.Open)),
        new FindingsModel([], "No axle is fitted, so nothing can be said yet. Enter on the empty box fits one."),
        SpeedsModel.Without("No axle is fitted. Fit one with Enter on the empty box, or count turns with t."),
        new MeasurementsModel([]),
        GoalModel.None,
        new HistoryModel([]));

    // From an idle of 800 rev/min to the shift at 4500.
    private static Sheet.Content.GearLine Gear(string name, double perThousand) => new(name, perThousand * 0.8, 800, perThousand * 4.5, 4500);
}
