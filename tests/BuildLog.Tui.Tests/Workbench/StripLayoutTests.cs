using BuildLog.Gearing.Checks;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Workbench;

public sealed class StripLayoutTests
{
    public static TheoryData<string, int, int> Spaces()
    {
        var data = new TheoryData<string, int, int>();
        foreach (var vehicle in new[] { "two-wheel", "four-by-four", "five" })
        {
            foreach (var width in new[] { 40, 59, 60, 75, 90, 130 })
            {
                foreach (var height in new[] { 4, 9, 14 }) data.Add(vehicle, width, height);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Spaces))]
    public void Boxes_and_joints_lie_inside_the_width_and_never_on_each_other(string vehicle, int width, int maxHeight)
    {
        var driveline = DrivelineOf(vehicle);
        var layout = StripLayout.For(driveline, width, maxHeight);

        Assert.Equal(driveline.Boxes, layout.Boxes.Select(placed => placed.Box));
        var taken = new HashSet<(int X, int Y)>();
        foreach (var (x, y, cells) in layout.Boxes.Select(b => (b.X, b.Y, b.Width)).Concat(layout.Joints.Select(j => (j.X, j.Y, j.Width))))
        {
            Assert.InRange(x, 0, width - cells);
            Assert.InRange(y, 0, layout.Height - 1);
            for (var i = 0; i < cells; i++) Assert.True(taken.Add((x + i, y)), $"({x + i}, {y}) is taken twice");
        }
    }

    [Fact]
    public void Every_verdict_hangs_at_a_joint_wide_enough_for_its_word()
    {
        var layout = StripLayout.For(InventedShop.Drover.Driveline, 60, 9);
        var verdicts = layout.Joints.Where(joint => joint.Verdict is not null).ToList();

        Assert.Equal(3, verdicts.Count);
        Assert.All(verdicts, joint => Assert.True(joint.Width >= joint.Verdict!.Value.InWords().Length));
    }

    [Fact]
    public void Four_boxes_stand_in_one_run_at_eighty_columns()
    {
        var layout = StripLayout.For(InventedShop.Heron.Driveline, 60, 9);
        Assert.All(layout.Boxes, placed => Assert.Equal(0, placed.Y));
    }

    // 80 × 24: beside the vehicles 60 cells, and rows to spare for the page below.
    [Fact]
    public void Where_rows_are_few_a_four_by_four_takes_two_for_each_of_its_chains()
    {
        var layout = StripLayout.For(InventedShop.Drover.Driveline, 60, 5);

        Assert.Equal((BoxManner.TwoLines, 6), (layout.Manner, layout.Height));
        Assert.All(layout.Joints.Where(joint => joint.Verdict is not null), joint => Assert.True(joint.Width >= joint.Verdict!.Value.InWords().Length));
    }

    [Theory]
    [InlineData(30, "overdrive  counted", "0.778 ± 0.002")]
    [InlineData(16, "overdrive", "0.778 ± 0.002")]
    [InlineData(10, "overdrive", "0.778")]
    public void Two_lines_say_caption_number_and_source_as_they_have_room(int width, string caption, string number)
        => Assert.Equal((caption, number), BoxText.TwoLines(new("overdrive", "overdrive", "Sorrel unit", "0.778", "0.002", "counted"), width));

    [Fact]
    public void An_empty_position_says_so_in_two_lines()
        => Assert.Equal("axle  (empty)", BoxText.TwoLines(new("axle", "axle", null), 16).Caption);

    [Fact]
    public void With_room_the_front_branch_goes_on_beside_the_trunk_and_the_rear_stands_below_it()
    {
        var layout = StripLayout.For(InventedShop.Drover.Driveline, 90, 14);
        var front = layout.Boxes.Single(placed => placed.Box.Position == "front-axle");
        var rear = layout.Boxes.Single(placed => placed.Box.Position == "rear-axle");

        Assert.Equal(layout.Boxes[0].Y, front.Y);
        Assert.Equal(front.X, rear.X);
        Assert.True(rear.Y > front.Y);
    }

    private static DrivelineModel DrivelineOf(string vehicle) => vehicle switch
    {
        "two-wheel" => InventedShop.Heron.Driveline,
        "four-by-four" => InventedShop.Drover.Driveline,
        _ => InventedShop.Wren.Driveline,
    };
}
