using BuildLog.Data.Files;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Tests.Shell;

public sealed class ReadAheadTests
{
    [Fact]
    public void Items_come_in_their_order_however_late_they_are_taken()
    {
        using var mayGoOn = new ManualResetEventSlim();
        IEnumerable<int> Slowly()
        {
            yield return 1;
            mayGoOn.Wait(TestContext.Current.CancellationToken);
            yield return 2;
        }

        using var taken = new ReadAhead<int>(Slowly).Items().GetEnumerator();
        Assert.True(taken.MoveNext());
        Assert.Equal(1, taken.Current);
        mayGoOn.Set();
        Assert.True(taken.MoveNext());
        Assert.Equal(2, taken.Current);
        Assert.False(taken.MoveNext());
    }

    [Fact]
    public void What_stopped_the_reading_is_thrown_behind_what_was_read()
    {
        static IEnumerable<int> Failing()
        {
            yield return 1;
            throw new RecordException(Fault.Folder, "The stick was pulled out.");
        }

        var taken = new List<int>();
        var trouble = Assert.Throws<RecordException>(() => taken.AddRange(new ReadAhead<int>(Failing).Items()));
        Assert.Equal("The stick was pulled out.", trouble.Message);
    }
}
