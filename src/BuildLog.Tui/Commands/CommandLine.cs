using System.CommandLine;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Commands;

/// <summary>The table of contents: every command there is. Without a command the workbench opens.</summary>
public static class CommandLine
{
    private static readonly IReadOnlyList<Named> Commands =
    [
        new("axle", edge => new AxleCommand(edge)),
        new("gearbox", edge => new GearboxCommand(edge)),
        new("rollout", edge => new RollOutCommand(edge)),
        new("tyre", edge => new TyreCommand(edge)),
        new("speed", edge => new SpeedCommand(edge)),
        new("vehicles", edge => new VehiclesCommand(edge)),
        new("parts", edge => new PartsCommand(edge)),
        new("findings", edge => new FindingsCommand(edge)),
        new("options", edge => new OptionsCommand(edge)),
        new("what-if", edge => new WhatIfCommand(edge)),
        new("plans", edge => new PlansCommand(edge)),
        new("wanted", edge => new WantedCommand(edge)),
        new("card", edge => new CardCommand(edge)),
        new("history", edge => new HistoryCommand(edge)),
        new("sheet", edge => new SheetCommand(edge)),
        new("paper", edge => new PaperCommand(edge)),
        new("handover", edge => new HandoverCommand(edge)),
        new("csv", edge => new CsvCommand(edge)),
        new("export", edge => new ExportCommand(edge)),
        new("import", edge => new ImportCommand(edge)),
        new("backup", edge => new BackupCommand(edge)),
        new("restore", edge => new RestoreCommand(edge)),
        new("check-database", edge => new CheckDatabaseCommand(edge)),
        new("attach", edge => new AttachCommand(edge)),
        new("attachments", edge => new AttachmentsCommand(edge)),
        new("find", edge => new FindCommand(edge)),
        new("changes", edge => new ChangesCommand(edge)),
        new("undo", UndoCommand.Undo),
        new("redo", UndoCommand.Redo),
        new("completion", edge => new CompletionCommand(edge, () => Root(edge))),
        new("man", edge => new ManCommand(edge, () => Root(edge))),
    ];

    /// <param name="arguments">The words behind the program's name.</param>
    /// <param name="output">What was asked for.</param>
    /// <param name="errors">What is wrong.</param>
    /// <param name="clock">Says which day it is.</param>
    /// <param name="setting">A setting of the machine: which language it speaks.</param>
    /// <returns>The exit code: see <see cref="ExitCodes"/>.</returns>
    public static int Run(string[] arguments, TextWriter output, Func<TextWriter> errors, TimeProvider clock, Func<string, string?> setting)
    {
        var opensWorkbench = arguments.All(MayGoWithTheWorkbench);
        if (opensWorkbench) TerminalSession.Prepare();
        using var spoken = SpokenHere.Of(arguments, setting).Speak();
        var common = new CommonOptions();
        using var edge = new Edge(common, output, errors, clock);
        string[]? meant = opensWorkbench ? [] : arguments is [var first, ..] && IsCommand(first) ? [first] : null;

        var parse = Root(edge, meant).Parse(arguments);
        if (opensWorkbench && parse.Errors.Count > 0) parse = Root(edge).Parse(arguments);
        return parse.Errors.Count == 0
            ? parse.Invoke(new InvocationConfiguration { Output = output, EnableDefaultExceptionHandler = false })
            : edge.Refuse(Usage(parse), null, parse.GetValue(common.Json), ExitCodes.WrongInput);
    }

    /// <summary>Every command, ready to be run or read.</summary>
    /// <param name="edge">Where they meet the terminal.</param>
    /// <param name="meant">The only ones to make, where it is clear which are meant: the others, with all their options, take as long as a list. Null for all.</param>
    internal static RootCommand Root(Edge edge, IReadOnlyCollection<string>? meant = null)
    {
        var root = new RootCommand(Spoken("BuildLog: bench record and gearing engine of a one-person restomod shop. Without a command it opens the workbench."));
        edge.Common.AddTo(root);
        foreach (var command in Commands)
        {
            if (meant is null || meant.Contains(command.Name)) root.Subcommands.Add(command.Make(edge));
        }

        root.SetAction(parse => edge.OpenWorkbench(parse));
        HelpWithExamples.AddTo(root);
        return root;
    }

    // Of what needs no screen, the common: a wrong guess costs no more than a head start.
    private static bool MayGoWithTheWorkbench(string word) => !IsCommand(word) && word is not ("--help" or "-h" or "-?" or "--version") && !word.StartsWith('['); // a directive: completions ask for every command

    private static bool IsCommand(string word)
    {
        foreach (var command in Commands)
        {
            if (command.Name == word) return true;
        }

        return false;
    }

    private static Refusal Usage(ParseResult parse)
        => parse is { CommandResult.Command: RootCommand, UnmatchedTokens: [var word, ..] } && !word.StartsWith('-')
            ? new("usage", Spoken($"There is no command {Shown.Quoted(word)}."), "buildlog --help")
            : new("usage", parse.UnmatchedTokens.Count > 0 ? Spoken($"{LibrarySentences.Of(parse.Errors[0].Message)} Words that belong together stand in quotes.") : LibrarySentences.Of(parse.Errors[0].Message), $"buildlog {HelpWithExamples.NameOf(parse.CommandResult)} --help".Replace("  ", " ", StringComparison.Ordinal));

    /// <summary>A command that is not made before it is wanted.</summary>
    private sealed record Named(string Name, Func<Edge, Command> Make);
}
