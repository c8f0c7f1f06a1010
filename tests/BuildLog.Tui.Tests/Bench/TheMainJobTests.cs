using BuildLog.Data.Files;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Tests.Commands;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Bench;

/// <summary>The main job end to end on a real record: vehicle, parts, count, roll-out, goal, finding, sheet, and all still there afterwards.</summary>
public sealed class TheMainJobTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-main-job-").FullName;

    private string Record => Path.Combine(folder, "shop.db");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void A_counted_axle_becomes_a_finding_and_a_printed_sheet_and_is_there_at_the_next_start()
    {
        var sheet = Path.Combine(folder, "bittern.pdf");
        using (var shop = ShopFile.Open(Record))
        {
            var acts = new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric);
            var view = new AnsweringView(acts.Open());

            acts.NewVehicle(view.Type(("name", "Bittern"), ("owner", "Ann Ferrow")));
            acts.FitPart(view.Type(("part", "Harrow 2.4 four"), ("redline", "5000 rpm")), nameof(Position.Engine));
            acts.FitPart(view.Type(("part", "Pinewood four-speed"), ("gears", "3.64 2.09 1.38 1")), nameof(Position.Transmission));
            acts.FitPart(view.Pick(nameof(Position.RearAxle)).Type(("part", "Harrow banjo")), null);
            acts.FitPart(view.Type(("part", "steel wheels"), ("size", "205/65R15 94H")), nameof(Position.Tyres));
            acts.CountTurns(view.Pick("typed").Type(("wheels", nameof(Wheels.OneHeld)), ("turns", "10:23 3/4\n20:47.5"), ("helper", "Piet")));
            acts.RollOut(view.Pick("typed").Type(("loaded", "yes"), ("rolls", "1:2005 mm\n5:10.02 m")));
            acts.EditGoal(view.Pick("cruise").Type(("speed", "100 km/h"), ("engine", "2500 rpm")));
            acts.WriteSheet(view.Type(("file", sheet)));

            Assert.Empty(view.Refused);
            Assert.Equal(
                ["f fits the gearbox", "f fits the axle", "f fits the tyres", "t counts the axle's turns", "g sets the goal", "0 shows ways out"],
                view.Said.Where(said => said.Contains(" Next: ", StringComparison.Ordinal)).Skip(1).Select(said => said[(said.IndexOf(" Next: ", StringComparison.Ordinal) + 7)..^1]));
            AssertJudged(view.Model);
        }

        Assert.Equal("%PDF-", File.ReadAllText(sheet)[..5]);
        using var again = ShopFile.Open(Record);
        AssertJudged(new WorkbenchActs(again, TimeProvider.System, UnitSystem.Metric).Open());
    }

    // 100 km/h = 27.78 m/s; / 2.004 m · 4.75 · 60 = 3950 rev/min: far above 2375 to 2625.
    private static void AssertJudged(WorkbenchModel model)
    {
        var vehicle = model.Chosen!;
        var finding = Assert.Single(vehicle.Findings.Rows, row => row.Title == "Cruise engine speed");
        Assert.Equal(Verdict.Clash, finding.Verdict);
        Assert.InRange(finding.Bar!.Value, 3945, 3955);
        Assert.Contains(finding.Cures!, cure => cure.StartsWith("axle ratio 2.87 to 3.14", StringComparison.Ordinal));
        Assert.Equal(["10:23 3/4", "20:47.5"], vehicle.Measurements.Rows.Single(row => row.Method == "turn count").Readings!);
        Assert.Equal(4, vehicle.Speeds.Rows.Count);
        Assert.Equal(4, vehicle.History.Rows.Count);
    }

    [Fact]
    public void A_refused_fitting_leaves_neither_part_nor_fitting_and_can_be_mended_and_saved()
    {
        using var shop = ShopFile.Open(Record);
        var acts = new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric);
        var view = new AnsweringView(acts.Open());
        acts.NewVehicle(view.Type(("name", "Bittern")));
        acts.FitPart(view.Type(("part", "Harrow banjo"), ("day", "2026-05-03"), ("odometer", "84 210")), nameof(Position.RearAxle));

        acts.FitPart(view.Pick("new").Type(("part", "Harrow second"), ("day", "2026-05-01")), nameof(Position.RearAxle));

        Assert.Single(view.Refused);
        Assert.Single(shop.Parts());
        view.Refused.Clear();
        acts.FitPart(view.Pick("new").Type(("part", "Harrow second"), ("day", "2026-05-05")), nameof(Position.RearAxle));
        Assert.Empty(view.Refused);
        Assert.Equal(2, shop.Parts().Count);
    }

    [Theory]
    [InlineData(nameof(Position.Tyres), "wide pair")]
    [InlineData(nameof(Position.FrontTyres), "narrow pair")]
    [InlineData(null, null)]
    public void Of_two_pairs_of_tyres_the_one_that_was_chosen_is_rolled(string? chosen, string? rolled)
    {
        using var shop = ShopFile.Open(Record);
        var acts = new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric);
        var view = new AnsweringView(acts.Open());
        acts.NewVehicle(view.Type(("name", "Bittern")));
        acts.FitPart(view.Type(("part", "wide pair"), ("size", "235/60R15")), nameof(Position.Tyres));
        acts.FitPart(view.Pick("new").Type(("part", "narrow pair"), ("size", "195/65R15")), nameof(Position.FrontTyres));

        acts.RollOut(view.Pick(chosen).Pick("typed").Type(("loaded", "yes"), ("rolls", "5:9.60 m")));

        Assert.Empty(view.Refused);
        Assert.Equal(rolled, shop.Sessions(shop.FindVehicle("Bittern")).SingleOrDefault()?.Subject);
    }

    // Front tyres fitted first: nothing is asked, as there is one set to roll, and the bench says what is missing.
    [Fact]
    public void Front_tyres_alone_are_rolled_and_the_rear_ones_asked_for()
    {
        using var shop = ShopFile.Open(Record);
        var acts = new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric);
        var view = new AnsweringView(acts.Open());
        acts.NewVehicle(view.Type(("name", "Bittern")));
        acts.FitPart(view.Type(("part", "narrow pair"), ("size", "195/65R15")), nameof(Position.FrontTyres));

        acts.RollOut(view.Pick("typed").Type(("loaded", "yes"), ("rolls", "5:9.60 m")));

        Assert.Empty(view.Refused);
        Assert.Contains(view.Model.Chosen!.Findings.Rows, row => row is { Title: "Rear tyres", Verdict: Verdict.Open });
        Assert.Contains(view.Model.Chosen.Driveline.Trunk, box => box.Part == "narrow pair");
    }

    [Fact]
    public void What_the_workbench_stored_the_command_line_reports_and_adds_to()
    {
        using (var shop = ShopFile.Open(Record))
        {
            var acts = new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric);
            var view = new AnsweringView(acts.Open());
            acts.NewVehicle(view.Type(("name", "Bittern")));
            acts.FitPart(view.Type(("part", "Pinewood four-speed"), ("gears", "3.64 2.09 1.38 1.00")), nameof(Position.Transmission));
            acts.FitPart(view.Type(("part", "Harrow banjo")), nameof(Position.RearAxle));
            acts.FitPart(view.Type(("part", "steel wheels"), ("circumference", "2.00 m")), nameof(Position.Tyres));
            acts.EditGoal(view.Pick("cruise").Type(("speed", "100 km/h"), ("engine", "2500 rpm")));
        }

        Assert.Equal(1, Said.By("findings", "bit", "--database", Record, "--fail-on", "open").ExitCode);
        Assert.Equal(0, Said.By("axle", "--turns", "10:15", "--wheels", "one-held", "--record", "Bittern", "--database", Record).ExitCode);

        // 100 km/h / 2.00 m · 3.00 = 2500 rev/min.
        var finding = Said.By("findings", "Bittern", "--database", Record, "--json").Json.GetProperty("findings").EnumerateArray().Single(each => each.GetProperty("check").GetString() == "cruise");
        Assert.Equal(2500, finding.GetProperty("value").GetDouble(), 6);
        Assert.Equal("fits", finding.GetProperty("verdict").GetString());
        Assert.Equal("rev/min", finding.GetProperty("unit").GetString());
    }
}
