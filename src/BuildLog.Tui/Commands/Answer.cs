using System.Text.Json.Nodes;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Commands;

/// <summary>What a command has to say, for programs and for people.</summary>
/// <param name="ToJson">One object; numbers unrounded, units in the field names.</param>
/// <param name="Text">Lines for a person; numbers rounded to what their uncertainty supports.</param>
/// <param name="ExitCode">See <see cref="ExitCodes"/>.</param>
internal sealed record Answer(Func<JsonObject> ToJson, IReadOnlyList<string> Text, int ExitCode = ExitCodes.Done)
{
    public Answer(JsonObject json, IReadOnlyList<string> text, int exitCode = ExitCodes.Done) : this(() => json, text, exitCode) { }

    private const int Columns = 80;
    private const int SetIn = 5;

    public JsonObject Json => ToJson();

    /// <summary>Lines broken to the width of a terminal; what goes on is set in.</summary>
    public static IReadOnlyList<string> Wrapped(IEnumerable<string> lines) => [.. lines.SelectMany(line => TextFit.Wrap(line, Columns, SetIn))];
}

internal static class ExitCodes
{
    public const int Done = 0;
    public const int FailOnMet = 1;
    public const int WrongInput = 2;
    public const int RecordFailed = 3;
}
