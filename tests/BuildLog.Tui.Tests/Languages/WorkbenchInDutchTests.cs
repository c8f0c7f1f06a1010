using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Gearing.Languages;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Commands;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Languages;

/// <summary>The workbench on the demo shop in Dutch: help wherever the focus is, and the screens most looked at without a cut that takes their sense.</summary>
public sealed class WorkbenchInDutchTests : IDisposable
{
    private readonly ADay clock = new(2024, 11, 20);
    private readonly string record = DemoShop.CreateFreshCopy();
    private readonly IDisposable spoken = Language.Dutch.Speak();
    private readonly HeadlessScreen screen = new();
    private readonly Shop shop;
    private readonly WorkbenchScreen workbench;

    public WorkbenchInDutchTests()
    {
        shop = ShopFile.Open(record, clock);
        var acts = new WorkbenchActs(shop, clock, UnitSystem.Metric, Edge.DemoBanner);
        workbench = new(acts, BenchPages.All(shop, clock), acts.OpenList());
        workbench.GoToWhatNow();
    }

    public void Dispose()
    {
        workbench.Dispose();
        screen.Dispose();
        shop.Dispose();
        spoken.Dispose();
        Directory.Delete(Path.GetDirectoryName(record)!, recursive: true);
    }

    [Fact]
    public void Help_is_there_wherever_the_focus_is()
    {
        Step[] help = [Press(Key.F1), See("Hulp: "), Press(Key.Esc), NoLongerSee("Hulp: ")];
        Step[] steps = [See("Wat nu"), .. help, Press(Key.Enter), Press((Key)'1'), .. help, Press(Key.Tab), .. help, Press(Key.Tab), .. help, Press(Key.Tab), .. help];
        for (var page = 0; page < BenchPages.All(shop, clock).Count; page++) steps = [.. steps, Press(Key.CursorRight), .. help];

        screen.Run(workbench, [.. steps, Press((Key)'q')]);
    }

    [Fact]
    public void The_first_screen_and_pages_look_like_their_pictures()
    {
        screen.Run(
            workbench,
            See(" 6 voertuigen"), Picture("what-now"),
            Press(Key.Enter), Press((Key)'1'), Picture("findings"),
            Press((Key)'2'), Picture("speeds"),
            Press((Key)'4'), Picture("goal"),
            Press((Key)'6'), Picture("jobs"),
            Press((Key)'0'), NoLongerSee("Zoeken …"), Picture("options"),
            Press((Key)'g'), See("laat het zo"), Picture("goal-choice"), Press(Key.Enter), See("Ctrl+S"), Picture("goal-form"),
            Press(Key.Esc), Press((Key)'q'));
    }

    [Fact]
    public void The_tally_looks_like_its_picture()
    {
        using var tally = new TallyScreen(new AxleTally("Harrow banjo", Wheels.Together) { Written = string.Concat(Enumerable.Repeat("iio", 10)) });
        screen.Show(tally);
        ExpectedScreen.Matches("nl-tally-80x24", screen.Text);
    }

    private static Step Picture(string name) => Check(at => ExpectedScreen.Matches($"nl-{name}-80x24", at.Text));
}
