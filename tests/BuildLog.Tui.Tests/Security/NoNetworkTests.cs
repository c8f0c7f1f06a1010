using System.ComponentModel;
using System.Diagnostics;
using BuildLog.Tui.Commands;

namespace BuildLog.Tui.Tests.Security;

/// <summary>Nothing leaves the machine: the system's own account of every socket the program asks for.</summary>
public sealed class NoNetworkTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("buildlog-security-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // The runtime opens one socket of its own for debuggers, of the kind that no network reaches (AF_UNIX).
    [Theory]
    [InlineData("findings", "Brindle", "--demo")]
    [InlineData("sheet", "Tansy", "--demo", "--preview")]
    [InlineData("options", "Brindle", "--demo")]
    [InlineData("tyre", "205/65R15")]
    public void No_command_asks_for_a_socket_that_a_network_reaches(params string[] arguments)
    {
        var account = Path.Combine(folder, "sockets.txt");
        var code = Run("strace", ["-f", "-qq", "-e", "trace=socket,connect,sendto", "-o", account, "dotnet", "exec", typeof(CommandLine).Assembly.Location, .. arguments]);
        Assert.SkipWhen(code is null, "There is no strace here, or it may not look.");

        Assert.Equal(0, code);
        var asked = File.ReadAllLines(account).Where(line => line.Contains("AF_", StringComparison.Ordinal)).ToList();
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
