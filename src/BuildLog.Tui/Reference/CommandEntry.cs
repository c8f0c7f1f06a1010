using System.CommandLine;
using System.CommandLine.Help;

namespace BuildLog.Tui.Reference;

/// <summary>A command as its reader sees it, read off the command itself: the reference, the man page and the completions are written from it.</summary>
/// <param name="Name">All its words, such as "paper order"; empty for the program itself.</param>
/// <param name="Description">One sentence.</param>
/// <param name="Values">What it is given by place.</param>
/// <param name="Options">What it is given by name; those that every command has stand with the program.</param>
/// <param name="Commands">The commands below it.</param>
internal sealed record CommandEntry(
    string Name,
    string Description,
    IReadOnlyList<ValueEntry> Values,
    IReadOnlyList<OptionEntry> Options,
    IReadOnlyList<CommandEntry> Commands)
{
    public static CommandEntry Of(RootCommand root) => Of(root, "");

    /// <summary>Itself, then all below it, depth first.</summary>
    public IEnumerable<CommandEntry> All => Commands.SelectMany(command => command.All).Prepend(this);

    /// <summary>Its last word, by which the one above knows it.</summary>
    public string LastWord => Name.Split(' ')[^1];

    /// <summary>The words of the commands above it.</summary>
    public string Above => Name[..^LastWord.Length].TrimEnd();

    /// <summary>What may be typed next after it.</summary>
    /// <param name="program">The program, whose options go with every command.</param>
    public IEnumerable<string> WordsAfter(CommandEntry program) =>
    [
        .. Commands.Select(below => below.LastWord),
        .. Values.SelectMany(value => Choices.Of(value.Takes)),
        .. Options.Select(option => option.Name),
        .. this == program ? [] : program.Options.Select(option => option.Name),
        "--help",
    ];

    /// <summary>What is typed: <c>buildlog paper order VEHICLE [options]</c>.</summary>
    public string Usage => string.Join(' ', Typed.Where(word => word.Length > 0));

    private IEnumerable<string> Typed => ["buildlog", Name, .. Values.Select(value => value.Name), Commands.Count > 0 ? "COMMAND" : "", "[options]"];

    private static CommandEntry Of(Command command, string name) => new(
        name,
        command.Description ?? "",
        [.. command.Arguments.Select(argument => new ValueEntry(argument.Name, argument.Description ?? "", argument.HelpName ?? ""))],
        [.. command.Options.Where(option => !option.Hidden && option is not (HelpOption or VersionOption)).Select(OptionEntry.Of)],
        [.. command.Subcommands.Where(below => !below.Hidden).Select(below => Of(below, $"{name} {below.Name}".Trim()))]);
}

/// <summary>Something that is given by its place.</summary>
/// <param name="Takes">What may stand there: choices parted by "|", or empty where anything may.</param>
internal sealed record ValueEntry(string Name, string Description, string Takes);

/// <summary>Something that is given by its name.</summary>
/// <param name="Takes">What follows it, such as "FILE" or "a4|letter"; empty for a switch.</param>
/// <param name="Repeats">Whether it may be given more than once.</param>
internal sealed record OptionEntry(string Name, string Description, string Takes, bool Repeats)
{
    public static OptionEntry Of(Option option)
        => new(option.Name, option.Description ?? "", option.HelpName ?? "", option.Arity.MaximumNumberOfValues > 1);
}
