using System.Globalization;

namespace BuildLog.Benchmarks.Workbench;

/// <summary>What the published workbench costs on a big shop, beside hello world measured in the same run.</summary>
internal static class WorkbenchSpeed
{
    public const string FirstVehicle = BigShop.Name + " 000"; // on the first page, with what its findings come to

    private const int Starts = 7;
    private const int Keys = 60;
    private const string AllVehicles = "100 vehicles, ";
    private const string PagesOfAVehicle = "1 Findings";
    private const string CursorOfAList = "›";
    private const string Down = "\e[B";
    private const string Enter = "\r";

    /// <param name="program">The published <c>buildlog</c>.</param>
    public static void Measure(string program)
    {
        var folder = Path.Combine(Path.GetTempPath(), "buildlog-speed");
        Directory.CreateDirectory(folder);
        var shop = Path.Combine(folder, "big-shop.db");
        BigShop.MakeAt(shop);
        var hello = HelloWorld.PublishIn(Path.Combine(folder, "hello"));

        var (helloStarts, firstScreens) = StartsByTurns(hello, program, shop);
        Say($"hello world          {helloStarts * 1000:0} ms");
        Say($"first useful screen  {firstScreens * 1000:0} ms, {firstScreens / helloStarts:0.0} × hello world (at most 10, aim 5)");

        using var workbench = new ProgramInTerminal(program, "--database", shop);
        Say($"all vehicles judged  {workbench.SecondsUntil(AllVehicles) * 1000:0} ms");
        Pause(2000);
        SayKeys("what now", workbench);
        workbench.MillisecondsFrom(Enter, PagesOfAVehicle);
        SayKeys("another vehicle", workbench);
        Pause(2000);
        Say($"idle                 {workbench.IdleShare(TimeSpan.FromSeconds(10)) * 100:0.0} % of a core (at most 6)");
        Say($"memory               {workbench.Memory():0} MiB (at most 120)");
    }

    // In turns, so that both meet the same machine.
    private static (double Hello, double Workbench) StartsByTurns(string hello, string program, string shop)
    {
        List<double> helloStarts = [], firstScreens = [];
        for (var k = 0; k < Starts; k++)
        {
            helloStarts.Add(Start(HelloWorld.Says, hello));
            firstScreens.Add(Start(FirstVehicle, program, "--database", shop));
        }

        return (Timing.Median(helloStarts), Timing.Median(firstScreens));
    }

    private static void SayKeys(string list, ProgramInTerminal workbench)
    {
        var redraws = Enumerable.Range(0, Keys).Select(k =>
        {
            Pause(200 + (k * 7 % 20)); // another phase of the program's own clock each time
            return workbench.MillisecondsFrom(Down, CursorOfAList);
        }).Order().ToList();
        Say($"key to redraw        median {redraws[Keys / 2]:0} ms, p95 {redraws[Keys * 95 / 100]:0} ms (at most 30), {list}");
    }

    private static double Start(string until, params string[] command)
    {
        using var program = new ProgramInTerminal(command);
        return program.SecondsUntil(until);
    }

    private static void Pause(int milliseconds)
    {
        using var never = new ManualResetEventSlim();
        never.Wait(milliseconds);
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
