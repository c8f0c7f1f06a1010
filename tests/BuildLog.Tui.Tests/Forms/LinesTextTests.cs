using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Tests.Forms;

public sealed class LinesTextTests
{
    [Fact]
    public void Enter_splits_a_line_and_backspace_at_its_start_joins_it_again()
    {
        var text = new LinesText("10:20");
        text.MoveTo(0, 2);

        text.Press(EditKey.NewLine);
        Assert.Equal("10\n:20", text.Text);

        text.Press(EditKey.Backspace);
        Assert.Equal("10:20", text.Text);
        Assert.Equal(2, text.Column);
    }

    [Fact]
    public void A_line_is_emptied_and_its_text_brought_back()
    {
        var text = new LinesText("10:20\n10:21");
        text.Press(EditKey.EmptyLine);
        text.Press(EditKey.EmptyLine);
        Assert.Equal("\n10:21", text.Text);

        text.Press(EditKey.BringBack);
        text.Insert("!");
        Assert.Equal("10:20!\n10:21", text.Text);
    }

    [Fact]
    public void Delete_at_the_end_of_a_line_brings_up_the_next()
    {
        var text = new LinesText("10\n:20");
        text.MoveTo(0, 2);
        text.Press(EditKey.Delete);
        Assert.Equal("10:20", text.Text);
    }

    [Fact]
    public void Up_in_the_first_line_and_down_in_the_last_are_left_to_the_form()
    {
        var text = new LinesText("one\ntwo");
        Assert.False(text.Press(EditKey.Up));
        Assert.True(text.Press(EditKey.Down));
        Assert.False(text.Press(EditKey.Down));
    }

    [Fact]
    public void The_cursor_stays_within_a_shorter_line()
    {
        var text = new LinesText("a long line\nx");
        text.Press(EditKey.End);
        text.Press(EditKey.Down);
        text.Insert("y");
        Assert.Equal("a long line\nxy", text.Text);
    }
}
