using Terminal.Gui.Input;

namespace BuildLog.Tui.Forms;

/// <summary>Yes or no, both in sight: y and n say it, Left and Right go to it, Space changes it; no other key does.</summary>
internal sealed class YesNoBox(string title, string value) : ChoiceBox(title, [new(YesNoEntry.Yes, Spoken("yes")), new(YesNoEntry.No, Spoken("no"))], value)
{
    protected override bool OnKeyDown(Key key)
    {
        if (key.NoShift == (Key)Spoken("yes")[0] || key == Key.CursorLeft) return Say(YesNoEntry.Yes);
        if (key.NoShift == (Key)Spoken("no")[0] || key == Key.CursorRight) return Say(YesNoEntry.No);
        return base.OnKeyDown(key);
    }

    private bool Say(string answer)
    {
        Take(answer);
        return true;
    }
}
