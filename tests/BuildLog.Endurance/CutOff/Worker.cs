using System.Diagnostics;
using System.Globalization;

namespace BuildLog.Endurance.CutOff;

/// <summary>This executable as another program that is at some work until it is cut off.</summary>
/// <remarks>It does its work twice in a folder of its own first, so that it is quick when it is told where; the second time says how long it takes.</remarks>
internal sealed class Worker : IDisposable
{
    public const string Word = "work-until-cut-off";

    private const int Endless = int.MaxValue;
    private const string Done = "done";
    private readonly Process process;
    private readonly string practice;

    public Worker(string name)
    {
        practice = Directory.CreateTempSubdirectory("buildlog-practice-").FullName;
        foreach (var turn in Turns)
        {
            Work.Called(name).Lay(Directory.CreateDirectory(Path.Combine(practice, turn)).FullName);
        }

        process = Process.Start(new ProcessStartInfo("dotnet", ["exec", typeof(Worker).Assembly.Location, Word, name, practice])
        {
            RedirectStandardOutput = true,
            RedirectStandardInput = true,
        })!;
    }

    private static readonly string[] Turns = ["first", "second"];

    public int Id => process.Id;

    /// <summary>The other program.</summary>
    public static int Run(string name, string practice)
    {
        var work = Work.Called(name);
        var watch = Stopwatch.StartNew();
        foreach (var turn in Turns)
        {
            watch.Restart();
            work.Do(Path.Combine(practice, turn), 1, _ => { });
        }

        Say(string.Create(CultureInfo.InvariantCulture, $"{watch.Elapsed.TotalMilliseconds:0.0}"));
        if (Console.In.ReadLine() is not { } folder) return 0;
        work.Do(folder, Endless, Say);
        Say(Done);

        // Whoever stops or kills it may come a moment after the work is done, and has to find it.
        Console.In.ReadLine();
        return 0;
    }

    /// <summary>Lets it begin, and waits for a moment that chance takes.</summary>
    public List<string> GoTo(string folder, int most, Random moment)
    {
        if (process.StandardOutput.ReadLine() is not { } ready) throw new InvalidOperationException("The other program did not get ready.");
        var takes = double.Parse(ready, CultureInfo.InvariantCulture);
        process.StandardInput.WriteLine(folder);
        var said = Enumerable.Range(0, moment.Next(0, most + 1)).Select(_ => process.StandardOutput.ReadLine()).OfType<string>().ToList();
        Thread.Sleep(TimeSpan.FromMilliseconds(takes * moment.NextDouble()));
        return said;
    }

    /// <summary>As kill -9 does: it cannot do anything about it.</summary>
    /// <returns>What it had managed to say meanwhile; a last line that is cut off was never said.</returns>
    public List<string> Kill()
    {
        process.Kill();
        var rest = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return [.. rest[..(rest.LastIndexOf('\n') + 1)].Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line != Done)];
    }

    public void Dispose()
    {
        if (!process.HasExited) process.Kill();
        process.WaitForExit();
        process.Dispose();
        Directory.Delete(practice, recursive: true);
    }

    private static void Say(string line)
    {
        Console.Out.WriteLine(line);
        Console.Out.Flush();
    }
}
