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
    [InlineData("decimals use the point", "--turns", "10:30,1")]
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
}
