using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>That a reader which is too slow would be seen.</summary>
public sealed class AnyTypedTests
{
    private static readonly Refusal Refused = new("no", "'slow' is none.", "1");

    // Slow once is a busy machine, slow three times a slow reader.
    [Theory]
    [InlineData(1, false)]
    [InlineData(3, true)]
    public void A_reader_that_is_slow_each_time_it_is_tried_is_seen(int slow, bool seen)
    {
        var (left, clock) = (slow, new SetClock());
        Refusal? Read(string text)
        {
            if (left-- > 0) clock.GoOn(TimeSpan.FromSeconds(2.1));
            return Refused;
        }

        var thrown = Record.Exception(() => AnyTyped.Watched("slow", readings => readings.InTime(Read, "slow"), clock));

        Assert.Equal(seen, thrown is not null);
        if (thrown is not null) Assert.Contains("takes more than 2 s for 'slow'", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_that_is_still_being_read_is_named()
    {
        var readings = new AnyTyped.Readings("hung", TimeProvider.System);
        _ = readings.InTime(
            text =>
            {
                Assert.Equal("hung", readings.Unanswered(TimeSpan.Zero));
                Assert.Null(readings.Unanswered(TimeSpan.FromMinutes(1)));
                return Refused;
            },
            "hung");

        Assert.Null(readings.Unanswered(TimeSpan.Zero));
    }

    private sealed class SetClock : TimeProvider
    {
        private long ticks;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => ticks;

        public void GoOn(TimeSpan time) => ticks += time.Ticks;
    }
}
