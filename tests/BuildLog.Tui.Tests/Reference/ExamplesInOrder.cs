using BuildLog.Tui.Reference;
using BuildLog.Tui.Tests.Commands;
using BuildLog.Tui.Tests.Docs;

namespace BuildLog.Tui.Tests.Reference;

/// <summary>The examples of all commands, one after the other in one folder, as a reader would: what is exported is imported, what is backed up is restored.</summary>
internal static class ExamplesInOrder
{
    public static void Run(Action<Example> look, params string[] more)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-examples-").FullName;
        try
        {
            foreach (var command in ProgramAsRead.Entry().All.Skip(1).Where(command => command.Commands.Count == 0))
            {
                foreach (var line in CommandExamples.Of(command.Name)) look(new(command.Name, line, TypedLine.Run(line, folder, more)));
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}

/// <summary>A line that was run, and what came of it.</summary>
internal sealed record Example(string Command, string Line, Said Said);
