using BuildLog.Data.Days;
using BuildLog.Data.Moving;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Jobs;

/// <summary>Hours worked on a job: a line of the time sheet.</summary>
public sealed class WorkEntry : Dated
{
    private const int MinutesOfADay = 24 * 60;

    public WorkEntry(Job job) => JobId = job.Id;

    internal WorkEntry() { }

    public long JobId { get; internal set; }

    /// <summary>As typed: <c>2.5</c>, <c>2:30</c>, <c>2 h 30 min</c>, <c>45 min</c>.</summary>
    public string Hours
    {
        get;
        set
        {
            field = value.Trim();
            Minutes = WorkTime.Read(field).Understood(out var minutes) ? minutes : 0;
        }
    } = "";

    /// <summary>The same in minutes, for sums.</summary>
    [Follows]
    public int Minutes { get; internal set; }

    public string Who { get; set; } = "";

    public string What { get; set; } = "";

    public override void Check()
    {
        var minutes = WorkTime.Read(Hours).OrRefuse();
        if (minutes is <= 0 or > MinutesOfADay) throw new RefusedException("hours", Spoken($"'{Hours}' is no time that one person works on a day."), "2:30");
        TextRules.CheckDay(Date, new Later("day of the work"));
        TextRules.CheckLine(Who, new Later("name of who worked"), "Agnes");
        TextRules.CheckText(What, new Later("work"));
    }
}
