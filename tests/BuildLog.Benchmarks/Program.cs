using System.Globalization;
using BenchmarkDotNet.Running;
using BuildLog.Benchmarks.Record;

// The record is measured on files of its own, and killed writers are other programs: both without the runner.
switch (args)
{
    case ["record", var fitments]: return RecordRun.Of(int.Parse(fitments, CultureInfo.InvariantCulture));
    case ["kills", var rounds]: return KilledWriters.Of(int.Parse(rounds, CultureInfo.InvariantCulture));
    case [KilledWriters.Writing, var path]: return KilledWriters.Write(path);
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
        return 0;
}
