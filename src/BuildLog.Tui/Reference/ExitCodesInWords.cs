using BuildLog.Tui.Commands;

namespace BuildLog.Tui.Reference;

/// <summary>What a script may rely on, in words.</summary>
internal static class ExitCodesInWords
{
    public static string Sentence => Spoken($"Exit codes: {ExitCodes.Done} done, {ExitCodes.FailOnMet} done and --fail-on was met, {ExitCodes.WrongInput} wrong input, {ExitCodes.RecordFailed} the record or a file cannot be read or written. ")
        + Spoken("Wrong input and failures are one sentence on standard error, with --json one object {\"error\": {\"code\", \"message\", \"option\", \"example\"}}.");
}
