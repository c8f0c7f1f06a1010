using System.CommandLine;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Commands;

/// <summary>The table of contents: every command there is.</summary>
public static class CommandLine
{
    public static int Run(string[] arguments, TextWriter output, TextWriter errors)
    {
        var common = new CommonOptions();
        var edge = new Edge(common, output, errors);
        var root = new RootCommand("BuildLog: bench record and gearing engine of a one-person restomod shop.");
        common.AddTo(root);
        root.Subcommands.Add(new AxleCommand(edge));
        root.Subcommands.Add(new RollOutCommand(edge));
        root.Subcommands.Add(new TyreCommand(edge));
        root.Subcommands.Add(new SpeedCommand(edge));

        var parse = root.Parse(arguments);
        return parse.Errors.Count == 0
            ? parse.Invoke(new InvocationConfiguration { Output = output, Error = errors, EnableDefaultExceptionHandler = false })
            : edge.Refuse(new Refusal("usage", parse.Errors[0].Message, $"buildlog {parse.CommandResult.Command.Name} --help"), null, parse.GetValue(common.Json), ExitCodes.WrongInput);
    }
}
