using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text.RegularExpressions;

namespace BuildLog.Tui.Tests.Pty;

public sealed partial class LeavingTheTerminalTests : IDisposable
{
    private readonly string log = Path.Combine(Directory.CreateTempSubdirectory("buildlog-trial-").FullName, "errors.log");

    public LeavingTheTerminalTests() => Assert.SkipWhen(OperatingSystem.IsWindows(), "Pseudo-terminals here are those of Unix.");

    public void Dispose() => Directory.Delete(Path.GetDirectoryName(log)!, recursive: true);

    [Fact]
    public void Q_leaves_it_as_it_was_found()
    {
        using var program = Start();
        program.Terminal.Send("q");
        Assert.Equal(0, program.WaitForExit());
        program.AssertTerminalRestored();
    }

    [Theory]
    [InlineData(PosixSignal.SIGTERM, 143)]
    [InlineData(PosixSignal.SIGINT, 130)]
    [InlineData(PosixSignal.SIGQUIT, 131)]
    [InlineData(PosixSignal.SIGHUP, 129)]
    public void A_signal_leaves_it_as_it_was_found(PosixSignal signal, int exitCode)
    {
        using var program = Start();
        program.Signal(signal);
        Assert.Equal(exitCode, program.WaitForExit());
        program.AssertTerminalRestored();
    }

    [Fact]
    public void A_signal_with_a_half_filled_form_open_leaves_it_as_it_was_found()
    {
        using var program = Start();
        program.Terminal.Send("t");
        program.Terminal.WaitFor("Driven wheels");
        program.Terminal.Send("Heron");
        program.Signal(PosixSignal.SIGTERM);
        Assert.Equal(143, program.WaitForExit());
        program.AssertTerminalRestored();
    }

    [Fact]
    public void A_crash_on_another_thread_leaves_it_as_it_was_found_and_is_logged()
    {
        using var program = Start();
        program.Terminal.Send("n");
        program.WaitForExit();
        program.AssertTerminalRestored();
        Assert.Contains("dropped a spanner", File.ReadAllText(log), StringComparison.Ordinal);
    }

    [Fact]
    public void An_exit_from_within_leaves_it_as_it_was_found()
    {
        using var program = Start();
        program.Terminal.Send("e");
        Assert.Equal(Trial.ExitFromWithin, program.WaitForExit());
        program.AssertTerminalRestored();
    }

    [Fact]
    public void A_failed_act_is_a_sentence_and_the_program_goes_on()
    {
        using var program = Start();
        program.Terminal.Send("f");
        var at = program.Terminal.WaitFor("the thread is stripped");
        program.Terminal.SendEsc();
        program.Terminal.WaitFor("Heron estate", at);
        program.Terminal.Send("q");
        Assert.Equal(0, program.WaitForExit());
        program.AssertTerminalRestored();
    }

    [Fact]
    public void A_terminal_that_is_closed_ends_the_program()
    {
        using var program = Start();
        program.Terminal.Close();
        program.WaitForExit();
    }

    // Without the signal it would read nothing from it for ever, as fast as the machine can.
    [Fact]
    public void A_terminal_that_is_not_its_own_ends_the_program_too_when_it_is_closed()
    {
        using var program = Start(isItsOwn: false);
        program.Terminal.Close();
        program.WaitForExit();
    }

    [Fact]
    public void A_resize_is_followed()
    {
        using var program = Start();
        var at = program.Terminal.Raw.Length;
        program.Terminal.Resize(120, 36);
        program.Terminal.WaitFor("3670 ± 55 rev/min", at); // the column of cruise speeds has room now
        program.Terminal.Send("q");
        Assert.Equal(0, program.WaitForExit());
    }

    [Fact]
    public void Under_no_color_not_one_colour_is_sent()
    {
        using var program = Start(new Dictionary<string, string?> { ["NO_COLOR"] = "1", ["COLORTERM"] = "truecolor" });
        program.Terminal.Send("t");
        var at = program.Terminal.WaitFor("Driven wheels");
        program.Terminal.SendEsc();
        program.Terminal.WaitFor("Heron estate", at);
        program.Terminal.Send("q");
        Assert.Equal(0, program.WaitForExit());

        Assert.Empty(ColoursIn(program.Terminal.Raw));
    }

    [Fact]
    public void Without_no_color_there_are_colours_to_be_found()
    {
        using var program = Start();
        Assert.NotEmpty(ColoursIn(program.Terminal.Raw));
    }

    [Fact]
    public void Without_a_terminal_it_says_so_in_one_line()
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var word in Command().Skip(1)) start.ArgumentList.Add(word);
        using var process = Process.Start(start)!;
        process.StandardInput.Close();
        var said = process.StandardError.ReadToEnd();
        process.WaitForExit();

        Assert.Equal(2, process.ExitCode);
        Assert.StartsWith("The workbench needs a terminal", said, StringComparison.Ordinal);
        Assert.Single(said.Trim().Split('\n'));
    }

    private static List<string> ColoursIn(string raw) =>
        [.. StyleSequence().Matches(raw).SelectMany(match => match.Groups[1].Value.Split(';')).Where(IsColour)];

    // 30-37, 38, 40-47, 48 and the bright 90-97, 100-107; 39 and 49 are the terminal's own two.
    private static bool IsColour(string code) =>
        int.TryParse(code, out var number) && number is (>= 30 and <= 38) or (>= 40 and <= 48) or (>= 90 and <= 107);

    private string[] Command() => ["dotnet", "exec", typeof(LeavingTheTerminalTests).Assembly.Location, Trial.Word, log];

    private TerminalProgram Start(IReadOnlyDictionary<string, string?>? environment = null, bool isItsOwn = true)
    {
        var program = new TerminalProgram(Command(), environment: environment, isItsOwn: isItsOwn);
        program.Terminal.WaitFor("2 need you");
        return program;
    }

    [GeneratedRegex(@"\e\[([0-9;]*)m")]
    private static partial Regex StyleSequence();
}
