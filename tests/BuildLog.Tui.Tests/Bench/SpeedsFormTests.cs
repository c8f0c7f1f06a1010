using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Bench;

/// <summary>A car on wheels of two metres and an axle of 4: 30 km/h per 1000 rev/min in direct gear, 15 in the lower.</summary>
public sealed class SpeedsFormTests
{
    private static readonly Driveline Car = new()
    {
        Engine = new("four")
        {
            Redline = new(5000 / 60.0, Source.MakersData),
            Torque = TorqueCurve.Of([new TorquePoint(1000 / 60.0, 200), new TorquePoint(5000 / 60.0, 200)], Source.Measured, 0),
        },
        Transmission = new("two-speed", [new("1", Exactly(2)), new("2", Exactly(1))]),
        RearAxle = new("axle", Exactly(4)),
        Tyres = new("tyres", Exactly(2), null),
        Load = new() { Mass = Exactly(1500), RollingResistance = Exactly(0.014), DragArea = Exactly(0.8) },
    };

    private readonly AnsweringView view = new(WorkbenchModel.EmptyShop);
    private readonly SpeedsWish wish = new();

    private SpeedsModel Shown => SpeedsWords.Of(Car, OwnersGoals.None, UnitSystem.Metric, wish);

    [Fact]
    public void Columns_may_be_other_engine_speeds()
    {
        Choose(("engine", "1500 to 2500 by 500"), ("gears", "2"));

        Assert.Equal(["ratio", "1500", "2000", "2500", "drops to"], Shown.Columns);
        var top = Assert.Single(Shown.Rows);
        Assert.Equal(["1.00", "45.0", "60.0", "75.0", ""], top.Cells);
    }

    // 90 km/h turn the engine 3000 in direct gear; in the lower it would be 6000, and 5000 is the redline.
    [Fact]
    public void Columns_may_be_road_speeds_and_cells_engine_speeds()
    {
        Choose(("columns", "road"), ("road", "30 90"));

        Assert.Equal(["ratio", "30", "90 km/h", "drops to"], Shown.Columns);
        Assert.Equal(["2.00", "2000", "over", "2500"], Shown.Rows[0].Cells);
        Assert.Equal(["1.00", "1000", "3000", ""], Shown.Rows[1].Cells);
    }

    [Fact]
    public void Engine_speeds_beyond_the_redline_are_marked_and_the_mark_is_told()
    {
        Choose(("engine", "4000 5000 6000"));

        Assert.Equal(["ratio", "4000", "5000", "6000*", "drops to"], Shown.Columns);
        Assert.Equal("* beyond the redline of 5000 rev/min", Shown.Footnote);
        Choose(("columns", "road"), ("road", "30 90"));
        Assert.Equal("over: beyond the redline of 5000 rev/min", Shown.Footnote);
        Choose(("columns", "engine"), ("engine", "4000"));
        Assert.Null(Shown.Footnote);
    }

    // 30 km/h are 18.64 mph.
    [Fact]
    public void The_unit_is_chosen_for_table_and_chart()
    {
        Choose(("unit", "mph"), ("engine", "1000"));

        Assert.Equal("18.6", Shown.Rows[1].Cells[1]);
        Assert.Equal("mph", Shown.Chart!.SpeedUnit);
    }

    [Theory]
    [InlineData("engine", "fast")]
    [InlineData("engine", "1000 to 9000 by 100")]
    [InlineData("gears", "5")]
    public void Nonsense_is_refused_beside_its_entry(string entry, string typed)
    {
        Choose((entry, typed));
        Assert.Single(view.Refused);
        Assert.Equal(4, Shown.Columns.Count - 2);
    }

    // 200 N·m · 4 · 2π / 2 m = 2513 N at most in direct gear, less what is lost on the way and 206 N of rolling at least.
    [Fact]
    public void Force_left_and_hills_have_a_curve_for_each_gear()
    {
        var pull = Shown.Pull()!;

        Assert.Equal(["1", "2"], pull.Reserve.Curves.Select(curve => curve.Name));
        Assert.Equal(["1", "2"], pull.Hill.Curves.Select(curve => curve.Name));
        Assert.Equal("force left, kN", pull.Reserve.Up);
        Assert.InRange(pull.Reserve.Curves[1].Points.Max(point => point.Y), 1.9, 2.31);
        Assert.All(pull.Reserve.Curves[1].Points, point => Assert.True(point.Y >= 0));
    }

    [Fact]
    public void Where_a_number_is_missing_it_says_which()
    {
        var without = SpeedsWords.Of(Car with { Load = null }, OwnersGoals.None, UnitSystem.Metric);

        Assert.Null(without.Pull());
        Assert.Contains("the vehicle's mass", without.PullMissing, StringComparison.Ordinal);
        Assert.DoesNotContain("torque,", without.PullMissing, StringComparison.Ordinal);
    }

    private void Choose(params (string Entry, string Text)[] texts) => view.Type(texts).Fill(SpeedsForm.For(Car, wish, UnitSystem.Metric));

    private static Known Exactly(double value) => new(value, Source.Measured);
}
