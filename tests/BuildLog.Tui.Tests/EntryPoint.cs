using BuildLog.Tui.Tests.Pty;

namespace BuildLog.Tui.Tests;

/// <summary>Runs the tests, or, when a test asks for it, the trial workbench in that test's terminal.</summary>
internal static class EntryPoint
{
    public static async Task<int> Main(string[] args)
    {
        if (args is [Trial.Word, var logFile]) return Trial.Run(logFile);
        return args.Contains("--server") || args.Contains("--internal-msbuild-node")
            ? await Xunit.MicrosoftTestingPlatform.TestPlatformTestFramework.RunAsync(args, SelfRegisteredExtensions.AddSelfRegisteredExtensions)
            : await Xunit.Runner.InProc.SystemConsole.ConsoleRunner.Run(args);
    }
}
