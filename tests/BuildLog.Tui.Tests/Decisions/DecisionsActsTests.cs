using BuildLog.Tui.Changes;
using BuildLog.Tui.Decisions;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Decisions;

public sealed class DecisionsActsTests : IDisposable
{
    private readonly SmallShop small = new();
    private readonly AnsweringView view = new(WorkbenchModel.EmptyShop);
    private readonly DecisionsActs acts;
    private readonly ChangesActs changes;

    public DecisionsActsTests() => (acts, changes) = (new(small.Shop, small.Clock), new(small.Shop, small.Clock));

    private long Bittern => small.Bittern.Id;

    public void Dispose() => small.Dispose();

    [Fact]
    public void Decisions_and_notes_stand_together_the_latest_first()
    {
        acts.Add(view.Pick("decision").Type(("what", "axle 3.08 instead of 3.55"), ("agreed", "Ann Ferrow"), ("why", "quiet at 110"), ("day", "3 May 2026")), Bittern);
        acts.Add(view.Pick("note").Type(("title", "pinion seal"), ("body", "weeps")), Bittern);
        acts.Edit(view.Type(("agreed", "Ann and Piet")), Bittern, acts.Read(Bittern).Rows[1]);

        Assert.Empty(view.Refused);
        Assert.Equal(["pinion seal", "axle 3.08 instead of 3.55"], acts.Read(Bittern).Rows.Select(row => row.Title));
        Assert.Equal("Ann and Piet", acts.Read(Bittern).Rows[1].AgreedBy);
    }

    [Fact]
    public void What_nobody_wrote_is_no_change()
    {
        acts.Add(view.Pick("decision").Type(("what", "axle 3.08"), ("agreed", "")), Bittern);

        Assert.All(changes.Read(Bittern).Rows[0].Fields, field => Assert.False(string.IsNullOrEmpty(field.After)));
    }

    [Fact]
    public void Changes_show_before_and_after_and_one_of_them_can_be_taken_back()
    {
        acts.Add(view.Pick("decision").Type(("what", "axle 3.08"), ("agreed", "Ann")), Bittern);
        acts.Edit(view.Type(("agreed", "Piet")), Bittern, acts.Read(Bittern).Rows[0]);

        var change = changes.Read(Bittern).Rows[0];
        Assert.Equal(new ChangedValue("agreed by", "Ann", "Piet"), Assert.Single(change.Fields));
        Assert.Equal("20 May 2026 10:30", change.When);

        changes.TakeBack(Bittern, change);
        Assert.Equal("Ann", acts.Read(Bittern).Rows[0].AgreedBy);
        Assert.True(changes.Read(Bittern).Rows.Single(row => row.Id == change.Id).IsUndone);
    }

    [Fact]
    public void What_was_struck_is_gone()
    {
        acts.Add(view.Pick("note").Type(("title", "pinion seal")), Bittern);
        acts.Strike(Bittern, acts.Read(Bittern).Rows[0]);
        Assert.Empty(acts.Read(Bittern).Rows);
    }
}
