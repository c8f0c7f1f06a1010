using System.Globalization;
using BuildLog.Data.Jobs;
using BuildLog.Data.Vehicles;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers.Accounts;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Papers;

/// <summary>The hours worked on a vehicle, the earliest first.</summary>
public static class TimeOfVehicle
{
    private const double MinutesOfAnHour = 60;

    private static readonly IReadOnlyList<string> Columns = ["date", "job", "what", "who", "hours"];

    /// <summary>For paper.</summary>
    public static WorkDone Work(VehicleFolder folder, AccountSpan span)
    {
        var lines = Lines(folder, span);
        return new(
            [.. lines.Select(line => new WorkRow(DayText.InShort(line.Work.Day), What(line.Job, line.Work), line.Work.Who, WorkTime.InWords(line.Work.Minutes)))],
            WorkTime.InWords(lines.Sum(line => line.Work.Minutes)));
    }

    public static Account Content(Vehicle vehicle, VehicleFolder folder, AccountSpan span, Paper paper, DateTimeOffset printed)
        => Account.Of(new TimeSheet { Id = vehicle.Uid, Created = printed, Work = Work(folder, span) }, vehicle, span, paper, Columns, Lines(folder, span).Select(Cells));

    private static List<(Job Job, WorkEntry Work)> Lines(VehicleFolder folder, AccountSpan span)
    {
        var jobs = folder.Jobs.ToDictionary(job => job.Id);
        return [.. folder.Hours.Where(work => span.Holds(work.Date)).Reverse().Select(work => (jobs[work.JobId], work))];
    }

    private static string What(Job job, WorkEntry work) => work.What.Length == 0 ? job.Title : $"{job.Title}: {work.What}";

    // Hours as a number, so that a spreadsheet can add them.
    private static IReadOnlyList<string> Cells((Job Job, WorkEntry Work) line) =>
    [
        DayText.Iso(line.Work.Day),
        line.Job.Title,
        line.Work.What,
        line.Work.Who,
        (line.Work.Minutes / MinutesOfAnHour).ToString("0.##", CultureInfo.InvariantCulture),
    ];
}
