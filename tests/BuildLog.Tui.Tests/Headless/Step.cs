using Terminal.Gui.Input;
using Terminal.Gui.Testing;

namespace BuildLog.Tui.Tests.Headless;

/// <summary>One step of a run; false means not yet, try again at the next turn of the loop.</summary>
internal delegate bool Step(HeadlessScreen screen);

/// <summary>The steps runs are made of.</summary>
internal static class Steps
{
    public static Step Press(Key key) => screen =>
    {
        screen.App.InjectKey(key);
        return true;
    };

    public static Step Type(string text) => screen =>
    {
        foreach (var c in text) screen.App.InjectKey(new Key(c));
        return true;
    };

    /// <summary>Waits until a text is on the screen.</summary>
    public static Step See(string text) => screen => screen.Draw().Text.Contains(text, StringComparison.Ordinal);

    /// <summary>Waits until a text has gone from the screen.</summary>
    public static Step NoLongerSee(string text) => screen => !screen.Draw().Text.Contains(text, StringComparison.Ordinal);

    /// <summary>Goes down a list until the mark stands before a row.</summary>
    public static Step WalkTo(string row) => screen =>
    {
        if (screen.Draw().Text.Contains($"›{row} ", StringComparison.Ordinal)) return true;
        screen.App.InjectKey(Key.CursorDown);
        return false;
    };

    /// <summary>Types in place of what an entry begins with.</summary>
    public static Step Instead(string text) => screen =>
    {
        for (var k = 0; k < 60; k++) screen.App.InjectKey(Key.Backspace);
        return Type(text)(screen);
    };

    public static Step Check(Action<HeadlessScreen> check) => screen =>
    {
        check(screen.Draw());
        return true;
    };
}
