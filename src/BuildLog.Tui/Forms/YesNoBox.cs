using Terminal.Gui.Input;

namespace BuildLog.Tui.Forms;

/// <summary>Yes or no, both in sight: y and n say it, Left and Right go to it, Space changes it; no other key does.</summary>
internal sealed class YesNoBox(string title, string value) : ChoiceBox(title, [new(Yes, Yes), new(No, No)], value)
{
    private const string Yes = "yes";
    private const string No = "no";

    protected override bool OnKeyDown(Key key)
    {
        if (key.NoShift == (Key)'y' || key == Key.CursorLeft) return Say(Yes);
        if (key.NoShift == (Key)'n' || key == Key.CursorRight) return Say(No);
        return base.OnKeyDown(key);
    }

    private bool Say(string answer)
    {
        Take(answer);
        return true;
    }
}
