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

    private static string[] Program()
        => Environment.GetEnvironmentVariable("BUILDLOG_PROGRAM") is { Length: > 0 } published
            ? [published]
            : ["dotnet", "exec", typeof(Tui.Commands.CommandLine).Assembly.Location];
}
