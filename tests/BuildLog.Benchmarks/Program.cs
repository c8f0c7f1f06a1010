using BenchmarkDotNet.Running;
using BuildLog.Benchmarks.Workbench;

if (args is ["workbench", var program]) WorkbenchSpeed.Measure(program);
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
