using BuildLog.Gearing.Checks;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The sign and the tone of each verdict. The word always stands; sign and colour repeat it.</summary>
public static class VerdictTones
{
    public static string Sign(this Verdict verdict) => verdict switch
    {
        Verdict.Fits => "=",
        Verdict.Watch => "~",
        Verdict.Open => "?",
        Verdict.Clash => "×",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
    };

    public static Tone Tone(this Verdict verdict) => verdict switch
    {
        Verdict.Fits => Shell.Tone.Fits,
        Verdict.Watch => Shell.Tone.Watch,
        Verdict.Open => Shell.Tone.Open,
        Verdict.Clash => Shell.Tone.Clash,
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
    };
}
