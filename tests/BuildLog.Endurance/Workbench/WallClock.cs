namespace BuildLog.Endurance.Workbench;

/// <summary>The time of day, which goes on when it is told to.</summary>
internal sealed class WallClock : TimeProvider
{
    private DateTimeOffset now = new(2026, 5, 20, 10, 30, 0, TimeSpan.Zero);

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => now;

    public void Advance(TimeSpan by) => now += by;
}
