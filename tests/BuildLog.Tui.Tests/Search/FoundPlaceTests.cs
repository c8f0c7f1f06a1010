using BuildLog.Data.Search;
using BuildLog.Data.Sessions;
using BuildLog.Tui.Search;

namespace BuildLog.Tui.Tests.Search;

public sealed class FoundPlaceTests
{
    [Fact]
    public void Whatever_was_measured_is_on_the_page_of_measurements()
    {
        Session[] every =
        [
            .. typeof(Session).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Session)) && !type.IsAbstract).Select(type => (Session)Activator.CreateInstance(type, nonPublic: true)!),
        ];

        Assert.NotEmpty(every);
        Assert.All([.. every.Select(session => session.Method.Text), "road test"], kind => Assert.Equal("Measured", Of(kind).Page));
        Assert.Equal("Papers", Of("attachment").Page);
    }

    private static FoundPlace Of(string kind) => FoundPlace.Of(new Found(kind, "", null, null, null, "", Guid.Empty), null, null);
}
