using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Sheets;

/// <summary>The sheet of each demo vehicle beside what the commands answer in JSON: the same number, rounded.</summary>
public sealed partial class NumbersOnTheSheetTests
{
    [Theory]
    [InlineData("Brindle")]
    [InlineData("Haldor")]
    [InlineData("Ottery")]
    [InlineData("Quillon")]
    [InlineData("Tansy")]
    public void The_cruise_engine_speed_is_the_finding_s(string vehicle)
    {
        var printed = PrintedSheet.Number(PrintedSheet.Of(vehicle), @"([\d.]+) ± ([\d.]+) rev/min · Engine speed at");

        Assert.InRange(Finding(vehicle, "cruise"), printed.Low, printed.High);
    }

    [Theory]
    [InlineData("Brindle")]
    [InlineData("Haldor")]
    [InlineData("Ottery")]
    [InlineData("Tansy")]
    public void What_each_swap_changed_is_what_history_answers(string vehicle)
    {
        var sheet = PrintedSheet.Of(vehicle);
        var swaps = Said.By("history", vehicle, "--demo", "--json").Json.GetProperty("entries").EnumerateArray()
            .Where(swap => swap.GetProperty("cruiseRpmAfter").ValueKind == System.Text.Json.JsonValueKind.Number)
            .Reverse()
            .Select(swap => swap.GetProperty("cruiseRpmAfter").GetDouble())
            .ToList();

        var printed = CruiseAfter().Matches(sheet).Select(match => double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture)).ToList();

        Assert.NotEmpty(swaps);
        Assert.Equal(swaps.Count, printed.Count);
        Assert.All(swaps.Zip(printed), pair => Assert.Contains(pair.Second, new[] { 1.0, 10, 100 }.Select(step => Math.Round(pair.First / step) * step)));
    }

    [Fact]
    public void The_speedometer_shows_what_its_finding_says()
    {
        var printed = PrintedSheet.Number(PrintedSheet.Of("Tansy"), @"Shows at a true 100 km/h\s+([\d.]+) ± ([\d.]+) km/h");

        Assert.InRange(Finding("Tansy", "speedometer") * 100, printed.Low, printed.High);
    }

    [Fact]
    public void The_propshaft_turns_the_share_of_its_critical_speed_that_its_finding_says()
    {
        var sheet = PrintedSheet.Of("Ottery");
        var critical = PrintedSheet.Number(sheet, @"Critical speed: ([\d.]+) ± ([\d.]+) rev/min");
        var fastest = PrintedSheet.Number(sheet, @"Fastest turn: ([\d.]+) ± ([\d.]+) rev/min");

        Assert.InRange(Finding("Ottery", "propshaft-speed") / 100, fastest.Low / critical.High, fastest.High / critical.Low);
    }

    [Theory]
    [InlineData("Brindle")]
    [InlineData("Ottery")]
    [InlineData("Pellow")]
    [InlineData("Quillon")]
    [InlineData("Tansy")]
    public void What_does_not_fit_is_told_in_the_finding_s_own_words(string vehicle)
    {
        var sheet = PrintedSheet.Of(vehicle);
        var findings = Said.By("findings", vehicle, "--demo", "--json").Json.GetProperty("findings").EnumerateArray()
            .Where(finding => finding.GetProperty("verdict").GetString() != "fits")
            .Select(finding => finding.GetProperty("says").GetString()!)
            .ToList();

        Assert.NotEmpty(findings);
        Assert.All(findings, says => Assert.Contains(says, sheet, StringComparison.Ordinal));
    }

    private static double Finding(string vehicle, string check)
        => Said.By("findings", vehicle, "--demo", "--json").Json.GetProperty("findings").EnumerateArray()
            .First(finding => finding.GetProperty("check").GetString() == check).GetProperty("value").GetDouble();

    [GeneratedRegex(@"What it changed: cruise (?:[\d.]+ → )?([\d.]+) rev/min")]
    private static partial Regex CruiseAfter();
}
