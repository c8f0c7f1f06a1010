using BuildLog.Tui.Commands;

return CommandLine.Run(args, Console.Out, () => Console.Error, TimeProvider.System, Environment.GetEnvironmentVariable);
