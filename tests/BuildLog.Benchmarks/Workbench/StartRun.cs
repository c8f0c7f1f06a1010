using System.Diagnostics;
using System.Globalization;

namespace BuildLog.Benchmarks.Workbench;

/// <summary><c>-- start PROGRAM</c>: two commands and the workbench's first useful screen beside hello world of the same kind, and what is compiled on the way.</summary>
internal static class StartRun
{
    private const int Rounds = 15;

    public static int Of(string program)
    {
        var folder = Path.Combine(Path.GetTempPath(), "buildlog-speed");
        Directory.CreateDirectory(folder);
        var shop = Path.Combine(folder, "big-shop.db");
        BigShop.MakeAt(shop);
        var isOneFile = !File.Exists(program + ".dll");
        var hello = HelloWorld.PublishIn(Path.Combine(folder, isOneFile ? "hello-one-file" : "hello"), isOneFile);

        Started[] each =
        [
            new("hello world", 0, () => ToEnd(hello)),
            new("speed --json", 0, () => ToEnd(program, "speed", "--rpm", "3000", "--gear", "1", "--axle", "4.1", "--tyre", "205/65R15", "--json")),
            new("vehicles --json", 0, () => ToEnd(program, "vehicles", "--database", shop, "--json")),
            new("findings --json", 0, () => ToEnd(program, "findings", "--database", shop, BigShop.Name + " 00001", "--json")),
            new("hello on a terminal", 4, () => OnTerminal(HelloWorld.Says, hello)),
            new("first useful screen", 4, () => OnTerminal(WorkbenchSpeed.FirstVehicle, program, "--database", shop)),
        ];
        foreach (var start in each) start.Do(); // the first start of a day also makes a backup, and a new file is unpacked

        var times = each.Select(_ => new List<double>()).ToList();
        for (var k = 0; k < Rounds; k++)
        {
            for (var i = 0; i < each.Length; i++) times[i].Add(Timing.Milliseconds(each[i].Do));
        }

        Console.WriteLine(isOneFile ? "in one file with the runtime" : "with the runtime that is installed");
        foreach (var (start, i) in each.Select((start, i) => (start, i)))
        {
            var (median, least, beside) = (Timing.Median(times[i]), times[i].Min(), times[start.Beside]);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{start.Name,-20} {median,5:0} ms {median / Timing.Median(beside),5:0.0} ×   least {least,5:0} ms {least / beside.Min(),5:0.0} ×   {Compiled(folder, start.Do),5} methods compiled"));
        }

        return 0;
    }

    // The runtime writes a line for each; of a program that is stopped, the last few dozen are lost with its buffer.
    private static int Compiled(string folder, Action start)
    {
        var list = Path.Combine(folder, "compiled.txt");
        File.Delete(list);
        Environment.SetEnvironmentVariable("DOTNET_JitStdOutFile", list);
        Environment.SetEnvironmentVariable("DOTNET_JitDisasmSummary", "1");
        try
        {
            start();
        }
        finally
        {
            Environment.SetEnvironmentVariable("DOTNET_JitStdOutFile", null);
            Environment.SetEnvironmentVariable("DOTNET_JitDisasmSummary", null);
        }

        return File.ReadLines(list).Count();
    }

    private static void ToEnd(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (said.Length == 0) throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} said nothing and ended with {process.ExitCode}.");
    }

    private static void OnTerminal(string until, params string[] command)
    {
        using var program = new ProgramInTerminal(command);
        program.SecondsUntil(until);
    }

    private sealed record Started(string Name, int Beside, Action Do);
}
