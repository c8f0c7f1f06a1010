using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Reference;
using BuildLog.Tui.Tests.Docs;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Tests.Workbench;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Reference;

/// <summary>The keys that F1 and docs/keys.md name are the keys there are.</summary>
public sealed class KeyListTests
{
    [Fact]
    public void The_page_says_what_f1_says() => Pages.AreInStep("docs/keys.md", KeyPages.Write());

    [Fact]
    public void Every_key_of_the_workbench_is_named()
    {
        using var screen = new HeadlessScreen();
        using var small = new SmallShop();
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), BenchPages.All(small.Shop, small.Clock));
        screen.Show(workbench);
        var pages = workbench.Keys.Select(act => act.Key.ToString()).Where(key => char.IsAsciiDigit(key[0])).ToList();

        Assert.Contains($"{pages[0]} to {pages[^1]}", NamedKeys("Workbench"));
        Assert.Empty(workbench.Keys.Where(act => act.KeyName.Length > 0).Select(act => act.Key.ToString()).Except(pages).Except(NamedKeys("Workbench")));
    }

    [Fact]
    public void Every_letter_that_is_named_does_something()
    {
        using var screen = new HeadlessScreen();
        using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), InventedShop.Pages());
        screen.Show(workbench);

        Assert.Empty(NamedKeys("Workbench").Where(key => key.Length == 1 && char.IsAsciiLetter(key[0])).Except(workbench.Keys.Select(act => act.Key.ToString())));
    }

    // A page's key would go before it, and undo would be something else there.
    [Fact]
    public void No_page_takes_a_key_of_the_whole_workbench()
    {
        var record = DemoShop.CreateFreshCopy();
        try
        {
            using var shop = ShopFile.Open(record);
            using var screen = new HeadlessScreen();
            var pages = BenchPages.All(shop, TimeProvider.System);
            using var workbench = new WorkbenchScreen(new RecordingActs(InventedShop.Workbench()), pages);
            screen.Show(workbench);

            Assert.All(pages, page => Assert.Empty(page.Acts.Select(act => act.Key.ToString()).Intersect(workbench.Keys.Select(act => act.Key.ToString()))));
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(record)!, recursive: true);
        }
    }

    [Fact]
    public void The_bottom_line_of_the_tally_names_the_same_keys()
    {
        using var screen = new HeadlessScreen(width: 120);
        using var tally = new TallyScreen(new AxleTally("Harrow banjo", Wheels.Each)); // the one with the most keys
        screen.Show(tally);

        Assert.All(KeyPages.Entries("TurnCount"), entry => Assert.Contains(entry.Key.Split(',')[0] + " ", screen.Row(23), StringComparison.Ordinal));
        Assert.Equal(7, KeyPages.Entries("TurnCount").Count());
    }

    private static IEnumerable<string> NamedKeys(string page) => KeyPages.Entries(page).SelectMany(entry => entry.Key.Split(", "));
}
