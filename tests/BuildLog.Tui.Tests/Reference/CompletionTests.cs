using System.Diagnostics;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Reference;

/// <summary>The scripts in the shells themselves, as far as the machine has them.</summary>
public sealed class CompletionTests
{
    private const string AskBash = "source \"$1\"; shift; COMP_WORDS=(\"$@\"); COMP_CWORD=$(($# - 1)); _buildlog; echo \"${COMPREPLY[*]}\"";

    public static TheoryData<string> Shells => ["bash", "zsh", "fish", "powershell"];

    [Theory]
    [InlineData("axle", "buildlog", "ax")]
    [InlineData("--wheels", "buildlog", "axle", "--wh")]
    [InlineData("one-held together", "buildlog", "axle", "--wheels", "")]
    [InlineData("imperial", "buildlog", "history", "--units", "im")]
    [InlineData("order", "buildlog", "paper", "or")]
    [InlineData("--out --overwrite --open", "buildlog", "paper", "order", "--o")]
    [InlineData("a4 letter", "buildlog", "paper", "labels", "--paper", "")]
    [InlineData("parts", "buildlog", "csv", "pa")]
    [InlineData("", "buildlog", "vehicles", "--database", "")]
    public void Bash_offers(string offered, params string[] typed)
        => Assert.Equal(offered, InScript("bash", file => Run("bash", ["-c", AskBash, "bash", file, .. typed])).Output);

    [Theory]
    [InlineData("zsh", "-n")]
    [InlineData("fish", "--no-execute")]
    public void Another_shell_can_read_its_script(string shell, string onlyRead)
        => Assert.Equal((0, ""), InScript(shell, file => Run(shell, [onlyRead, file])));

    [Theory]
    [MemberData(nameof(Shells))]
    public void A_script_knows_every_command_and_its_options(string shell)
    {
        var script = Said.By("completion", shell).Output;
        foreach (var command in ProgramAsRead.Entry().All.Skip(1))
        {
            Assert.Contains(command.LastWord, script, StringComparison.Ordinal);
            Assert.All(command.Options, option => Assert.Contains(shell == "fish" ? $"-l {option.Name[2..]}" : option.Name, script, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void An_unknown_shell_is_refused()
    {
        var said = Said.By("completion", "ksh");
        Assert.Equal(2, said.ExitCode);
        Assert.Contains("bash, zsh, fish, powershell", said.Errors, StringComparison.Ordinal);
    }

    private static T InScript<T>(string shell, Func<string, T> act)
    {
        var file = Path.Combine(Path.GetTempPath(), $"buildlog-{Guid.NewGuid():N}.{shell}");
        File.WriteAllText(file, Said.By("completion", shell).Output);
        try
        {
            return act(file);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static (int ExitCode, string Output) Run(string program, string[] arguments)
    {
        var found = Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, program)));
        Assert.SkipUnless(found, $"There is no {program} on this machine.");
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var output = process.StandardOutput.ReadToEnd() + process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output.Trim());
    }
}
