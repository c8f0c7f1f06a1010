using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>The verdict of a finding as the workbench shows it, from best to worst.</summary>
public enum ShownVerdict
{
    Fits,
    Watch,
    Open,
    Clash,
}

/// <summary>The word, the sign and the tone of each verdict. The word always stands; sign and colour repeat it.</summary>
public static class VerdictWords
{
    public static string Word(this ShownVerdict verdict) => verdict switch
    {
        ShownVerdict.Fits => "fits",
        ShownVerdict.Watch => "watch",
        ShownVerdict.Open => "open",
        ShownVerdict.Clash => "clash",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
    };

    public static string Sign(this ShownVerdict verdict) => verdict switch
    {
        ShownVerdict.Fits => "=",
        ShownVerdict.Watch => "~",
        ShownVerdict.Open => "?",
        ShownVerdict.Clash => "×",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
    };

    public static Tone Tone(this ShownVerdict verdict) => verdict switch
    {
        ShownVerdict.Fits => Shell.Tone.Fits,
        ShownVerdict.Watch => Shell.Tone.Watch,
        ShownVerdict.Open => Shell.Tone.Open,
        ShownVerdict.Clash => Shell.Tone.Clash,
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
    };
}
