using BuildLog.Data.Files;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>A first evening at the workbench, by keyboard alone at 80×24: vehicle, parts, goal, guided count, finding, option, wanted part, yard card, build sheet.</summary>
public sealed class FromVehicleToSheetTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-evening-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Every_step_is_on_the_screen_when_its_key_is_pressed()
    {
        var (card, sheet) = (Path.Combine(folder, "card.pdf"), Path.Combine(folder, "sheet.pdf"));
        using var shop = ShopFile.Open(Path.Combine(folder, "shop.db"));
        using var screen = new HeadlessScreen();
        var acts = new WorkbenchActs(shop, TimeProvider.System, UnitSystem.Metric, pad: new Scratchpad());
        using var workbench = new WorkbenchScreen(acts, BenchPages.All(shop, TimeProvider.System));

        screen.Run(
            workbench,
            [
                See("n"), Press((Key)'n'),
                See("New vehicle"), Type("Heron"), Press(Key.S.WithCtrl), See("in the shop"),
                .. Fit("gearbox", "New gearbox for Heron", "Pinewood four", "3.64 2.09 1.38 1.00"),
                .. Fit("axle", "New axle for Heron", "Harrow banjo"),
                .. Fit("tyres", "New tyres for Heron", "steel wheels", "205/65R15 94H"),
                Press((Key)'g'), See("cruise"), Press(Key.Enter),
                See("Road speed"), Type("100 km/h"), Press(Key.Enter), Type("2500 rpm"), Press(Key.S.WithCtrl),
                See("goal"), Press((Key)'t'), See("count now"), Press(Key.Enter),
                See("Before you start"), Press((Key)'a'),
                See("turns backwards"), Press(Key.Space), Press(Key.Space), See("(•) turns the same way"), Press(Key.S.WithCtrl),
                See("Propshaft turns"), .. Enumerable.Repeat(Press(Key.Space), 41), .. Enumerable.Repeat(Press(Key.Enter), 10),
                See("Ten wheel turns"), Press(Key.S.WithCtrl),
                See("Ctrl+S"), Press(Key.S.WithCtrl),
                See("Wheel mark off by"), Press(Key.S.WithCtrl),
                See("Kept: the turn count"), Press((Key)'1'), See("× clash"),
                Press((Key)'0'), See("Options"), NoLongerSee("Searching"),
                Press((Key)'h'), See("Hunted now"),
                Press((Key)'c'), See("Yard card"), See("p print it"), Press((Key)'p'),
                See("Print the yard card"), Instead(card), Press(Key.S.WithCtrl), See("Wrote"),
                Press(Key.CursorRight), See("Wanted"),
                Press((Key)'s'), See("Build sheet of Heron"), Instead(sheet), Press(Key.S.WithCtrl), See("Wrote"),
                Press((Key)'q'),
            ]);

        foreach (var paper in new[] { card, sheet }) Assert.Equal("%PDF-", File.ReadAllText(paper)[..5]);
    }

    // The chooser's list is walked to the place, as a person does; "Known from" stands between the name and the numbers.
    private static IEnumerable<Step> Fit(string place, string form, string name, string? second = null) =>
    [
        Press((Key)'f'), See("Fit what to Heron?"), WalkTo(place), Press(Key.Enter),
        See(form), Type(name), .. second is null ? Array.Empty<Step>() : [Press(Key.Enter), Press(Key.Enter), Type(second)], Press(Key.S.WithCtrl),
        NoLongerSee(form),
    ];
}
