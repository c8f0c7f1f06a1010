using BuildLog.Data.Components;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Tests.Headless;

namespace BuildLog.Tui.Tests.Measurements;

/// <summary>The counts after their tally: the question of the last part of a turn, and each form with what its readings come to.</summary>
public sealed class CountPicturesTests
{
    private static readonly DateOnly Today = new(2026, 5, 3);

    private static readonly IReadOnlyDictionary<string, Func<Form>> Pages = new Dictionary<string, Func<Form>>(StringComparer.Ordinal)
    {
        ["set-up-of-turns"] = () => TallyForms.SetUp("Harrow banjo", _ => { }),
        ["fraction"] = () => TallyForms.Fraction(new AxleTally("Harrow banjo", Wheels.OneHeld) { Written = Turns }, _ => { }),
        ["fraction-of-both-wheels"] = () => TallyForms.Fraction(new AxleTally("Harrow banjo", Wheels.Each) { Written = Turns.Replace("o", "ro", StringComparison.Ordinal) }, _ => { }),
        ["turns-result"] = () => TurnCountForm.For("Harrow banjo", Today, _ => { }, new FinishedTally(Wheels.OneHeld, "10:20 1/2", "0.25")),
        ["gear-result"] = () => GearCountForm.For("Corvane four-speed", "1st", Today, _ => { }, new FinishedTally(default, "10:30.1", "0.1")),
        ["roll-out-result"] = () => RollOutForm.For(new WheelSetComponent { Name = "steel wheels" }, Today, UnitSystem.Metric, _ => { }, "1:2040 mm\n3:6125 mm"),
        ["roll-out-after-the-tally"] = () => RollOutForm.For(new WheelSetComponent { Name = "steel wheels" }, Today, UnitSystem.Metric, _ => { }, "5:"),
    };

    public static TheoryData<string, int, int> PagesAndSizes
    {
        get
        {
            var all = new TheoryData<string, int, int>();
            foreach (var name in Pages.Keys)
            {
                all.Add(name, 80, 24);
                all.Add(name, 120, 36);
            }

            return all;
        }
    }

    private static string Turns => string.Concat(Enumerable.Repeat("iio", 10));

    [Theory]
    [MemberData(nameof(PagesAndSizes))]
    public void Looks_like_its_picture(string name, int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var form = new FormScreen(Pages[name]());
        ExpectedScreen.Matches($"{name}-{width}x{height}", screen.Show(form).Text);
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 36)]
    public void The_tally_of_both_wheels_looks_like_its_picture(int width, int height)
    {
        using var screen = new HeadlessScreen(width, height);
        using var tally = new TallyScreen(new AxleTally("Harrow banjo", Wheels.Each) { Written = Turns.Replace("o", "ro", StringComparison.Ordinal) });
        ExpectedScreen.Matches($"tally-of-both-wheels-{width}x{height}", screen.Show(tally).Text);
    }
}
