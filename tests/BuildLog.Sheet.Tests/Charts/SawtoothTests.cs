using BuildLog.Sheet.Charts;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Charts;

public sealed class SawtoothTests
{
    // By hand: second gear turns 1000 at 20 and 4000 at 80, so at 40, where first ends, it turns 2000.
    [Fact]
    public void A_gear_is_used_from_where_the_gear_below_it_ends()
    {
        var teeth = Tooth.Of([new("1", 10, 1000, 40, 4000), new("2", 20, 1000, 80, 4000)]);

        Assert.Equal(new ChartPoint(40, 2000), teeth[1].Start);
        Assert.Equal(new ChartPoint(40, 4000), teeth[1].Drop);
        Assert.Null(teeth[0].Drop);
    }

    [Fact]
    public void Gears_without_a_road_speed_in_common_have_no_shift_between_them()
    {
        var teeth = Tooth.Of([new("1", 10, 1000, 40, 4000), new("2", 50, 1000, 80, 4000)]);

        Assert.Null(teeth[1].Drop);
        Assert.Equal(new ChartPoint(50, 1000), teeth[1].Start);
    }

    [Theory]
    [InlineData(200, 12, 20, 200)]
    [InlineData(5200, 7, 1000, 6000)]
    [InlineData(0.9, 10, 0.1, 0.9)]
    [InlineData(100, 1, 100, 100)]
    [InlineData(101, 1, 200, 200)]
    [InlineData(1e9, 7, 2e8, 1e9)]
    public void An_axis_reaches_its_value_in_round_steps(double value, int mostSteps, double step, double max)
    {
        var scale = AxisScale.Reaching(value, mostSteps);

        Assert.Equal(step, scale.Step, step * 1e-9);
        Assert.Equal(max, scale.Max, max * 1e-9);
    }

    [Fact]
    public void Lines_that_pass_the_stated_maximum_stretch_the_axis()
    {
        var plot = SawtoothPlot.Of(
            new Sawtooth { SpeedUnit = "km/h", EngineUnit = "rev/min", SpeedMax = 50, EngineMax = 1000, Gears = [new("1", 0, 0, 180, 6100)] },
            new Box(0, 0, 100, 100));

        Assert.InRange(plot.X(180), 0, 100);
        Assert.InRange(plot.Y(6100), 0, 100);
    }

    [Fact]
    public void Names_of_many_close_gears_do_not_cover_each_other_while_there_is_room()
    {
        var gears = Enumerable.Range(1, 12).Select(i => new GearLine($"gear {i}", 5 * i, 1000, 15 * i, 3000)).ToList();
        var chart = new Sawtooth { SpeedUnit = "km/h", EngineUnit = "rev/min", SpeedMax = 180, EngineMax = 3000, Gears = gears };

        var boxes = BuildSheet.Draw(Sheets.Empty with { Sawtooth = chart }).Pages.SelectMany(page => page.Operations)
            .OfType<DrawBox>().Where(box => box is { Fill: not null, Line: not null }).Select(box => box.Box).ToList();

        Assert.Equal(12, boxes.Count);
        Assert.All(boxes, box => Assert.DoesNotContain(boxes, other => other != box && other.Overlaps(box)));
    }
}
