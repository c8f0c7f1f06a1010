using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.DemoData;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Ratios;
using Xunit;

namespace BuildLog.Data.Tests;

/// <summary>What demo-data/README.md says of each vehicle.</summary>
public sealed class TheDemoShop : IDisposable
{
    private static readonly DateOnly Today = new(2026, 1, 1);
    private readonly string path = DemoShop.CreateFreshCopy();
    private readonly Shop shop;

    public TheDemoShop() => shop = ShopFile.Open(path);

    public void Dispose()
    {
        shop.Dispose();
        Directory.Delete(Path.GetDirectoryName(path)!, recursive: true);
    }

    [Theory]
    [InlineData("Brindle", Verdict.Clash)]
    [InlineData("Haldor", Verdict.Fits)]
    [InlineData("Ottery", Verdict.Fits)]
    [InlineData("Pellow", Verdict.Open)]
    [InlineData("Quillon", Verdict.Watch)]
    [InlineData("Tansy", Verdict.Fits)]
    public void Shows_each_verdict(string name, Verdict verdict)
    {
        var vehicle = shop.FindVehicle(name);
        var findings = AllChecks.Look(shop.DrivelineOn(vehicle, Today).Driveline, shop.GoalsOf(vehicle));
        Assert.Equal(verdict, findings.First(finding => finding.Check == "cruise").Verdict);
    }

    [Fact]
    public void Has_a_tag_that_lies_over_a_count_near_4_74_most_likely_43_to_9()
    {
        var ratio = shop.DrivelineOn(shop.FindVehicle("Brindle"), Today).Numbers.Single(known => known is { Position: Position.RearAxle, Number: "ratio" });
        Assert.InRange(ratio.Used.Value.Value, 4.73, 4.76);
        Assert.Equal("43/9", RatioCandidates.For(ratio.Used.Value).Ranked[0].Name);
        var tag = Assert.Single(ratio.PassedOver);
        Assert.Equal((Source.Tag, "3.90"), (tag.Source, tag.Says));
        Assert.False(QuotedRatio.Read(tag.Says, RatioRange.Axle).OrRefuse().Agrees(ratio.Used.Value));
    }

    [Fact]
    public void Has_a_watch_that_more_turns_would_settle()
    {
        var vehicle = shop.FindVehicle("Quillon");
        var finding = Finding("cruise", vehicle, Today);
        Assert.Matches("count [0-9]+ wheel turns in one go", finding.SettledBy);
    }

    [Fact]
    public void Has_a_clutch_disc_that_does_not_slide_on_its_gearbox()
    {
        var vehicle = shop.FindVehicle("Quillon");
        Assert.Equal(Verdict.Clash, Finding("input-spline", vehicle, Today).Verdict);
        Assert.All(shop.Vehicles().Where(other => other.Name != vehicle.Name), other =>
            Assert.DoesNotContain(AllChecks.Look(shop.DrivelineOn(other, Today).Driveline, shop.GoalsOf(other)), finding => finding is { Check: "input-spline", Verdict: Verdict.Clash }));
    }

    [Fact]
    public void Has_one_vehicle_nobody_looked_at_where_its_parts_meet_and_one_without_its_propshafts()
    {
        IEnumerable<string> Unlooked(string thing) => shop.Vehicles()
            .Where(vehicle => Finding("not-looked-at", vehicle, Today).Says.Contains(thing, StringComparison.Ordinal))
            .Select(vehicle => vehicle.Name);

        Assert.Equal(["Pellow"], Unlooked("bell-housing pattern"));
        Assert.Equal(["Haldor"], Unlooked("tube, length and joints"));
    }

    [Fact]
    public void Has_a_gear_that_was_counted_on_the_bench()
    {
        var top = shop.DrivelineOn(shop.FindVehicle("Tansy"), Today).Numbers.Single(known => known.Number == "gear 5");
        Assert.Equal((Source.Measured, 0.81), (top.Used.Source, Math.Round(top.Used.Value.Value, 9)));
    }

    [Fact]
    public void Has_a_propshaft_that_an_overdrive_unit_made_too_fast()
    {
        var vehicle = shop.FindVehicle("Ottery");
        Assert.Equal(Verdict.Fits, Finding("propshaft-speed", vehicle, new(2024, 8, 9)).Verdict);
        Assert.Equal(Verdict.Clash, Finding("propshaft-speed", vehicle, new(2024, 8, 10)).Verdict);
    }

    [Fact]
    public void Has_a_speedometer_that_reads_low_since_the_tyres_were_swapped()
    {
        var vehicle = shop.FindVehicle("Tansy");
        Assert.Equal(Verdict.Fits, Finding("speedometer", vehicle, new(2024, 4, 19)).Verdict);
        var today = Finding("speedometer", vehicle, Today);
        Assert.Equal(Verdict.Clash, today.Verdict);
        Assert.True(today.Value!.Value < 1);
    }

    [Fact]
    public void Has_a_four_by_four_that_would_wind_up_with_one_axle_changed_only()
    {
        var vehicle = shop.FindVehicle("Haldor");
        Verdict MatchOn(int day) => Finding("four-wheel-match", vehicle, new(2024, 10, day)).Verdict;
        Assert.NotEqual(Verdict.Clash, MatchOn(4));
        Assert.Equal(Verdict.Clash, MatchOn(5));
        Assert.Equal(Verdict.Clash, MatchOn(6));
        Assert.NotEqual(Verdict.Clash, MatchOn(7));
        Assert.NotEqual(Verdict.Clash, Finding("four-wheel-match", vehicle, Today).Verdict);
    }

    // Each other count of the shop has no suspect.
    [Fact]
    public void Has_a_miscounted_axle_that_was_counted_again()
    {
        var counts = shop.Sessions(shop.FindVehicle("Haldor")).OfType<TurnCountSession>().ToList();
        Assert.Equal([new(2024, 10, 8), new(2024, 10, 6)], counts.Select(count => count.Date));
        var suspect = Assert.Single(counts[1].Result().Suspects);
        Assert.Equal((2, 1), (suspect.Index, suspect.HalfTurns));
        Assert.Contains("half a turn long", counts[1].Notes, StringComparison.Ordinal);
        Assert.All(shop.Vehicles().SelectMany(shop.Sessions).OfType<TurnCountSession>().Where(count => count.Uid != counts[1].Uid), count => Assert.Empty(count.Result().Suspects));

        var used = shop.DrivelineOn(shop.FindVehicle("Haldor"), Today).Numbers.Single(known => known is { Position: Position.FrontAxle, Number: "ratio" });
        Assert.Equal(counts[0].Date, used.Session?.Date);
    }

    [Fact]
    public void Has_a_vehicle_with_everything_in_its_driveline()
    {
        var driveline = shop.DrivelineOn(shop.FindVehicle("Haldor"), Today).Driveline;
        Assert.NotNull(driveline.TransferCase);
        Assert.NotNull(driveline.FrontAxle);
        Assert.NotNull(driveline.RearAxle);
        Assert.NotNull(shop.DrivelineOn(shop.FindVehicle("Ottery"), Today).Driveline.Overdrive);
    }

    [Fact]
    public void Has_vehicles_in_several_states_and_swaps_with_reasons()
    {
        Assert.Equal(4, shop.Vehicles().Select(vehicle => vehicle.State).Distinct().Count());
        var swaps = shop.Vehicles().SelectMany(shop.History).ToList();
        Assert.True(swaps.Count > 25);
        Assert.All(swaps, swap => Assert.NotEmpty(swap.Reason));
        Assert.Contains(swaps, swap => swap is { Removed: AxleComponent, Fitted: AxleComponent });
    }

    [Fact]
    public void Has_a_part_that_served_two_vehicles()
    {
        var tyres = shop.Vehicles().SelectMany(shop.Fitments).Where(fitment => fitment.Component.Name == "Stavely 205/75R15 on steel");
        Assert.Equal(["Brindle", "Pellow"], tyres.Select(fitment => fitment.Vehicle.Name));
    }

    [Fact]
    public void Is_private_and_fresh_each_time()
    {
        shop.Add(new Vehicle { Name = "Scratch" });
        var second = DemoShop.CreateFreshCopy();
        using (var other = ShopFile.Open(second)) Assert.Equal(6, other.Vehicles().Count);
        Assert.NotEqual(path, second);
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(second));
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Path.GetDirectoryName(second)!));
        }

        Directory.Delete(Path.GetDirectoryName(second)!, recursive: true);
    }

    private Finding Finding(string check, Vehicle vehicle, DateOnly day)
        => AllChecks.Look(shop.DrivelineOn(vehicle, day).Driveline, shop.GoalsOf(vehicle)).Single(finding => finding.Check == check);

    [Fact]
    public void Lists_all_sessions_that_speak_of_a_vehicle()
    {
        Assert.Equal(["roll-out", "turn count", "roll-out"], shop.Sessions(shop.FindVehicle("Ottery")).Select(session => session.Method.Text));
        Assert.IsType<RollOutSession>(shop.Sessions(shop.FindVehicle("Brindle"))[^1]);
    }
}
