using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>The yard card as it is read on the screen: of an axle that Bittern wants, as its gearbox, tyres and cruise goal make it.</summary>
public sealed class YardCardPictureTests : IDisposable
{
    private readonly SmallShop small = new();
    private readonly WorkbenchActs acts;

    public YardCardPictureTests()
    {
        acts = new(small.Shop, small.Clock, UnitSystem.Metric);
        var view = new AnsweringView(acts.Open());
        acts.FitPart(view.Type(("part", "Pinewood four-speed"), ("gears", "3.64 2.09 1.38 1.00"), ("day", "1 May 2026")), nameof(Position.Transmission));
        acts.FitPart(view.Type(("part", "Harrow banjo"), ("ratio", "4.10"), ("day", "1 May 2026")), nameof(Position.RearAxle));
        acts.FitPart(view.Type(("part", "steel wheels"), ("circumference", "2.00 m"), ("day", "1 May 2026")), nameof(Position.Tyres));
        acts.EditGoal(view.Pick("cruise").Type(("speed", "120 km/h"), ("engine", "3000 rpm")));
        Assert.Empty(view.Refused);
        small.Shop.Add(new WantedPart(small.Bittern, WantedKind.Axle) { Title = "longer axle" });
    }

    public void Dispose() => small.Dispose();

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 36)]
    public void Looks_like_its_picture(int width, int height)
    {
        using var window = new HeadlessScreen(width, height);
        using var workbench = new WorkbenchScreen(acts, BenchPages.All(small.Shop, small.Clock));
        window.Run(
            workbench,
            Press((Key)'a'), See("All acts"), Type("page wanted"), NoLongerSee("Add a vehicle"), Press(Key.Enter), See("longer axle"),
            Press((Key)'c'), See("Yard card"), Check(s => ExpectedScreen.Matches($"yard-card-{width}x{height}", s.Text)), Press(Key.Esc), NoLongerSee("Yard card"), Press((Key)'q'));
    }

    [Fact]
    public void F1_over_the_list_of_all_acts_and_over_the_card_shows_the_help_about_them()
    {
        using var window = new HeadlessScreen(80, 24);
        using var workbench = new WorkbenchScreen(acts, BenchPages.All(small.Shop, small.Clock));
        window.Run(
            workbench,
            Press((Key)'a'), See("All acts"), Press(Key.F1), See("Help: the workbench"), Press(Key.Esc), NoLongerSee("Help:"),
            Type("page wanted"), NoLongerSee("Add a vehicle"), Press(Key.Enter), See("longer axle"),
            Press((Key)'c'), See("Yard card"), Press(Key.F1), See("Help: wanted"), Press(Key.Esc), NoLongerSee("Help:"), See("Yard card"),
            Press(Key.Esc), NoLongerSee("Yard card"), Press((Key)'q'));
    }
}
