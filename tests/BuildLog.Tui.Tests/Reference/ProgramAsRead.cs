using BuildLog.Tui.Commands;
using BuildLog.Tui.Reference;

namespace BuildLog.Tui.Tests.Reference;

/// <summary>The commands as reference, man page and completions read them.</summary>
internal static class ProgramAsRead
{
    public static CommandEntry Entry()
    {
        using var edge = new Edge(new CommonOptions(), TextWriter.Null, () => TextWriter.Null, TimeProvider.System);
        return CommandEntry.Of(CommandLine.Root(edge));
    }
}
