using Terminal.Gui.Input;

namespace BuildLog.Tui.Forms;

/// <summary>Yes or no, both in sight: y and n say it, Left and Right go to it, Space changes it; no other key does.</summary>
internal sealed class YesNoBox(string title, string value) : ChoiceBox(title, [new(YesNoEntry.Yes, YesNoEntry.Yes), new(YesNoEntry.No, YesNoEntry.No)], value)
{
    protected override bool OnKeyDown(Key key)
    {
        if (key.NoShift == (Key)'y' || key == Key.CursorLeft) return Say(YesNoEntry.Yes);
        if (key.NoShift == (Key)'n' || key == Key.CursorRight) return Say(YesNoEntry.No);
        return base.OnKeyDown(key);
    }

    private bool Say(string answer)
    {
        Take(answer);
        return true;
    }
}
