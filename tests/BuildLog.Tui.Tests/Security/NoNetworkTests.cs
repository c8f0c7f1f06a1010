using System.ComponentModel;
using System.Diagnostics;
using BuildLog.Tui.Commands;
using BuildLog.Tui.Tests.Commands;
using BuildLog.Tui.Tests.Pty;

namespace BuildLog.Tui.Tests.Security;

/// <summary>Nothing leaves the machine: the system's own account of every socket the program asks for.</summary>
public sealed class NoNetworkTests : IDisposable
{
    private const string NoStrace = "There is no strace here, or it may not look.";
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-security-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // The runtime opens one socket of its own for debuggers, of the kind that no network reaches (AF_UNIX).
    [Theory]
    [InlineData("findings", "Brindle", "--demo")]
    [InlineData("sheet", "Tansy", "--demo", "--preview")]
    [InlineData("options", "Brindle", "--demo")]
    [InlineData("tyre", "205/65R15")]
    [InlineData("export", "FOLDER/shop.zip", "--demo")]
    [InlineData("import", "FOLDER/demo.zip", "--database", "FOLDER/shop.db")]
    [InlineData("backup", "FOLDER/copy.db", "--demo")]
    [InlineData("handover", "Tansy", "--out", "FOLDER/handover.zip", "--demo")]
    public void No_command_asks_for_a_socket_that_a_network_reaches(params string[] arguments)
    {
        if (arguments[0] == "import") Assert.Equal(0, Said.By("export", Path.Combine(folder, "demo.zip"), "--demo").ExitCode);
        var code = Run("strace", [.. Watched([.. arguments.Select(word => word.Replace("FOLDER", folder, StringComparison.Ordinal))]).Skip(1)]);
        Assert.SkipWhen(code is null, NoStrace);

        Assert.Equal(0, code);
        AssertNoNetwork();
    }

    [Fact]
    public void Nor_does_the_workbench()
    {
        Assert.SkipWhen(Run("strace", ["-qq", "-o", Account, "true"]) != 0, NoStrace);
        using var program = new TerminalProgram(Watched(["--demo"]), 120, 36);
        program.Terminal.WaitFor("need you", seconds: 120);
        program.Terminal.Send("\r");
        var at = program.Terminal.WaitFor("Cruise engine speed", seconds: 120);
        program.Terminal.Send("2");
        program.Terminal.WaitFor("per 1000 rev/min", at, seconds: 120);
        program.Terminal.Send("q");

        Assert.Equal(0, program.WaitForExit());
        AssertNoNetwork();
    }

    private string Account => Path.Combine(folder, "sockets.txt");

    private string[] Watched(IReadOnlyList<string> arguments)
        => ["strace", "-f", "-qq", "-e", "trace=socket,connect,sendto", "-o", Account, "dotnet", "exec", typeof(CommandLine).Assembly.Location, .. arguments];

    private void AssertNoNetwork()
    {
        var asked = File.ReadAllLines(Account).Where(line => line.Contains("AF_", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(asked); // or it was not looked
        Assert.All(asked, line => Assert.Contains("AF_UNIX", line, StringComparison.Ordinal));
    }

    private static int? Run(string program, IEnumerable<string> arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = process.StandardError.ReadToEndAsync();
            process.StandardOutput.ReadToEnd();
            process.WaitForExit();
            return errors.Result.Contains("ptrace", StringComparison.Ordinal) ? null : process.ExitCode;
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}
