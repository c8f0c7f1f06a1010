using BuildLog.Sheet.Content;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Reading;

public sealed class SheetWithNothingRecordedTests
{
    [Fact]
    public void Every_empty_region_says_not_recorded_on_one_page()
    {
        using var sheet = ReadBack.Of(Sheets.Empty);

        // Vehicle, date; owner, state, odometer; driveline, figures, goal, speeds, chart, pull, findings, speedometer, tyres and wheels, evidence, history; foot.
        // A shop without a name is left out.
        Assert.Equal(17, sheet.Text.Split("not recorded").Length - 1);
        Assert.Equal(1, sheet.Result.Pages);
    }

    [Fact]
    public void The_standing_caution_and_lines_to_sign_on_are_there_all_the_same()
    {
        using var sheet = ReadBack.Of(Sheets.Empty);

        Assert.Contains("local rules", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("Received by", sheet.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  ")]
    public void A_blank_field_says_not_recorded(string? value)
    {
        using var blank = ReadBack.Of(KestrelPickup.Sheet with { CruiseGoal = value });
        using var told = ReadBack.Of(KestrelPickup.Sheet);

        Assert.Equal(Count(told) + 1, Count(blank));

        static int Count(ReadBack sheet) => sheet.Text.Split("not recorded").Length;
    }

    [Fact]
    public void Rows_shorter_than_their_head_are_filled_and_longer_ones_lose_nothing()
    {
        using var sheet = ReadBack.Of(Sheets.Empty with { Speeds = new SpeedsTable(["Gear", "Ratio"], [["first"], ["second", "2.14", "extra"]]) });

        Assert.Contains("extra", sheet.Text, StringComparison.Ordinal);
        Assert.Contains("first", sheet.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(-1)]
    public void A_chart_that_cannot_be_drawn_says_not_recorded(double engine)
    {
        var chart = new Sawtooth { SpeedUnit = "km/h", EngineUnit = "rev/min", SpeedMax = 100, EngineMax = 5000, Gears = [new("1", 0, 0, 50, engine)] };
        using var sheet = ReadBack.Of(Sheets.Empty with { Sawtooth = chart });

        Assert.Contains("road speed: not recorded", sheet.Text, StringComparison.Ordinal);
    }
}
