using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Commands;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Workbench;

/// <summary>What <c>buildlog --demo</c> shows of its first vehicle; the README shows the same.</summary>
public sealed class TheDemoShopTests
{
    [Fact]
    public void Its_findings_look_like_their_picture()
    {
        var record = DemoShop.CreateFreshCopy();
        try
        {
            var clock = new ADay(2024, 12, 20); // after its last swap: what a stranger sees whenever he comes
            using var shop = ShopFile.Open(record, clock);
            var acts = new WorkbenchActs(shop, clock, UnitSystem.Metric, Edge.DemoBanner);
            _ = acts.WhatNow().ToList(); // the start page has judged every vehicle before one is chosen
            using var screen = new HeadlessScreen();
            using var workbench = new WorkbenchScreen(acts, BenchPages.All(shop, clock));
            workbench.Say(Edge.DemoWelcome);
            screen.Show(workbench).Press((Key)'1');
            ExpectedScreen.Matches("demo-80x24", screen.Text);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(record)!, recursive: true);
        }
    }
}
