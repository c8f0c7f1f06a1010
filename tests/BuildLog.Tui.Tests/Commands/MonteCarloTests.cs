using System.Text.Json;

namespace BuildLog.Tui.Tests.Commands;

/// <summary><c>findings --monte-carlo</c>: what each number is worth when its inputs are drawn.</summary>
public sealed class MonteCarloTests
{
    [Fact]
    public void A_finding_whose_drawn_interval_differs_says_both()
    {
        var said = Said.By("findings", "Brindle", "--demo", "--monte-carlo").Output;

        Assert.Matches(@"drawn: First order .+ the 95 % interval is [\d.]+ to [\d.]+ rev/min at first order, [\d.]+ to [\d.]+ rev/min drawn\.", said);
        Assert.Contains("agrees with a Monte Carlo", said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_seed_says_the_same()
    {
        var (one, same, other) = (Cruise("--seed", "7"), Cruise("--seed", "7"), Cruise("--seed", "8"));

        Assert.Equal(one.GetProperty("mean").GetDouble(), same.GetProperty("mean").GetDouble());
        Assert.NotEqual(one.GetProperty("mean").GetDouble(), other.GetProperty("mean").GetDouble());
        Assert.True(one.GetProperty("trials").GetInt32() >= 20_000);
    }

    [Fact]
    public void Unasked_nothing_is_drawn()
        => Assert.All(Said.By("findings", "Brindle", "--demo", "--json").Json.GetProperty("findings").EnumerateArray(), finding => Assert.Equal(JsonValueKind.Null, finding.GetProperty("monteCarlo").ValueKind));

    [Theory]
    [InlineData("--monte-carlo", "--seed", "soon")]
    [InlineData("--monte-carlo", "--seed", "-3")]
    [InlineData("--seed", "4")]
    public void A_seed_that_is_none_or_has_nothing_to_do_is_refused(params string[] options)
    {
        var said = Said.By(["findings", "Brindle", "--demo", .. options]);

        Assert.Equal(2, said.ExitCode);
        Assert.Contains("--seed", said.Errors, StringComparison.Ordinal);
    }

    private static JsonElement Cruise(params string[] options)
        => Said.By(["findings", "Brindle", "--demo", "--json", "--monte-carlo", .. options]).Json.GetProperty("findings").EnumerateArray()
            .First(finding => finding.GetProperty("check").GetString() == "cruise").GetProperty("monteCarlo");
}
