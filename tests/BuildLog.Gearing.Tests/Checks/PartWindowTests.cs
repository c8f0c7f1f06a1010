using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tests.Drivelines;
using CsCheck;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

public sealed class PartWindowTests
{
    private static readonly Window Goal = new(10, 20);

    // 5 ± 0.5 at 95 %.
    private static readonly Measured Others = InventedCar.Of(5, 0.5 / 1.959963984540054, settle: _ => "measure the others");

    // By hand: 10/5 … 20/5; sure 10/4.5 … 20/5.5.
    [Fact]
    public void A_part_that_multiplies()
    {
        var window = PartWindow.Proportional(Position.RearAxle, "axle ratio", Units.One, Others, Goal);

        Same(new(2, 4), window.Window);
        Same(new(10 / 4.5, 20 / 5.5), window.SureWindow!.Value);
        Assert.Null(window.OpenedBy);
        Assert.Equal("axle ratio 2.00 to 4.00", window.InWords());
    }

    // By hand: 5/20 … 5/10; sure 5.5/20 … 4.5/10.
    [Fact]
    public void A_part_that_divides()
    {
        var window = PartWindow.Inverse(Position.Tyres, "tyre rolling circumference", Units.Metre, Others, Goal);

        Same(new(0.25, 0.5), window.Window);
        Same(new(0.275, 0.45), window.SureWindow!.Value);
        Assert.Equal("tyre rolling circumference 0.250 to 0.500 m", window.InWords());
    }

    [Fact]
    public void At_most_leaves_one_side_of_the_part_open()
    {
        Same(new(double.NegativeInfinity, 4), PartWindow.Proportional(Position.RearAxle, "axle ratio", Units.One, Others, Window.AtMost(20)).Window);
        Same(new(0.25, double.PositiveInfinity), PartWindow.Inverse(Position.Tyres, "circumference", Units.Metre, Others, Window.AtMost(20)).Window);
        Assert.Equal("axle ratio 4.00 or less", PartWindow.Proportional(Position.RearAxle, "axle ratio", Units.One, Others, Window.AtMost(20)).InWords());
        Assert.Equal("circumference 0.250 m or more", PartWindow.Inverse(Position.Tyres, "circumference", Units.Metre, Others, Window.AtMost(20)).InWords());
    }

    // ± 40 % of the others is more than the goal's ± 33 %: no part is sure.
    [Fact]
    public void Where_no_part_would_be_sure_it_says_what_would_open_a_window()
    {
        var coarse = InventedCar.Of(5, 2 / 1.959963984540054, settle: _ => "measure the others");
        var window = PartWindow.Proportional(Position.RearAxle, "axle ratio", Units.One, coarse, Goal);

        Same(new(2, 4), window.Window);
        Assert.Null(window.SureWindow);
        Assert.Equal("measure the others", window.OpenedBy);
    }

    // What the windows promise, by the verdict itself: an exact part at either end just fits, one beyond it does not.
    [Fact]
    public void Every_part_in_the_sure_window_fits_and_none_outside()
        => Gen.Select(Gen.Double[1, 10], Gen.Double[0.001, 0.05], Gen.Double[-0.2, 1.2], Gen.Bool).Sample((value, relative, place, divides) =>
        {
            var others = InventedCar.Of(value, value * relative);
            var window = divides
                ? PartWindow.Inverse(Position.Tyres, "part", Units.Metre, others, Goal)
                : PartWindow.Proportional(Position.RearAxle, "part", Units.One, others, Goal);
            if (window.SureWindow is not { } sure) return;

            var part = sure.Low + (place * (sure.High - sure.Low));
            if (part <= 0 || Math.Abs(place) < 1e-6 || Math.Abs(place - 1) < 1e-6) return;
            var verdict = Verdicts.Judge(divides ? others / part : others * part, Goal).Verdict;

            Assert.Equal(place is > 0 and < 1, verdict == Verdict.Fits);
        });

    private static void Same(Window expected, Window actual)
    {
        Assert.Equal(expected.Low, actual.Low, 1e-9);
        Assert.Equal(expected.High, actual.High, 1e-9);
    }
}
