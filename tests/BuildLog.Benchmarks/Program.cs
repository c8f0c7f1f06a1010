using System.Globalization;
using BenchmarkDotNet.Running;
using BuildLog.Benchmarks;
using BuildLog.Benchmarks.Coverage;
using BuildLog.Benchmarks.Record;
using BuildLog.Benchmarks.Search;
using BuildLog.Benchmarks.Sheet;
using BuildLog.Benchmarks.Workbench;

// The record is measured on files of its own, the workbench is another program: all without the runner.
switch (args)
{
    case ["record", var sizes]: return RecordRun.Of([.. sizes.Split(',').Select(size => int.Parse(size, CultureInfo.InvariantCulture))]);
    case ["moves", var sizes]: return MoveRun.Of([.. sizes.Split(',').Select(size => int.Parse(size, CultureInfo.InvariantCulture))]);
    case ["find", var notes]: return FindRun.Of(int.Parse(notes, CultureInfo.InvariantCulture));
    case ["list", var program]: return FirstList.Of(program);
    case ["coverage", var shops]: return CoverageRun.Of(int.Parse(shops, CultureInfo.InvariantCulture));
    case ["checks"]: return ChecksRun.Of();
    case ["engine"]: return EngineRun.Of();
    case ["search"]: return SearchRun.Of();
    case ["sheet"]: return SheetRun.Print();
    case ["start", var program]: return StartRun.Of(program);
    case ["workbench", var program]:
        WorkbenchSpeed.Measure(program);
        return 0;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        return 0;
}
