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
        var printed = Number(SheetOf(vehicle), @"([\d.]+) ± ([\d.]+) rev/min · Engine speed at");

        Assert.InRange(Finding(vehicle, "cruise"), printed.Low, printed.High);
    }

    [Theory]
    [InlineData("Brindle")]
    [InlineData("Haldor")]
    [InlineData("Ottery")]
    [InlineData("Tansy")]
    public void What_each_swap_changed_is_what_history_answers(string vehicle)
    {
        var sheet = SheetOf(vehicle);
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
        var printed = Number(SheetOf("Tansy"), @"Shows at a true 100 km/h\s+([\d.]+) ± ([\d.]+) km/h");

        Assert.InRange(Finding("Tansy", "speedometer") * 100, printed.Low, printed.High);
    }

    [Fact]
    public void The_propshaft_turns_the_share_of_its_critical_speed_that_its_finding_says()
    {
        var sheet = SheetOf("Ottery");
        var critical = Number(sheet, @"Critical speed: ([\d.]+) ± ([\d.]+) rev/min");
        var fastest = Number(sheet, @"Fastest turn: ([\d.]+) ± ([\d.]+) rev/min");

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
        var sheet = SheetOf(vehicle);
        var findings = Said.By("findings", vehicle, "--demo", "--json").Json.GetProperty("findings").EnumerateArray()
            .Where(finding => finding.GetProperty("verdict").GetString() != "fits")
            .Select(finding => finding.GetProperty("says").GetString()!)
            .ToList();

        Assert.NotEmpty(findings);
        Assert.All(findings, says => Assert.Contains(says, sheet, StringComparison.Ordinal));
    }

    /// <summary>The sheet's text with its lines joined again, as a sentence is wrapped anywhere.</summary>
    private static string SheetOf(string vehicle)
    {
        var said = Said.By("sheet", vehicle, "--demo", "--for", "own", "--preview");
        Assert.Equal(0, said.ExitCode);
        return Space().Replace(said.Output, " ");
    }

    private static double Finding(string vehicle, string check)
        => Said.By("findings", vehicle, "--demo", "--json").Json.GetProperty("findings").EnumerateArray()
            .First(finding => finding.GetProperty("check").GetString() == check).GetProperty("value").GetDouble();

    /// <summary>What a printed number may have been before it was rounded: half of its last place to either side, as its ± shows that place.</summary>
    private static (double Low, double High) Number(string sheet, string pattern)
    {
        var match = Regex.Match(sheet, pattern);
        Assert.True(match.Success, $"'{pattern}' is not on the sheet.");
        var (value, half) = (match.Groups[1].Value, match.Groups[2].Value);
        var step = half.Contains('.', StringComparison.Ordinal) ? Math.Pow(10, -(half.Length - half.IndexOf('.', StringComparison.Ordinal) - 1)) : Math.Pow(10, half.Length - half.TrimEnd('0').Length);
        var number = double.Parse(value, CultureInfo.InvariantCulture);
        return (number - (step / 2) - 1e-9, number + (step / 2) + 1e-9);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"What it changed: cruise (?:[\d.]+ → )?([\d.]+) rev/min")]
    private static partial Regex CruiseAfter();
}
