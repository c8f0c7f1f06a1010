using BuildLog.Data.Files;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Parts;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Bench;

/// <summary>What is typed of joints and teeth reaches the driveline, and a gear counted from the command line becomes its evidence.</summary>
public sealed class JointsAndTeethTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-joints-").FullName;

    private string Record => Path.Combine(folder, "shop.db");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void What_was_seen_at_the_joints_is_judged()
    {
        var driveline = Built(
            [("part", "six"), ("BellHousing", "Corvane six"), ("plate", nameof(Plate.Flywheel)), ("starter", nameof(StarterSide.Left)), ("turns", nameof(Sense.Clockwise)), ("PilotBore", "15.05 mm")],
            [("part", "five-speed"), ("gears", "3.3 2.1 1.4 1 0.8"), ("BellHousing", "corvane SIX"), ("InputSpline", "26 × 1 in"), ("DiscSpline", "10 × 1 in"), ("Spigot", "15.00 mm"),
                ("ClutchRating", "260 Nm"), ("Output", "27 splines"), ("starter", nameof(StarterSide.Left)), ("turns", nameof(Sense.Clockwise)), ("linkage", nameof(Presence.Fitted)), ("brake", nameof(Presence.Absent))]);
        var findings = AllChecks.Look(driveline, Gearing.Goals.OwnersGoals.None);

        Assert.All(["bell-housing", "flywheel", "pilot", "starter", "rotation", "shift-linkage"], id => Assert.Equal(Verdict.Fits, findings.Single(finding => finding.Check == id).Verdict));
        Assert.Equal(Verdict.Clash, findings.Single(finding => finding.Check == "input-spline").Verdict);
    }

    // 29/19 · 31/14 = 3.3797.
    [Fact]
    public void Teeth_typed_instead_of_ratios_are_the_gears()
    {
        var gears = Built([("part", "six")], [("part", "four-speed"), ("teeth", "29/19 31/14 25/18 20/23 1")]).Transmission!.Gears;

        Assert.Equal(["1", "2", "3", "4"], gears.Select(gear => gear.Name));
        Assert.All(gears, gear => Assert.Equal(Source.TeethCounted, gear.Ratio.Source));
        Assert.Equal(3.3797, gears[0].Ratio.Value.Value, 1e-4);
    }

    [Theory]
    [InlineData("", "3.380 2.120 1.000, exact")]
    [InlineData("3.38 2.12 1", "3.380 2.120 1.000, exact, as typed")]
    [InlineData("3.32 2.12 1", "3.380 2.120 1.000, exact; is gear 1 really 3.32?")]
    [InlineData("3.38 2.12", "3.380 2.120 1.000, exact; but 2 ratios are typed")]
    public void A_ratio_that_is_not_its_teeth_is_asked_about_while_it_is_typed(string ratios, string echo)
    {
        var entries = PartEntries.For(Position.Transmission);

        Assert.Equal(echo, entries.Entries(entries.New()).Single(entry => entry.Id == "teeth").Echo!(new(new Dictionary<string, string> { ["teeth"] = "29/19 31/14 25/18 1", ["gears"] = ratios })));
    }

    // 78/(78 + 22) = 0.78; 41/11 = 3.727.
    [Theory]
    [InlineData(Position.Overdrive, "78/22", "0.70", "ratio 0.780, exact; is it really 0.70?")]
    [InlineData(Position.Overdrive, "78/22", "0.78", "ratio 0.780, exact")]
    [InlineData(Position.RearAxle, "41/11", "3.55", "ratio 3.727, exact; is it really 3.55?")]
    [InlineData(Position.RearAxle, "41/11", "3.73", "ratio 3.727, exact")]
    public void So_is_an_overdrives_and_an_axles(Position position, string teeth, string ratio, string echo)
    {
        var entries = PartEntries.For(position);

        Assert.Equal(echo, entries.Entries(entries.New()).Single(entry => entry.Id == "teeth").Echo!(new(new Dictionary<string, string> { ["teeth"] = teeth, ["ratio"] = ratio })));
    }

    [Fact]
    public void A_counted_gear_is_kept_and_counts_before_what_was_printed()
    {
        _ = Built([("part", "six")], [("part", "four-speed"), ("gears", "3.3 2.1 1.4 1")]);
        var said = Said.By("gearbox", "--turns", "10:20.6", "--record", "Bittern", "--for", "2", "--helper", "Piet", "--database", Record);

        Assert.Equal(0, said.ExitCode);
        Assert.EndsWith("Kept as a session of four-speed on Bittern.", said.Output.TrimEnd(), StringComparison.Ordinal);
        using var shop = ShopFile.Open(Record);
        var second = shop.DrivelineOn(shop.FindVehicle("Bittern"), Today).Driveline.Transmission!.Gears[1].Ratio;
        Assert.Equal((2.06, Source.Measured, false), (Math.Round(second.Value.Value, 9), second.Source, second.Value.IsExact));
        var row = Assert.Single(new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric).Open().Chosen!.Measurements.Rows);
        Assert.Equal(("gear count", "four-speed, gear 2"), (row.Method, row.Subject));
    }

    [Theory]
    [InlineData("Say which gear was counted")]
    [InlineData("four-speed has no gear '6': it has 1, 2, 3, 4.", "--for", "6")]
    public void A_gear_nobody_named_is_not_kept(string sentence, params string[] which)
    {
        _ = Built([("part", "six")], [("part", "four-speed"), ("gears", "3.3 2.1 1.4 1")]);
        var said = Said.By(["gearbox", "--turns", "10:20.6", "--record", "Bittern", "--database", Record, .. which]);

        Assert.Equal(2, said.ExitCode);
        Assert.StartsWith("--for: ", said.Errors, StringComparison.Ordinal);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
        using var shop = ShopFile.Open(Record);
        Assert.Empty(shop.Sessions(shop.FindVehicle("Bittern")));
    }

    private static DateOnly Today => DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime);

    private Driveline Built((string, string)[] engine, (string, string)[] gearbox)
    {
        using var shop = ShopFile.Open(Record);
        var acts = new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric);
        var view = new AnsweringView(acts.Open());
        acts.NewVehicle(view.Type(("name", "Bittern")));
        acts.FitPart(view.Type(engine), nameof(Position.Engine));
        acts.FitPart(view.Type(gearbox), nameof(Position.Transmission));
        Assert.Empty(view.Refused);
        return shop.DrivelineOn(shop.FindVehicle("Bittern"), Today).Driveline;
    }
}
