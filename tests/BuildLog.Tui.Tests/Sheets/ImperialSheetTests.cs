using System.Text.RegularExpressions;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Sheets;

/// <summary>Whoever reads in miles and pounds is not left with kilometres in the sentences.</summary>
public sealed partial class ImperialSheetTests
{
    private static readonly string Tansy = Sheet("Tansy");

    [Fact]
    public void The_findings_and_the_history_speak_of_miles_an_hour()
    {
        // The demo's speedometer shows 97.13 where 100 is true, so 58.28 at 60; UN R39 allows 60 to 60 · 1.1 + 4 km/h = 68.5 mph.
        Assert.Contains("At a true 60 mph the speedometer shows 58 mph; wanted 60 to 68 mph.", Tansy, StringComparison.Ordinal);
        Assert.Contains("shows 58.28 mph at a true 60 mph", Tansy, StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_rule_is_quoted_in_kilometres_an_hour()
        => Assert.Equal(["10 % + 4 km/h above it"], KilometresAnHour().Matches(Tansy).Select(match => match.Value));

    [Fact]
    public void Torque_and_mass_are_in_pounds()
    {
        Assert.Contains("strongest torque point 138.7 lb·ft", Tansy, StringComparison.Ordinal);     // 188 N·m
        Assert.Contains("1830 ± 12 lb, measured", Tansy, StringComparison.Ordinal);                 // 830 kg
    }

    [Fact]
    public void An_overdrive_gear_is_said_in_words()
    {
        var ottery = Sheet("Ottery");

        Assert.Contains("in top (4 with overdrive) the engine turns", ottery, StringComparison.Ordinal);
        Assert.Contains("4+OD is gear 4 with the overdrive in", ottery, StringComparison.Ordinal);
    }

    [Fact]
    public void An_insurer_reads_power_value_and_what_was_spent()
    {
        var sheet = Preview("Tansy", "insurer");

        Assert.Matches(@"[\d.]+ ± [\d.]+ hp, maker's data", sheet);
        Assert.Matches(@"Agreed value\W+not recorded|not recorded\W+Agreed value", sheet);
        Assert.Contains("351.50 EUR", sheet, StringComparison.Ordinal);
    }

    private static string Sheet(string vehicle) => Preview(vehicle, "own");

    private static string Preview(string vehicle, string reader)
    {
        var said = Said.By("sheet", vehicle, "--demo", "--for", reader, "--preview", "--units", "imperial");
        Assert.Equal(0, said.ExitCode);
        return Space().Replace(said.Output, " ");
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();

    [GeneratedRegex(@"\S+ \S+ \S+ \S+ km/h \S+ \S+")]
    private static partial Regex KilometresAnHour();
}
