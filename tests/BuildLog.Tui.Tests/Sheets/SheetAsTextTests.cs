using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Preview;
using BuildLog.Tui.Sheets;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using Terminal.Gui.Input;
using Terminal.Gui.Views;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Sheets;

/// <summary>The sheet before it is written, on terminals of several widths.</summary>
public sealed class SheetAsTextTests
{
    private static readonly SheetPreview Sheet = BuildSheetWriter.Preview(InventedSheet.Content);

    [Theory]
    [InlineData(56)]
    [InlineData(76)]
    [InlineData(117)]
    [InlineData(156)]
    public void No_line_is_wider_than_there_is_room_and_no_chart_is_said_in_numbers(int width)
    {
        var lines = Lines(width);

        Assert.All(lines, line => Assert.True(TextFit.Width(line) <= width, line));
        Assert.DoesNotContain(lines, line => line.Contains("Chart", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Any(IsBraille));
    }

    // The line of 4th runs from nothing to 100 kW at 200 km/h: as straight as the diagonal of its plot, less the room above and beside it.
    [Fact]
    public void A_chart_is_drawn_to_the_numbers_with_its_axes_and_their_units()
    {
        var lines = Lines(76);
        var title = lines.IndexOf("Power at the wheels and road load");
        Assert.Equal("power, kW", lines[title + 1]);

        var plot = lines.Skip(title + 2).TakeWhile(line => !line.Contains('└', StringComparison.Ordinal)).ToList();
        var sixty = plot.FindIndex(line => line.StartsWith("   60 ┤", StringComparison.Ordinal));
        Assert.Equal(1 - (60 / 105.0), sixty / (plot.Count - 1.0), tolerance: 1.0 / plot.Count);

        var across = lines[title + 2 + plot.Count + 1];
        var (fifty, hundred) = (across.IndexOf("50", StringComparison.Ordinal) + 0.5, across.IndexOf("100", StringComparison.Ordinal) + 1);
        var onTheLine = Enumerable.Range(0, plot[sixty].Length).Where(x => IsDense(plot[sixty][x])).Average();
        Assert.Equal(120, 50 + ((onTheLine - fifty) / (hundred - fifty) * 50), tolerance: 8.0); // its row is 8 kW high, so 16 km/h wide
        Assert.Equal("road speed, km/h".PadLeft(76), lines[title + 2 + plot.Count + 2]);
    }

    [Fact]
    public void Charts_that_stand_together_stand_beside_each_other_where_both_have_room()
    {
        bool Beside(int width) => Lines(width).Any(line => line.StartsWith(InventedSheet.Power.Title, StringComparison.Ordinal) && line.EndsWith(InventedSheet.Hill.Title, StringComparison.Ordinal));

        Assert.True(Beside(144));
        Assert.False(Beside(143));
    }

    [Fact]
    public void What_the_vehicle_does_is_a_line_and_what_is_held_against_it_single_dots()
    {
        var lines = Lines(76);
        var hill = lines.IndexOf(InventedSheet.Hill.Title);
        var limit = lines.Skip(hill).First(line => line.StartsWith("   30 ┤", StringComparison.Ordinal));

        Assert.True(limit.Count(IsBraille) > 10, limit);
        Assert.All(limit.Where(IsBraille), sign => Assert.Equal(1, int.PopCount(sign - 0x2800)));
    }

    [Fact]
    public void Every_kind_of_chart_is_drawn()
    {
        var kinds = typeof(Chart).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Chart))).ToHashSet();

        Assert.Equal(kinds, new Chart[] { InventedSheet.Sawtooth, InventedSheet.Power, InventedSheet.Map }.Select(chart => chart.GetType()).ToHashSet());
        Assert.Contains(" 3.31  xxwFFF+w", Lines(76));
        Assert.Contains("engine speed, rev/min", Lines(76));
    }

    // A speedometer that shows less than the truth: -7 of -7 to 17 stands as far up as the seventh part of the way says.
    [Fact]
    public void What_lies_below_zero_is_drawn_below_a_line_of_its_own()
    {
        var reading = new CurveChart { Title = "Shown beyond the truth", Across = "true speed, km/h", Up = "shown minus true, km/h", Curves = [new("dial", CurveKind.Does, [new(30, -1.5), new(130, -7)]), new("most allowed", CurveKind.Limit, [new(30, 7), new(130, 17)])] };
        var lines = Lines(76, InventedSheet.Content with { Speedometer = new([new("Reads right at", "1000 turns a kilometre")], reading) });
        var plot = lines.Skip(lines.IndexOf(reading.Title) + 2).TakeWhile(line => !line.Contains('└', StringComparison.Ordinal)).ToList();

        Assert.Contains("   -5 ┤", plot.Select(line => line[..Math.Min(7, line.Length)]));
        var zero = plot.FindIndex(line => line.StartsWith("    0 ┤──", StringComparison.Ordinal));
        Assert.Equal(17.0 / 24, zero / (plot.Count - 1.0), tolerance: 1.0 / plot.Count);
        Assert.All(plot.Take(zero), line => Assert.DoesNotContain(line, IsDense));
        Assert.Contains(plot.Skip(zero + 1), line => line.Any(IsDense));
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 36)]
    [InlineData(160, 50)]
    public void It_looks_like_its_picture_and_is_laid_anew_with_the_terminal(int width, int height)
    {
        using var screen = new HeadlessScreen(80, 24);
        using var below = new Runnable();
        screen.Run(
            below,
            s =>
            {
                Reader.Show(s.App, "What the sheet will say", room => SheetAsText.Of(Sheet, room));
                return true;
            },
            See("page 1 of"),
            Check(s => s.Resize(12, 4)),
            Check(s => s.Resize(width, height)),
            Press(Key.PageDown),
            Check(s => ExpectedScreen.Matches($"sheet-beforehand-{width}x{height}", s.Draw().Text)),
            Press(Key.Esc), NoLongerSee("page"),
            s =>
            {
                s.App.RequestStop(below);
                return true;
            });
    }

    private static List<string> Lines(int width) => [.. SheetAsText.Of(Sheet, width).Select(line => line.Text)];

    private static List<string> Lines(int width, SheetContent content) => [.. SheetAsText.Of(BuildSheetWriter.Preview(content), width).Select(line => line.Text)];

    private static bool IsBraille(char sign) => sign is >= '\u2800' and <= '\u28ff';

    // More than the single dot of a dotted line.
    private static bool IsDense(char sign) => IsBraille(sign) && int.PopCount(sign - 0x2800) > 1;
}
