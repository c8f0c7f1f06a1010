using BuildLog.Data.Components;
using Xunit;

namespace BuildLog.Data.Tests.Files;

/// <summary>ReadingsOfEverySession.sql is the demo shop as the seventh schema held it: a part was the shop's, a customer's, lent or owed.</summary>
public sealed class AFileOfReadingsOfEverySession : IDisposable
{
    private readonly EarlierShop earlier = new("ReadingsOfEverySession.sql");

    public void Dispose() => earlier.Dispose();

    [Fact]
    public void Says_of_a_part_that_it_is_gone()
    {
        var loose = earlier.Shop.Parts().First(place => place.Fitment is null).Component;

        earlier.Shop.Change(loose, part => part.Ownership = Ownership.Gone);

        Assert.Equal(Ownership.Gone, earlier.Shop.Parts().Single(place => place.Component.Id == loose.Id).Component.Ownership);
        earlier.AssertSoundButForItsFiles();
    }
}
