using BuildLog.Gearing.Options;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Options;

/// <summary>What each part alone may be, in words.</summary>
internal static class WindowWords
{
    public static string Heading => Spoken("Each part alone, the others as they are:");

    /// <summary><c>axle ratio 2.85 to 3.21, for certain 2.88 to 3.18</c>, or which two wishes exclude each other.</summary>
    public static string Of(WindowOfPart window, UnitSystem units)
    {
        var shown = window with { Unit = units.Shown(window.Unit) };
        var sure = window.Window.IsEmpty ? ""
            : window.SureInWords(shown.Unit) is { } inner ? Spoken($", for certain {inner}")
            : window.OpenedBy is { } step ? Spoken($"; none for certain until you {step}")
            : "";
        return $"{shown.InWords()}{sure}{window.InPractice(shown.Unit)}{(window.IsMade ? "" : Spoken("; none is made so"))}";
    }
}
