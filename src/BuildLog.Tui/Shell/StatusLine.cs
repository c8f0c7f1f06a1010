using Terminal.Gui.ViewBase;

namespace BuildLog.Tui.Shell;

/// <summary>Says what happened last, and keeps what it said.</summary>
internal sealed class StatusLine : View
{
    private const int Kept = 200;
    private readonly List<string> messages = [];
    private string meanwhile = "";
    private string passing = "";
    private bool isOver;

    public StatusLine()
    {
        Height = 1;
        Width = Dim.Fill();
        Y = Pos.AnchorEnd(2);
    }

    /// <summary>Everything said since the start, newest first.</summary>
    public IReadOnlyList<string> Messages => [.. messages.AsEnumerable().Reverse()];

    public void Say(string message)
    {
        isOver = false;
        messages.Add(message);
        if (messages.Count > Kept) messages.RemoveAt(0);
        SetNeedsDraw();
    }

    /// <summary>What was said last is about what is no longer in view; it stays in the list. The first message of all greets, and stays.</summary>
    public void SayNoMore()
    {
        isOver = messages.Count > 1;
        SetNeedsDraw();
    }

    /// <summary>Shows how far something is, in place of the latest message and without keeping it; empty when it is over.</summary>
    public void SayMeanwhile(string text)
    {
        if (meanwhile == text) return;
        meanwhile = text;
        SetNeedsDraw();
    }

    /// <summary>Answers a key before all else and without keeping it; empty with the next one.</summary>
    public void SayUntilNextKey(string text)
    {
        if (passing == text) return;
        passing = text;
        SetNeedsDraw();
    }

    protected override bool OnClearingViewport() => true; // every cell is written below

    protected override bool OnDrawingContent(DrawContext? context)
    {
        var latest = messages.Count > 0 && !isOver ? messages[^1] : "";
        var says = " " + (passing.Length > 0 ? passing : meanwhile.Length > 0 ? meanwhile : latest);
        var isCut = passing.Length == 0 && meanwhile.Length == 0 && TextFit.Width(says) > Viewport.Width - 1;
        var earlier = isCut ? Spoken(" m all of it") : messages.Count > 1 ? Spoken(" m earlier") : "";
        var width = Math.Max(0, Viewport.Width - earlier.Length);
        this.Paint(0, 0, width, TextLine.Of(says, Tone.Strong));
        this.Paint(width, 0, earlier, Tone.Quiet);
        return true;
    }
}
