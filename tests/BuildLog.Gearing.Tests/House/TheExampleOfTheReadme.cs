using System.Runtime.CompilerServices;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.House;

/// <summary>The ten lines of the package's README are these, with what they use, and say what stands below them there.</summary>
public sealed class TheExampleOfTheReadme
{
    [Fact]
    public void Compiles_and_says_what_it_shows()
    {
        Console.Said.Clear();
        #region example
        var count = TurnCount.Of([TurnReading.Read("10:23.7", Wheels.OneHeld).OrRefuse()], new CountPrecision());
        var tyre = RollOut.Of([RollReading.Read("5:11.19 m").OrRefuse()], new RollOutPrecision(Loaded: true));
        var goal = CruiseGoal.Read("100 km/h", "2500 rpm", "100 rpm").OrRefuse();

        var cruise = new SpeedRelation { RoadSpeed = goal.Speed.Value, Gear = 1, Axle = count.Ratio, Circumference = tyre.RollingCircumference }.Solved();
        var (verdict, because) = Verdicts.Judge(cruise.EngineSpeed!, goal.Wanted);

        Console.WriteLine($"Axle {Rounded.WithInterval(count.Ratio, Units.One)}, most likely {RatioCandidates.For(count.Ratio).Ranked[0].Name}.");
        Console.WriteLine($"{Rounded.WithInterval(cruise.EngineSpeed!, Units.RevolutionPerMinute)}: {verdict.InWords()} ({because.InWords()}).");
        #endregion

        var readme = File.ReadAllText(Path.Combine(House(), "src", "BuildLog.Gearing", "README.md"));
        Assert.Contains(Lines(), readme, StringComparison.Ordinal);
        Assert.Contains(string.Concat(Console.Said.Select(line => $"    {line}\n")), readme, StringComparison.Ordinal);
        Assert.Equal(2, Console.Said.Count);
    }

    private static string Lines([CallerFilePath] string here = "")
    {
        var file = File.ReadAllLines(here);
        var lines = file.SkipWhile(line => !line.TrimStart().StartsWith("#region", StringComparison.Ordinal)).Skip(1)
            .TakeWhile(line => !line.TrimStart().StartsWith("#endregion", StringComparison.Ordinal))
            .Select(line => line.Length == 0 ? line : line[8..]);
        return $"```csharp\n{string.Join('\n', file.Where(line => line.StartsWith("using BuildLog.", StringComparison.Ordinal)))}\n\n{string.Join('\n', lines)}\n```";
    }

    private static string House([CallerFilePath] string here = "") => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));

    private static class Console
    {
        public static List<string> Said { get; } = [];

        public static void WriteLine(string line) => Said.Add(line);
    }
}
