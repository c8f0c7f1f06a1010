using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Commands;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;
using Terminal.Gui.Input;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>docs/tutorial.md: its keys, pressed one after the other on the demo shop at 80×24, lead to the words and figures it names.</summary>
/// <remarks>Its commands are run by <see cref="ShownCommandsTests"/>.</remarks>
public sealed class TutorialTests : IDisposable
{
    private const string Page = "docs/tutorial.md";

    private readonly string record = DemoShop.CreateFreshCopy();

    public void Dispose() => Directory.Delete(Path.GetDirectoryName(record)!, recursive: true);

    [Fact]
    public void Its_keys_lead_to_what_it_names()
    {
        var text = string.Join(' ', Pages.Read(Page).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Step Named(string onThePage, params string[] onTheScreen) => s =>
        {
            Assert.Contains(onThePage, text, StringComparison.Ordinal);
            var screen = s.Draw().Text.Replace('\u00a0', ' ');
            return onTheScreen.All(each => screen.Contains(each, StringComparison.Ordinal));
        };

        var clock = new ADay(2024, 12, 20); // after the last swap of the demo shop
        var sheet = Path.Combine(Path.GetDirectoryName(record)!, "sheet.pdf");
        using var shop = ShopFile.Open(record, clock);
        using var screen = new HeadlessScreen();
        var acts = new WorkbenchActs(shop, clock, UnitSystem.Metric, Edge.DemoBanner, pad: new Scratchpad());
        using var workbench = new WorkbenchScreen(acts, BenchPages.All(shop, clock));
        workbench.GoToWhatNow();

        screen.Run(
            workbench,
            [
                // 1. A clash
                See("6 vehicles"), Named("the one that needs you most at the top: Brindle", "›Brindle"), Press(Key.Enter),
                See("1 Findings"), Named("between axle and tyres hangs a ×", "──×──"), Press(Key.Tab), Press(Key.Tab),
                Named("3530 rev/min, and 2400 to 2600 is wanted", "3530 ± 30 rev/min, wanted 2400 to 2600"),
                Named("even the whole 95 % interval is", "The whole 95 % interval is outside what is wanted."),
                Named("3.24 to 3.47", "Cure     axle ratio 3.24 to 3.47"),
                Press(Key.F1), See("Help: Cruise engine speed"), See("n = v ·"), Press(Key.Esc), NoLongerSee("Help:"),
                Press(Key.CursorDown), Named("`↓` to *Not looked at*", "Nobody has looked at these yet"), Press(Key.CursorDown), Named("the tag says 3.90, the count 4.75", "The tag's 3.90 does not agree with 4.75"),

                // 2. What is known, and how
                Press((Key)'3'), See("[3 Measured]"), Named("43/9 most likely", "May be 43/9 = 4.778"),
                Press((Key)'2'), See("[2 Speeds]"), Press((Key)'c'), Named("the bracket marked *goal*", "┬goal"), Press((Key)'c'), See("drops to"),
                Press((Key)'5'), See("[5 History]"), Named("On 12 October 2024 the yard axle went in, and the cruise from 2463 to 3530 rev/min", "›12 Oct 2024", "2463 rev/min → 3530 rev/min"),

                // 3. A swap
                Press((Key)'f'), See("Fit what to Brindle?"), WalkTo("axle:"), Press(Key.Enter),
                See("Brindle: axle"), Named("*fit Harrow axle, the frame's own*"), WalkTo("fit Harrow axle, the frame's own"), Press(Key.Enter),
                Named("*inspect first*", "inspect first: came off Brindle", "Cruise    3530 ± 30 rev/min → 2463 ± 5 rev/min"),
                Press(Key.Tab), Press(Key.Tab), Type("quiet again"), See("Why       quiet again"), Press(Key.S.WithCtrl), See("Fitted to Brindle"),
                Named("one line more: 3530 → 2463 rev/min", "›20 Dec 2024", "3530 rev/min → 2463 rev/min", "quiet again"),
                Named("counts no clash any more, only what is *open*", "\n  2 open  "), Press((Key)'1'), See("? open  Tyre speed symbol"), NoLongerSee("× clash Cruise"),

                // 4. A count
                Press((Key)'w'), See("What now?"), WalkTo("Pellow"), Press(Key.Enter), See("Pellow  planned"), See("? open  Cruise engine speed"),
                Press((Key)'t'), Named("*count now*", "›count now"), Press(Key.Enter), See("Before you start"), Press((Key)'a'),
                Named("*turns backwards*", "( ) turns backwards"), Press(Key.Space), See("(•) turns backwards"), Press(Key.S.WithCtrl), See("Propshaft turns [Space]"),
                .. Enumerable.Repeat(Press(Key.Space), 20), .. Enumerable.Repeat(Press(Key.Enter), 10), See("Ratio 4.10"), Press(Key.S.WithCtrl),
                See("Part of a turn"), Type("1/2"), See("10:20.5"), Press(Key.S.WithCtrl), Named("perhaps 41/10", "Ratio 4.10 ± 0.03", "41/10"), Press(Key.S.WithCtrl),
                See("Kept: the turn count"), Press((Key)'1'), Named("3090 ± 90 rev/min where 2470 to 2730 is wanted", "3090 ± 90 rev/min, wanted 2470 to 2730"), See("›× clash Cruise engine speed"),

                // 5. Tyre, goal, sheet
                Press((Key)'r'), Named("*type a count I have already*"), See("›count now"), Press(Key.CursorDown), See("›type a count I have already"), Press(Key.Enter),
                See("Before you start"), Press((Key)'a'), Named("such as `3:6125 mm`", "3:6125 mm"), Press(Key.Esc), NoLongerSee("3:6125 mm"),
                Press((Key)'g'), Named("*cruise at an engine speed* comes first", "›cruise at an engine speed"), Press(Key.Esc), NoLongerSee("What should Pellow do?"),
                Press((Key)'s'), See("Build sheet of Pellow"), Instead(sheet), Press(Key.S.WithCtrl), See("Wrote"),
                Press((Key)'q'),
            ]);

        Assert.Equal("%PDF-", File.ReadAllText(sheet)[..5]);
    }
}
