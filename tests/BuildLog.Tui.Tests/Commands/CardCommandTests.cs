using System.Globalization;
using System.Text.RegularExpressions;

namespace BuildLog.Tui.Tests.Commands;

public sealed class CardCommandTests
{
    [Fact]
    public void The_fields_are_the_ones_other_programs_ask_for()
    {
        var json = Said.By("card", "Brindle", "--demo", "--json").Json;
        Assert.Equal("axle", json.GetProperty("wanted").GetString());
        Assert.Equal(10, json.GetProperty("perWheelTurns").GetInt32());
        var (low, high) = (json.GetProperty("window").GetProperty("low").GetDouble(), json.GetProperty("window").GetProperty("high").GetDouble());
        Assert.Equal(5 * low, json.GetProperty("oneHeld").GetProperty("low").GetDouble(), 1e-9);
        Assert.Equal(10 * high, json.GetProperty("together").GetProperty("high").GetDouble(), 1e-9);
        Assert.Contains("37/11", json.GetProperty("teeth").EnumerateArray().Select(teeth => teeth.GetString()));
    }

    // Haldor is driven at both ends; Brindle is not.
    [Fact]
    public void The_card_of_a_four_wheel_drive_says_that_both_axles_are_changed_and_there_is_one_for_the_front()
    {
        static string InOneLine(params string[] arguments) => string.Join(' ', Said.By(["card", .. arguments, "--demo"]).Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

        Assert.Contains("both axles have to be changed, front and rear alike. Take the front axle of the same vehicle too, or its like", InOneLine("Haldor"), StringComparison.Ordinal);
        Assert.StartsWith("YARD CARD front axle for Haldor", InOneLine("Haldor", "--for", "front-axle"), StringComparison.Ordinal);
        Assert.DoesNotContain("both axles", InOneLine("Brindle"), StringComparison.Ordinal);
        Assert.Contains("Brindle has no front axle that is driven", Said.By("card", "Brindle", "--for", "front-axle", "--demo").Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("axle", "oneHeldYes", "oneHeldPossible")]
    [InlineData("axle", "togetherYes", "togetherPossible")]
    [InlineData("tyres", "standingYes", "standingPossible")]
    [InlineData("tyres", "looseYes", "loosePossible")]
    public void What_means_yes_lies_inside_what_is_possible(string part, string yes, string possible)
    {
        var json = Said.By("card", "Brindle", "--for", part, "--demo", "--json").Json;
        var (sure, may) = (json.GetProperty(yes), json.GetProperty(possible));

        Assert.True(may.GetProperty("low").GetDouble() < sure.GetProperty("low").GetDouble());
        Assert.True(sure.GetProperty("high").GetDouble() < may.GetProperty("high").GetDouble());
    }

    [Fact]
    public void A_gearbox_is_asked_for_the_gear_it_cruises_in()
    {
        var gear = Said.By("card", "Brindle", "--for", "gearbox", "--demo", "--json").Json.GetProperty("gears")[0];

        Assert.Equal("top gear ratio", gear.GetProperty("quantity").GetString());
        Assert.InRange(gear.GetProperty("inputYes").GetProperty("low").GetDouble(), 10 * gear.GetProperty("window").GetProperty("low").GetDouble(), 10 * gear.GetProperty("window").GetProperty("high").GetDouble());
    }

    [Theory]
    [InlineData("axle", "perch to perch ____ mm (springs 1070 mm")]
    [InlineData("gearbox", "input spline ____ (disc 26 × 1 in)")]
    [InlineData("overdrive", "engaged, output : input ____")]
    [InlineData("tyres", "marking on the wall ____ (ours 235/75R15")]
    public void Text_fits_forty_columns_and_says_yes_and_no_and_what_has_to_match(string part, string match)
    {
        var lines = Said.By("card", "Brindle", "--for", part, "--demo").Output.Split('\n');
        Assert.All(lines, line => Assert.True(line.TrimEnd().Length <= 40, line));
        Assert.Contains(lines, line => line.StartsWith("  yes     ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith("  no      under ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.StartsWith(match, StringComparison.Ordinal));
    }

    // 1 in = 25.4 mm, by definition. An eighth of an inch is what the edges in inches are rounded to, a millimetre those in metres.
    // Tansy's speedometer is wrong; an axle within her cruise's window does not put it right.
    [Theory]
    [InlineData("Tansy", "axle", true)]
    [InlineData("Tansy", "tyres", true)]
    [InlineData("Brindle", "axle", false)]
    public void Says_what_it_does_not_cure(string vehicle, string part, bool says)
        => Assert.Equal(says, string.Join(' ', Said.By("card", vehicle, "--for", part, "--demo").Output.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries)).Contains("does not cure the clash of speedometer", StringComparison.Ordinal));

    [Fact]
    public void Tells_tyres_in_the_inches_of_who_reads_inches()
    {
        var (metric, imperial) = (Edges(), Edges("--units", "imperial"));

        Assert.Equal(metric.Count, imperial.Count);
        Assert.All(metric.Zip(imperial), both => Assert.Equal(both.First, both.Second * 0.0254, 0.0032 + 0.001));

        static double Number(Match edge, string group) => edge.Groups[group].Success ? double.Parse(edge.Groups[group].Value, CultureInfo.InvariantCulture) : 0;

        List<double> Edges(params string[] units)
        {
            var lines = Said.By(["card", "Tansy", "--for", "tyres", "--demo", .. units]).Output.ReplaceLineEndings("\n").Split('\n');
            Assert.All(lines, line => Assert.True(line.TrimEnd().Length <= 40, line));
            var told = lines.Where(line => line.StartsWith("  yes ", StringComparison.Ordinal) || line.StartsWith("  no ", StringComparison.Ordinal)).ToList();
            Assert.All(told, line => Assert.EndsWith(units.Length == 0 ? " m" : " in", line.TrimEnd(), StringComparison.Ordinal));
            return [.. told.SelectMany(line => Regex.Matches(line, @"(?<whole>[0-9.]+)( (?<part>\d)/(?<of>\d))?")).Select(edge => Number(edge, "whole") + (Number(edge, "part") / Math.Max(1, Number(edge, "of"))))];
        }
    }

    [Fact]
    public void Tells_what_has_to_match_in_inches_too()
    {
        var text = Said.By("card", "Brindle", "--demo", "--units", "imperial").Output;

        Assert.Contains("perch to perch ____ in (springs 42.1", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" mm", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("axle", "a6")]
    [InlineData("gearbox", "a6")]
    [InlineData("overdrive", "a6")]
    [InlineData("tyres", "a6")]
    [InlineData("axle", "half-letter")]
    [InlineData("gearbox", "half-letter")]
    [InlineData("overdrive", "half-letter")]
    [InlineData("tyres", "half-letter")]
    public void On_paper_it_is_one_page(string part, string paper)
    {
        var file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.pdf");
        try
        {
            var said = Said.By("card", "Brindle", "--for", part, "--paper", paper, "--out", file, "--demo", "--json");
            Assert.Equal(1, said.Json.GetProperty("pages").GetInt32());
            Assert.True(new FileInfo(file).Length > 1000);
        }
        finally
        {
            File.Delete(file);
        }
    }

    // Ten wheel turns, the other wheel held, 16 3/4 of the propshaft: 3.35, inside what the demo hunts for Brindle.
    [Fact]
    public void Counts_of_the_card_become_a_session_and_a_judged_offer()
    {
        var said = Said.By("axle", "--turns", "10:16 3/4", "--wheels", "one-held", "--record", "Brindle", "--wanted", "longer", "--offer", "axle, row 9", "--supplier", "Marsh lane breaker", "--price", "180 EUR", "--demo");

        Assert.Equal(0, said.ExitCode);
        Assert.Contains("Kept as an offer for longer axle: axle, row 9, 3.350±", said.Output, StringComparison.Ordinal);
        Assert.Contains("fits: it meets the goal: At 100", said.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void A_program_is_told_whether_what_was_found_would_do()
    {
        var offer = Said.By("axle", "--turns", "10:16 3/4", "--wheels", "one-held", "--record", "Brindle", "--wanted", "longer", "--price", "380 EUR", "--demo", "--json").Json.GetProperty("offer");

        Assert.Equal("longer axle", offer.GetProperty("wanted").GetString());
        Assert.Equal("watch", offer.GetProperty("verdict").GetString());
        Assert.StartsWith("it meets the goal: ", offer.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.True(offer.GetProperty("tooDear").GetBoolean());
    }

    [Theory]
    [InlineData("Brindle", "clutch", "'clutch' is not one of the parts hunted for Brindle: ")]
    [InlineData("Haldor", "longer", "No such part is hunted for Haldor")]
    public void Counts_for_what_nobody_hunts_are_a_sentence(string vehicle, string wanted, string sentence)
    {
        var said = Said.By("axle", "--turns", "10:16 3/4", "--wheels", "one-held", "--record", vehicle, "--wanted", wanted, "--demo");

        Assert.Equal(2, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--for", "clutch", "There is no card for 'clutch': axle, front-axle, gearbox, overdrive or tyres.")]
    [InlineData("--paper", "a4", "'a4' is no paper here: a6 or half-letter.")]
    public void What_there_is_no_card_for_or_of_is_refused(string option, string value, string sentence)
    {
        var said = Said.By("card", "Brindle", option, value, "--demo");
        Assert.Equal(2, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
    }
}
