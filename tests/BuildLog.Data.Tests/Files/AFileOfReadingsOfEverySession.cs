using BuildLog.Data.Components;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>ReadingsOfEverySession.sql is the demo shop as the seventh schema held it: a part was the shop's, a customer's, lent or owed.</summary>
public sealed class AFileOfReadingsOfEverySession : IDisposable
{
    private readonly EarlierShop earlier = new("ReadingsOfEverySession.sql");

    public void Dispose() => earlier.Dispose();

    // The last change in the dump.
    [Fact]
    public void Takes_back_what_was_done_before_it_was_brought_up_to_date()
    {
        Assert.Equal("fitted Stavely 205/75R15 on steel to Pellow", earlier.Shop.Undo());
        Assert.Equal("fitted Stavely 205/75R15 on steel to Pellow", earlier.Shop.Redo());
        earlier.AssertSoundButForItsFiles();
    }

    [Fact]
    public void Says_of_a_part_that_it_is_gone()
    {
        var loose = earlier.Shop.Parts().First(place => place.Fitment is null).Component;

        earlier.Shop.Change(loose, part => part.Ownership = Ownership.Gone);

        Assert.Equal(Ownership.Gone, earlier.Shop.Parts().Single(place => place.Component.Id == loose.Id).Component.Ownership);
        earlier.AssertSoundButForItsFiles();
    }

    // Counted in the dump.
    [Fact]
    public void Loses_no_row_and_keeps_its_rules()
    {
        earlier.AssertIsOfToday(
            ("Vehicles", 6), ("Components", 35), ("Fitments", 36), ("Sessions", 11), ("Readings", 26), ("Specs", 20), ("Attachments", 3), ("OutsideWorks", 1), ("ChangeSets", 125), ("Changes", 279), ("Findables", 125));
        earlier.AssertSoundButForItsFiles();
    }
}
