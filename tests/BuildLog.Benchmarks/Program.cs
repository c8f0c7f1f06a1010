using System.Globalization;
using BenchmarkDotNet.Running;
using BuildLog.Benchmarks.Record;
using BuildLog.Benchmarks.Search;
using BuildLog.Benchmarks.Sheet;
using BuildLog.Benchmarks.Workbench;

// The record is measured on files of its own, killed writers and the workbench are other programs: all without the runner.
switch (args)
{
    case ["record", .. [_, ..] sizes]: return RecordRun.Of([.. sizes.Select(size => int.Parse(size, CultureInfo.InvariantCulture))]);
    case ["find", var notes]: return FindRun.Of(int.Parse(notes, CultureInfo.InvariantCulture));
    case ["list", var program]: return FirstList.Of(program);
    case ["kills", var rounds]: return KilledWriters.Of(int.Parse(rounds, CultureInfo.InvariantCulture));
    case [KilledWriters.ThroughTheShop or KilledWriters.ByHand, var path]: return KilledWriters.Write(args[0], path);
    case ["search"]: return SearchRun.Of();
    case ["sheet"]: return SheetRun.Print();
    case ["workbench", var program]:
        WorkbenchSpeed.Measure(program);
        return 0;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        return 0;
}
