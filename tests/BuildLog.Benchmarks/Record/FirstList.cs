using System.Diagnostics;
using BuildLog.Benchmarks.Workbench;

namespace BuildLog.Benchmarks.Record;

/// <summary><c>-- list PROGRAM</c>: the published program from its start to the end of its list of vehicles, beside hello world published the same way.</summary>
internal static class FirstList
{
    private const int Fitments = 1000;
    private const int Rounds = 25;

    public static int Of(string program)
    {
        using var bulk = new BulkRecord(Fitments);
        var hello = HelloWorld.PublishIn(Path.Combine(Path.GetTempPath(), "buildlog-speed", "hello"));

        // The first start of a day also makes a backup; after it the file is like on any other.
        _ = Run(program, "vehicles", "--database", bulk.Path);
        var (lists, hellos) = (new List<double>(), new List<double>());
        for (var k = 0; k < Rounds; k++)
        {
            hellos.Add(Run(hello));
            lists.Add(Run(program, "vehicles", "--database", bulk.Path));
        }

        double list = Timing.Median(lists), least = Timing.Median(hellos);
        Console.WriteLine(FormattableString.Invariant($"hello world {least:0} ms   list of vehicles {list:0} ms   {list / least:0.0} times, medians of {Rounds} (least {hellos.Min():0} and {lists.Min():0} ms, {lists.Min() / hellos.Min():0.0} times)"));
        return 0;
    }

    private static double Run(string program, params string[] arguments)
    {
        var watch = Stopwatch.StartNew();
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        var said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 && said.Length > 0 ? watch.Elapsed.TotalMilliseconds : throw new InvalidOperationException($"{program} ended with {process.ExitCode}.");
    }
}
