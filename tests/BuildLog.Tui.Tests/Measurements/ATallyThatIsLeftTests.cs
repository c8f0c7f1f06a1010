using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Tests.Bench;

namespace BuildLog.Tui.Tests.Measurements;

public sealed class ATallyThatIsLeftTests
{
    private const string Draft = "Count turns: Harrow banjo, tally";
    private readonly Scratchpad pad = new();

    [Fact]
    public void Is_kept_and_says_so()
    {
        var view = Leave(tally =>
        {
            tally.Count(TallyEnd.Driving);
            tally.Count(TallyEnd.Driven);
        });

        Assert.Equal("Kept as far as it was counted, 1:1: the same key goes on with it.", Assert.Single(view.Said));
        Assert.NotNull(pad.Draft(Draft));
    }

    [Fact]
    public void With_every_turn_taken_back_is_gone()
    {
        var view = Leave(tally =>
        {
            tally.Count(TallyEnd.Driving);
            tally.Undo();
        });

        Assert.Empty(view.Said);
        Assert.Null(pad.Draft(Draft));
    }

    private AnsweringView Leave(Action<TallyModel> hands)
    {
        var view = new AnsweringView(Tui.Workbench.WorkbenchModel.EmptyShop).Pick("count").Type(("wheels", "OneHeld")).Counting(tally =>
        {
            hands(tally);
            return false;
        });
        Assert.False(new TallyActs(pad).CountAxle(view, "Harrow banjo", new(2025, 4, 1), _ => Assert.Fail("Nothing was finished.")));
        return view;
    }
}
