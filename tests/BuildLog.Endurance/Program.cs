using System.Diagnostics;
using System.Globalization;
using BuildLog.Endurance;
using BuildLog.Endurance.CutOff;
using BuildLog.Endurance.Disk;
using BuildLog.Endurance.Programs;

// The same executable is also each of the other programs that are killed, starved or have to wait.
switch (args)
{
    case [Worker.Word, var work, var practice]: return Worker.Run(work, practice);
    case [FullDisk.Word, var folder, var step]: return FullDisk.Fill(folder, int.Parse(step, CultureInfo.InvariantCulture));
    case [TwoPrograms.Word, var path, var name, var count]: return TwoPrograms.Write(path, name, int.Parse(count, CultureInfo.InvariantCulture));
}

var listed = Ordeals.All;
if (args is [not ("short" or "full"), ..]) listed = [.. listed.Where(each => each.Ordeal.Name.StartsWith(args[0], StringComparison.Ordinal))];
if (listed.Count == 0)
{
    Console.Error.WriteLine($"There is no ordeal '{args[0]}'. Say short, full, or how the name of one begins, with how often: {string.Join(", ", Ordeals.All.Select(each => each.Ordeal.Name))}.");
    return 2;
}

var (survived, failed) = (0, 0);
foreach (var (ordeal, isShort, isFull) in listed)
{
    var watch = Stopwatch.StartNew();
    var rounds = args is ["full", ..] ? isFull : args is [_, var asked] ? int.Parse(asked, CultureInfo.InvariantCulture) : isShort;
    var outcome = ordeal.Run(rounds);
    survived += outcome.Faults;
    failed += outcome.Troubles.Count;
    Console.WriteLine(outcome.Skipped is { } why
        ? $"{ordeal.Name}: skipped, as {why}"
        : string.Create(CultureInfo.InvariantCulture, $"{ordeal.Name}: {outcome.Faults:N0}, {outcome.Troubles.Count:N0} not survived ({outcome.Remark}; {watch.Elapsed.TotalSeconds:0} s)"));
    foreach (var trouble in outcome.Troubles.Take(20)) Console.WriteLine($"    {trouble}");
}

Records.Forget();
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{survived:N0} faults, {failed:N0} not survived"));
return failed == 0 ? 0 : 1;
