namespace BuildLog.Tui.Reference;

/// <summary>Completion for bash: <c>source &lt;(buildlog completion bash)</c>.</summary>
internal static class BashCompletion
{
    public static IReadOnlyList<string> Write(CommandEntry program) =>
    [
        "# Completion of buildlog for bash. Written by: buildlog completion bash",
        "_buildlog() {",
        "    local current=${COMP_WORDS[COMP_CWORD]} previous=${COMP_WORDS[COMP_CWORD-1]} command= word words=",
        "    for word in \"${COMP_WORDS[@]:1:COMP_CWORD-1}\"; do",
        "        case \"$command $word\" in",
        .. program.All.Skip(1).Select(command => $"            '{command.Above} {command.LastWord}') command='{command.Name}' ;;"),
        "        esac",
        "    done",
        "    case \"$command:$previous\" in",
        .. program.All.SelectMany(command => command.Options.Where(option => option.Takes.Length > 0).Select(option => After(command, option))),
        "    esac",
        "    case \"$command\" in",
        .. program.All.Select(command => $"        '{command.Name}') words='{string.Join(' ', command.WordsAfter(program))}' ;;"),
        "    esac",
        "    COMPREPLY=($(compgen -W \"$words\" -- \"$current\"))",
        "}",
        "complete -o default -F _buildlog buildlog",
    ];

    // Nothing of ours leaves it to bash, which offers files.
    private static string After(CommandEntry command, OptionEntry option)
    {
        var where = command.Name.Length == 0 ? $"*':{option.Name}'" : $"'{command.Name}:{option.Name}'";
        return $"        {where}) COMPREPLY=($(compgen -W '{string.Join(' ', Choices.Of(option.Takes))}' -- \"$current\")); return ;;";
    }
}
