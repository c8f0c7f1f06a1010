using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>How much of a list, text or form lies above what is in view, and how much below it.</summary>
internal readonly record struct OutOfView(int Above, int Below)
{
    public bool IsNothing => Above <= 0 && Below <= 0;

    public string AboveInWords => Above > 0 ? Spoken($"▲ {Above} above") : "";

    public string BelowInWords => Below > 0 ? Spoken($"▼ {Below} more") : "";

    /// <summary>Both in one line; empty where all is in view.</summary>
    public string InWords => string.Join("  ", new[] { AboveInWords, BelowInWords }.Where(words => words.Length > 0));

    /// <summary>A rule across a row of the view that says it.</summary>
    public void PaintRule(View view, int y)
    {
        var width = view.Viewport.Width;
        var rule = IsNothing ? "" : $"╌╌ {TextFit.Cut(InWords, width - 4)} ";
        view.Paint(0, y, rule + new string('╌', Math.Max(0, width - TextFit.Width(rule))), Tone.Quiet);
    }
}
