using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speedometers;
using Xunit;

namespace BuildLog.Gearing.Tests.Speedometers;

public sealed class OdometerRunTests
{
    [Theory]
    [InlineData("10 km: 10.4 km", 10_000, 10_400)]
    [InlineData(" 5 mi:4,9 mi ", 8046.72, 7885.7856)]
    public void A_run_is_the_true_distance_and_what_was_shown(string text, double real, double shown)
    {
        var run = RunReading.Read(text).OrRefuse();

        Assert.Equal((real, shown), (Math.Round(run.Real, 9), Math.Round(run.Shown, 9)));
        Assert.Equal(text.Trim(), run.ToString());
    }

    [Theory]
    [InlineData("10 km", "run")]
    [InlineData("10 km: 10.4 km: 1 km", "run")]
    [InlineData("0 km: 10 km", "distance")]
    [InlineData("10 km: 0 km", "distance")]
    [InlineData("-10 km: 10 km", "distance")]
    [InlineData("10: 10 km", "no-unit")]
    [InlineData("10 km: 10 km ± 1 m", "uncertainty")]
    public void What_is_no_run_is_refused(string text, string code) => Assert.Equal(code, RunReading.Read(text).Refusal!.Code);

    // By hand: 10 400 of 10 000 m; the drum ± 100 m and the posts ± 50 m, rectangular: √((100/10 400)² + (50/10 000)²)/√3 = 0.62571 %.
    [Fact]
    public void What_was_shown_over_what_was_driven_is_as_sure_as_drum_and_posts()
    {
        var reading = OdometerRun.Of([Run("10 km: 10.4 km")], goodTo: 50, drum: 100);

        Assert.Equal(0.04, reading.OdometerError.Value, 1e-12);
        Assert.Equal(0.0062571, reading.Share.RelativeUncertainty, 1e-7);
    }

    // The same posts and the same drum: what is off in one run is off in all of them.
    [Fact]
    public void The_same_run_again_makes_nothing_surer_and_a_longer_one_does()
    {
        var once = OdometerRun.Of([Run("10 km: 10.4 km")], 50, 100).Share;

        Assert.Equal(once.RelativeUncertainty, OdometerRun.Of([Run("10 km: 10.4 km"), Run("10 km: 10.4 km")], 50, 100).Share.RelativeUncertainty, 1e-12);
        Assert.Equal(once.RelativeUncertainty / 2, OdometerRun.Of([Run("20 km: 20.8 km")], 50, 100).Share.RelativeUncertainty, 1e-12);
    }

    // 10 and 30 km showing 10.4 and 30 km: 40.4 over 40, each metre counting alike.
    [Fact]
    public void Runs_of_different_length_count_by_their_length()
        => Assert.Equal(1.01, OdometerRun.Of([Run("10 km: 10.4 km"), Run("30 km: 30 km")], 50, 100).Share.Value, 1e-12);

    [Fact]
    public void Nothing_driven_is_refused() => Assert.Equal("run", Assert.Throws<RefusedException>(() => OdometerRun.Of([], 50, 100)).Refusal.Code);

    private static RunReading Run(string text) => RunReading.Read(text).OrRefuse();
}
