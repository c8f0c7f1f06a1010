using System.CommandLine;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Commands;

/// <summary>The table of contents: every command there is. Without a command the workbench opens.</summary>
public static class CommandLine
{
    /// <returns>The exit code: see <see cref="ExitCodes"/>.</returns>
    public static int Run(string[] arguments, TextWriter output, TextWriter errors, TimeProvider clock)
    {
        var common = new CommonOptions();
        using var edge = new Edge(common, output, errors, clock);
        var root = Root(edge);

        var parse = root.Parse(arguments);
        return parse.Errors.Count == 0
            ? parse.Invoke(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false })
            : edge.Refuse(Usage(parse), null, parse.GetValue(common.Json), ExitCodes.WrongInput);
    }

    /// <summary>Every command, ready to be run or read.</summary>
    internal static RootCommand Root(Edge edge)
    {
        var root = new RootCommand("BuildLog: bench record and gearing engine of a one-person restomod shop. Without a command it opens the workbench.");
        edge.Common.AddTo(root);
        root.Subcommands.Add(new AxleCommand(edge));
        root.Subcommands.Add(new GearboxCommand(edge));
        root.Subcommands.Add(new RollOutCommand(edge));
        root.Subcommands.Add(new TyreCommand(edge));
        root.Subcommands.Add(new SpeedCommand(edge));
        root.Subcommands.Add(new VehiclesCommand(edge));
        root.Subcommands.Add(new PartsCommand(edge));
        root.Subcommands.Add(new FindingsCommand(edge));
        root.Subcommands.Add(new OptionsCommand(edge));
        root.Subcommands.Add(new CardCommand(edge));
        root.Subcommands.Add(new HistoryCommand(edge));
        root.Subcommands.Add(new SheetCommand(edge));
        root.Subcommands.Add(new PaperCommand(edge));
        root.Subcommands.Add(new CsvCommand(edge));
        root.Subcommands.Add(new ExportCommand(edge));
        root.Subcommands.Add(new ImportCommand(edge));
        root.Subcommands.Add(new BackupCommand(edge));
        root.Subcommands.Add(new RestoreCommand(edge));
        root.Subcommands.Add(new CheckDatabaseCommand(edge));
        root.Subcommands.Add(new FindCommand(edge));
        root.Subcommands.Add(new ChangesCommand(edge));
        root.Subcommands.Add(UndoCommand.Undo(edge));
        root.Subcommands.Add(UndoCommand.Redo(edge));
        root.Subcommands.Add(new CompletionCommand(edge, root));
        root.Subcommands.Add(new ManCommand(edge, root));
        root.SetAction(parse => edge.OpenWorkbench(parse));
        HelpWithExamples.AddTo(root);
        return root;
    }

    private static Refusal Usage(ParseResult parse)
        => new("usage", parse.Errors[0].Message, $"buildlog {HelpWithExamples.NameOf(parse.CommandResult)} --help".Replace("  ", " ", StringComparison.Ordinal));
}
