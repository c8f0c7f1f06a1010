namespace BuildLog.Tui.Tests.Samples;

/// <summary>A clock that stands still.</summary>
internal sealed class ADay(int year, int month, int day) : TimeProvider
{
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => new(year, month, day, 10, 30, 0, TimeSpan.Zero);
}
