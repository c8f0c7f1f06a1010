using System.Text.Json;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Tui.Tests.Commands;

public sealed class GearboxCommandTests
{
    // By hand: 30.1 / 10 = 3.01; read to 0.25: ± 0.125 on the input, 0.125/√3/10; output's stop ± 0.02: 3.01 · 0.02/√3/10. Together 0.0080095.
    [Fact]
    public void Input_turns_over_output_turns_with_the_reading_and_the_stop()
    {
        var said = Said.By("gearbox", "--turns", "10:30.1", "--json");

        Assert.Equal(0, said.ExitCode);
        Assert.Equal(3.01, said.Number("ratio"), 12);
        Assert.Equal(Math.Sqrt(Math.Pow(0.125, 2) + Math.Pow(3.01 * 0.02, 2)) / Math.Sqrt(3) / 10, said.Number("standardUncertainty"), 12);
        Assert.Equal(3.01 - (StudentT.Normal975 * said.Number("standardUncertainty")), said.Json.GetProperty("interval95").GetProperty("low").GetDouble(), 12);
    }

    [Fact]
    public void A_count_that_is_the_quoted_ratio_turned_round_is_asked_about()
        => Assert.Contains("Were the turns written the other way round?", Said.By("gearbox", "--turns", "10:13", "--tag", "0.77").Output, StringComparison.Ordinal);

    [Fact]
    public void It_has_every_field_of_the_axles_answer()
    {
        var axle = Said.By("axle", "--turns", "10:20.5", "--wheels", "one-held", "--json").Json;
        var gearbox = Said.By("gearbox", "--turns", "10:30.1", "--json").Json;

        Assert.Equal(axle.EnumerateObject().Select(field => field.Name), gearbox.EnumerateObject().Select(field => field.Name));
        Assert.Equal(JsonValueKind.Null, gearbox.GetProperty("diffRatio").ValueKind);
    }

    [Fact]
    public void Nothing_is_a_candidate_but_what_is_listed()
    {
        Assert.Empty(Said.By("gearbox", "--turns", "10:30.1", "--json").Json.GetProperty("candidates").EnumerateArray());

        var json = Said.By("gearbox", "--turns", "10:30.1", "--listed", "2.99,3.01,3.28", "--json").Json;
        var first = json.GetProperty("candidates")[0];
        Assert.Equal(3.01, first.GetProperty("ratio").GetDouble(), 12);
        Assert.Equal(JsonValueKind.Null, first.GetProperty("teeth").ValueKind);
        Assert.Equal(["3.01", "2.99"], json.GetProperty("turnsToSettle").GetProperty("between").EnumerateArray().Select(name => name.GetString()));
    }

    // By hand: 30.1 output to 10 input turns make 0.332; turned round 3.01. 15:10 is 0.667, a usual overdrive, but 1.50 is known and 0.667 is not.
    [Theory]
    [InlineData("30.1:10", "2.97,3.01", "Then it is 3.01.")]
    [InlineData("15:10", "1.50,2.10", "Then it is 1.50.")]
    public void A_count_written_input_first_is_asked_about(string count, string listed, string asks)
        => Assert.Contains(asks, Said.By("gearbox", "--turns", count, "--listed", listed).Output, StringComparison.Ordinal);

    [Fact]
    public void An_overdrive_is_not_asked_about()
        => Assert.DoesNotContain("other way round", Said.By("gearbox", "--turns", "10:7.8").Output, StringComparison.Ordinal);

    [Theory]
    [InlineData("3,38 2,12 1", 0)]
    [InlineData("3.38,2.12,1", 0)]
    [InlineData("1,2.12,3.38", 2)]
    public void Typed_ratios_are_parted_like_listed_ones_and_stand_first_to_top(string ratios, int exitCode)
        => Assert.Equal(exitCode, Said.By("gearbox", "--teeth", "29/19 31/14 25/18 1", "--ratios", ratios).ExitCode);

    [Fact]
    public void Reverse_is_not_held_against_teeth_that_say_nothing_of_it()
        => Assert.Contains("say nothing of reverse", Said.By("gearbox", "--teeth", "29/19 31/14 25/18 1", "--reverse", "3").Errors, StringComparison.Ordinal);

    [Fact]
    public void An_overdrive_gear_is_counted_alike() => Assert.Equal(0.82, Said.By("gearbox", "--turns", "10:8.2", "--json").Number("ratio"), 12);

    [Fact]
    public void A_count_half_a_turn_out_is_named_by_the_shaft_that_was_read()
    {
        var json = Said.By("gearbox", "--turns", "10:30", "--turns", "10:30", "--turns", "10:30.5", "--json").Json;

        Assert.Equal("half an input turn too many", Assert.Single(json.GetProperty("suspectReadings").EnumerateArray()).GetProperty("says").GetString());
    }

    [Theory]
    [InlineData("3.01", true)]
    [InlineData("2.85", false)]
    public void A_quoted_ratio_agrees_or_not(string tag, bool agrees)
        => Assert.Equal(agrees, Said.By("gearbox", "--turns", "10:30.1", "--tag", tag, "--json").Json.GetProperty("tag").GetProperty("agrees").GetBoolean());

    [Fact]
    public void A_person_reads_of_output_turns()
    {
        var output = Said.By("gearbox", "--turns", "10:30.1", "--listed", "2.99,3.01").Output;

        Assert.StartsWith("Gear ratio 3.010 ± 0.016 (95 %), from one count.", output, StringComparison.Ordinal);
        Assert.Contains("output turns, read to 0.25 turn.", output, StringComparison.Ordinal);
        Assert.DoesNotContain("wheel", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("No count was given")]
    [InlineData("write output turns, a colon, input turns", "--turns", "10")]
    [InlineData("output turns must be more than zero", "--turns", "0:30")]
    [InlineData("input turns must be more than zero", "--turns", "10:0")]
    [InlineData("count at least half an output turn", "--turns", "0.2:1")]
    [InlineData("in a count decimals use the point", "--turns", "10:30,1")]
    [InlineData("in a count decimals use the point", "--turns", "10,5:30")]
    [InlineData("no gear ratio: it lies between 0.3 and 20", "--turns", "100:1")]
    [InlineData("no gear ratio", "--turns", "10:30.1", "--listed", "3.01,47")]
    [InlineData("The output's mark is off by 0 to 0.5 turn", "--turns", "10:30.1", "--align", "0.7")]
    public void Nonsense_is_answered_by_one_sentence(string sentence, params string[] arguments)
    {
        var said = Said.By(["gearbox", .. arguments]);

        Assert.Equal(2, said.ExitCode);
        Assert.Contains(sentence, said.Errors, StringComparison.Ordinal);
        Assert.Single(said.Errors.TrimEnd().Split('\n'));
    }

    // a = 30/75, b = 33/75: 1 + a + a/b = 2.309, 1 + a = 1.4, 1/b = 2.273.
    [Fact]
    public void Two_planetary_sets_make_three_gears_and_reverse_held_against_what_is_typed()
    {
        var said = Said.By("gearbox", "--teeth", "planetary 75/30 75/33", "--ratios", "2.31,1.45,1.00", "--reverse", "2.27", "--json");
        var gears = said.Json.GetProperty("gears").EnumerateArray().ToList();

        Assert.Equal(1 + 0.4 + (30 / 33.0), gears[0].GetProperty("ratio").GetDouble(), 12);
        Assert.Equal([true, false, true], gears.Select(gear => gear.GetProperty("agrees").GetBoolean()));
        Assert.Equal(75 / 33.0, said.Json.GetProperty("reverse").GetProperty("ratio").GetDouble(), 12);
        Assert.True(said.Json.GetProperty("reverse").GetProperty("agrees").GetBoolean());
        Assert.Contains("the typed 1.45 does not agree", Said.By("gearbox", "--teeth", "planetary 75/30 75/33", "--ratios", "2.31,1.45,1.00").Output, StringComparison.Ordinal);
    }

    // 1.45 + 0.45 · 2.20 = 2.44.
    [Theory]
    [InlineData("2.45", true)]
    [InlineData("2.92", false)]
    public void Typed_ratios_of_two_planetary_sets_are_held_against_each_other(string first, bool agrees)
    {
        var sets = Said.By("gearbox", "--ratios", $"{first},1.45,1.00", "--reverse", "2.20", "--json").Json.GetProperty("twoPlanetarySets");

        Assert.Equal(2.44, sets.GetProperty("first").GetDouble(), 12);
        Assert.Equal(agrees, sets.GetProperty("agrees").GetBoolean());
    }

    // 29/19 · 31/14 = 3.380, 29/19 · 25/18 = 2.120.
    [Fact]
    public void A_box_with_a_constant_mesh_is_read_from_its_pairs()
        => Assert.Equal(
            [3.380, 2.120, 1],
            Said.By("gearbox", "--teeth", "29/19 31/14 25/18 1", "--json").Json.GetProperty("gears").EnumerateArray().Select(gear => Math.Round(gear.GetProperty("ratio").GetDouble(), 3)));

    [Theory]
    [InlineData("--teeth|planetary 75/30", "--teeth")]
    [InlineData("--teeth|29/19 31/14 1|--ratios|3.38,2.12,1.00", "--ratios")]
    [InlineData("--ratios|3.38,2.12", "--ratios")]
    [InlineData("--ratios|2.45,1.45,1.00", "--reverse")]
    [InlineData("--teeth|29/19 31/14 1|--turns|10:30", "--teeth")]
    public void What_does_not_belong_together_is_refused_by_its_option(string line, string option)
    {
        var said = Said.By(["gearbox", .. line.Split('|'), "--json"]);

        Assert.Equal(2, said.ExitCode);
        Assert.Equal(option, said.Error.GetProperty("option").GetString());
    }
}
