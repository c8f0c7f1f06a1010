namespace BuildLog.Tui.Tests.Commands;

public sealed class AxleCommandTests
{
    // Common practice, no source: one wheel of an open differential held, 10 wheel turns and 23.7 propshaft turns make 2.37, doubled 4.74;
    // the nearest axle sold is 43/9, called 4.77.
    // 35/10 lies half way between 45/13 = 3.4615 and 46/13 = 3.5385; one count has nothing to disagree with.
    [Fact]
    public void One_count_between_two_ratios_is_said_to_lie_between_them()
    {
        var said = Said.By("axle", "--turns", "10:17.5", "--wheels", "one-held").Output;

        Assert.Contains("but this count lies between the two. Count once more.", said, StringComparison.Ordinal);
        Assert.DoesNotContain("disagrees", said, StringComparison.Ordinal);
    }

    [Fact]
    public void One_wheel_held_doubles_what_was_counted_and_names_the_nearest_axle_sold()
    {
        var said = Said.By("axle", "--turns", "10:23.7", "--wheels", "one-held", "--json");

        Assert.Equal(0, said.ExitCode);
        Assert.Equal(4.74, said.Number("ratio"), 12);
        Assert.Equal("turns", said.Json.GetProperty("method").GetString());
        Assert.Equal("43/9", said.Json.GetProperty("candidates")[0].GetProperty("teeth").GetString());
        Assert.True(said.Json.GetProperty("candidates")[0].GetProperty("listed").GetBoolean());
    }

    // 45/11 = 4.0909; 41/10 is known to be sold, but is not 4.09.
    [Theory]
    [InlineData("4.091")]
    [InlineData("4.09")]
    [InlineData("4,09 4,56")]
    public void A_listed_ratio_is_the_pair_that_rounds_to_it_as_typed(string listed)
    {
        var first = Said.By("axle", "--turns", "20:40.9", "--wheels", "one-held", "--listed", listed, "--json").Json.GetProperty("candidates")[0];

        Assert.Equal("45/11", first.GetProperty("teeth").GetString());
        Assert.True(first.GetProperty("listed").GetBoolean());
    }

    // Read to 0.25: half-width 0.125 on p, so 0.25/√3/10 on the ratio; stop ± 0.02 turn: 4.74 · 0.02/√3/10. Root sum of squares 0.015437.
    [Fact]
    public void The_interval_comes_from_reading_and_alignment()
    {
        var said = Said.By("axle", "--turns", "10:23.7", "--wheels", "one-held", "--json");
        var u = Math.Sqrt(Math.Pow(0.25 / Math.Sqrt(3) / 10, 2) + Math.Pow(4.74 * 0.02 / Math.Sqrt(3) / 10, 2));

        Assert.Equal(u, said.Number("standardUncertainty"), 12);
        Assert.Equal(4.74 - (1.959963984540054 * u), said.Json.GetProperty("interval95").GetProperty("low").GetDouble(), 10);
        Assert.Equal(System.Text.Json.JsonValueKind.Null, said.Json.GetProperty("degreesOfFreedom").ValueKind);
    }

    [Fact]
    public void Probabilities_sum_to_one_but_for_what_is_too_small_to_list()
    {
        var json = Said.By("axle", "--turns", "10:23.7", "--wheels", "one-held", "--json").Json;
        var sum = json.GetProperty("candidates").EnumerateArray().Sum(candidate => candidate.GetProperty("probability").GetDouble());

        Assert.InRange(sum + json.GetProperty("notListedProbability").GetDouble(), 0.99, 1 + 1e-9);
    }

    [Fact]
    public void A_count_that_is_half_a_turn_out_is_named()
    {
        var json = Said.By("axle", "--turns", "10:20.5", "--turns", "10:20.5", "--turns", "10:21", "--wheels", "one-held", "--json").Json;
        var suspect = Assert.Single(json.GetProperty("suspectReadings").EnumerateArray());

        Assert.Equal(2, suspect.GetProperty("index").GetInt32());
        Assert.Equal("half a propshaft turn too many", suspect.GetProperty("says").GetString());
    }

    [Theory]
    [InlineData("4.77", true)]
    [InlineData("3.90", false)]
    public void A_tag_agrees_or_not(string tag, bool agrees)
    {
        var json = Said.By("axle", "--turns", "10:23.75", "--wheels", "one-held", "--tag", tag, "--json").Json;

        Assert.Equal(agrees, json.GetProperty("tag").GetProperty("agrees").GetBoolean());
    }

    [Theory]
    [InlineData("10:30", "one-held", "3.00", "Did both wheels turn, though the count says that one was held? Then count and tag agree.")]
    [InlineData("10:27", "together", "5.40", "Did one wheel stand still, though the count says that both turned? Then count and tag agree.")]
    public void A_count_of_twice_or_half_the_tag_asks_for_the_forgotten_wheel(string turns, string wheels, string tag, string question)
        => Assert.Contains(question, Said.By("axle", "--turns", turns, "--wheels", wheels, "--tag", tag).Output.ReplaceLineEndings(" "), StringComparison.Ordinal);

    [Fact]
    public void Teeth_are_exact_and_a_hub_reduction_multiplies_them()
    {
        var said = Said.By("axle", "--teeth", "41/10", "--hub", "2", "--json");

        Assert.Equal(8.2, said.Number("ratio"), 12);
        Assert.Equal(4.1, said.Number("diffRatio"), 12);
        Assert.Equal(0, said.Number("standardUncertainty"));
    }

    [Fact]
    public void A_person_reads_no_digit_that_the_count_does_not_support()
        => Assert.Contains("4.74 ± 0.04", Said.By("axle", "--turns", "10:23.7", "--wheels", "one-held").Output, StringComparison.Ordinal);

    // 6.5 · (1 + 18/46) = 9.0435; 90.4/65 = 1.3908.
    [Fact]
    public void A_two_speed_axle_has_a_low_from_its_teeth_or_from_a_second_count()
    {
        var teeth = Said.By("axle", "--teeth", "39/6", "--two-speed", "planetary 46/18", "--json").Json.GetProperty("low");
        var counted = Said.By("axle", "--turns", "10:65", "--low-turns", "10:90.4", "--wheels", "together", "--json").Json.GetProperty("low");

        Assert.Equal(6.5 * 64 / 46, teeth.GetProperty("ratio").GetDouble(), 12);
        Assert.Equal(90.4 / 65, counted.GetProperty("step").GetDouble(), 12);
        Assert.Contains("In low 9.04", Said.By("axle", "--turns", "10:65", "--low-turns", "10:90.4", "--wheels", "together").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--turns|10:65|--wheels|together|--low-turns|10:50", "--low-turns")]
    [InlineData("--turns|10:65|--wheels|together|--low-turns|10:90|--two-speed|1.39", "--two-speed")]
    [InlineData("--teeth|39/6|--two-speed|46/18", "--two-speed")]
    [InlineData("--teeth|39/6|--low-turns|10:90", "--low-turns")]
    public void A_low_that_cannot_be_is_refused_by_its_option(string line, string option)
    {
        var said = Said.By(["axle", .. line.Split('|'), "--json"]);

        Assert.Equal(2, said.ExitCode);
        Assert.Equal(option, said.Error.GetProperty("option").GetString());
    }
}
