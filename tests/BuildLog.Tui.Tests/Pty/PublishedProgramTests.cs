using System.Globalization;
using BuildLog.Data.Components;
using BuildLog.Data.Files;
using BuildLog.DemoData;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Tui.Tests.Pty;

/// <summary>The real program on the demo shop in a real terminal: as built, or the published one that BUILDLOG_PROGRAM names.</summary>
public sealed class PublishedProgramTests
{
    private const int FirstStartSeconds = 60;

    public PublishedProgramTests() => Assert.SkipWhen(OperatingSystem.IsWindows(), "Pseudo-terminals here are those of Unix.");

    [Fact]
    public void Opens_on_the_demo_shop_shows_findings_and_speeds_and_leaves_the_terminal_as_it_was_found()
    {
        using var program = new TerminalProgram([.. Program(), "--demo"], 120, 36);
        program.Terminal.WaitFor("sheet", seconds: FirstStartSeconds);
        program.Terminal.WaitFor("need you");
        program.Terminal.Send("\r");
        var at = program.Terminal.WaitFor("Cruise engine speed");

        program.Terminal.Send("2");
        at = program.Terminal.WaitFor("per 1000 rev/min", at);
        program.Terminal.Send("1");
        program.Terminal.WaitFor("Cure", at);
        program.Terminal.Send("q");

        Assert.Equal(0, program.WaitForExit());
        program.AssertTerminalRestored();
    }

    // Pages are named before anything of the sheet is used, which has some of their words.
    [Fact]
    public void Speaks_Dutch_from_the_first_screen_on_and_helps_in_it()
    {
        using var program = new TerminalProgram([.. Program(), "--demo", "--language", "nl"], 120, 36);
        program.Terminal.WaitFor("wachten op je", seconds: FirstStartSeconds);
        program.Terminal.Send("\r");
        program.Terminal.WaitFor("Bevindingen");
        var at = program.Terminal.WaitFor("Gemeten");
        program.Terminal.Send("\eOP"); // F1
        program.Terminal.WaitFor("Hulp: ", at);
        program.Terminal.SendEsc();
        program.Terminal.Send("q");

        Assert.Equal(0, program.WaitForExit());
    }

    [Fact]
    public void Settings_of_the_terminal_library_that_lie_about_do_not_change_how_dialogs_look()
    {
        const string loud = """{ "Theme": "Loud", "Themes": { "Loud": { "Dialog": { "DefaultBorderStyle": "Double" } }, "Bench": { "Dialog": { "DefaultBorderStyle": "Double" } } } }""";
        var home = Directory.CreateTempSubdirectory("home").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(home, ".tui"));
            File.WriteAllText(Path.Combine(home, ".tui", "config.json"), loud);

            using var program = new TerminalProgram([.. Program(), "--demo"], environment: new Dictionary<string, string?> { ["HOME"] = home, ["TUI_CONFIG"] = loud, ["LC_ALL"] = "C.UTF-8" });
            program.Terminal.WaitFor("need you", seconds: FirstStartSeconds);
            program.Terminal.Send("n");
            program.Terminal.WaitFor("as stamped");

            Assert.Contains("┌", program.Terminal.Raw, StringComparison.Ordinal);
            Assert.DoesNotContain("╔", program.Terminal.Raw, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(home, recursive: true);
        }
    }

    // Two thousand gearboxes on the shelf make some hundreds of millions of combinations: long enough to be asked to stop, for a published program on a machine at rest too.
    [Fact]
    public void Ctrl_c_ends_a_long_search_with_a_sentence_and_half_an_answer_is_no_answer()
    {
        var record = DemoShop.CreateFreshCopy();
        try
        {
            using (var shop = ShopFile.Open(record))
            {
                for (var k = 0; k < 2000; k++)
                    shop.Add(new TransmissionComponent { Name = $"shelf {k}", Gears = TransmissionComponent.GearsFrom(Source.MakersData, "3.50", "2.10", "1.40", (1 - (k / 5000.0)).ToString("0.0000", CultureInfo.InvariantCulture)) });
            }

            using var program = new TerminalProgram([.. Program(), "options", "Brindle", "--database", record]);
            program.Terminal.WaitFor("Ctrl+C ends it.", seconds: FirstStartSeconds);
            program.Terminal.Send("\x03");

            Assert.Equal(2, program.WaitForExit());
            Assert.Contains("Ended before there was an answer; nothing was changed.", program.Terminal.Raw, StringComparison.Ordinal);
            Assert.DoesNotContain("Combinations tried", program.Terminal.Raw, StringComparison.Ordinal);
            Assert.DoesNotContain("   at ", program.Terminal.Raw, StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(Path.GetDirectoryName(record)!, recursive: true);
        }
    }

    private static string[] Program()
        => Environment.GetEnvironmentVariable("BUILDLOG_PROGRAM") is { Length: > 0 } published
            ? [published]
            : ["dotnet", "exec", typeof(Tui.Commands.CommandLine).Assembly.Location];
}
