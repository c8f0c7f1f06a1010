using BuildLog.Data;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Jobs;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Jobs;

/// <summary>Jobs, deadlines, hours, work given out and costs as rows.</summary>
public static class JobsWords
{
    public static JobsModel Of(Shop shop, Vehicle vehicle, DateOnly today)
    {
        var jobs = shop.Jobs(vehicle);
        var hours = shop.Hours(vehicle).ToLookup(work => work.JobId);
        var away = shop.OutsideWork(vehicle).ToLookup(work => work.JobId);
        var costs = shop.Costs(vehicle);
        var ofJob = costs.ToLookup(cost => cost.JobId);
        var deadlines = shop.Deadlines().Where(deadline => deadline.VehicleId == vehicle.Id);
        JobRow[] other = ofJob[null].Any() ? [OtherCosts([.. ofJob[null]])] : [];
        return new(
            [
                .. deadlines.Select(deadline => Row(deadline, today)).Concat(jobs.Select(job => Row(job, [.. hours[job.Id]], [.. away[job.Id]], [.. ofJob[job.Id]], today)))
                    .OrderBy(row => row.IsOver).ThenBy(row => row.Due ?? DateOnly.MaxValue),
                .. other,
            ],
            Total(shop, vehicle, hours.Sum(job => job.Sum(work => work.Minutes)), costs));
    }

    private static JobRow Row(Job job, IReadOnlyList<WorkEntry> hours, IReadOnlyList<OutsideWork> away, IReadOnlyList<Cost> costs, DateOnly today) => new(
        JobRowKind.Job,
        job.Id,
        job.Title,
        job.IsBlocked ? Spoken("blocked") : job.State.InWords(),
        job.Due,
        hours.Count == 0 ? "" : WorkTime.InWords(hours.Sum(work => work.Minutes)),
        Sum(costs),
        [
            .. job.BlockedBy.Length > 0 ? [Spoken($"Waits for {job.BlockedBy}.")] : Array.Empty<string>(),
            .. job.WaitsFor is { } wanted ? [Spoken($"Waits for a part: {wanted.Title}.")] : Array.Empty<string>(),
            .. job.BeforeHandover ? [Spoken("Has to be done before the vehicle is handed over.")] : Array.Empty<string>(),
            .. job.Description.Split('\n', StringSplitOptions.RemoveEmptyEntries),
            .. away.Select(InWords),
            .. hours.Select(InWords),
            .. costs.Select(InWords),
        ])
    {
        IsLate = job.IsOpen && job.Due < today,
        IsOver = !job.IsOpen,
    };

    private static JobRow Row(Deadline deadline, DateOnly today) => new(
        JobRowKind.Deadline,
        deadline.Id,
        deadline.What,
        deadline.Done is not null ? Spoken("done") : Spoken("deadline"),
        deadline.Day,
        "",
        "",
        [deadline.DoneDay is { } done ? Spoken($"Done: {done.InWords}.") : Spoken($"To be done by {DayText.InWords(deadline.Day)}{(deadline.Day < today ? Spoken(", which is over") : "")}.")])
    {
        IsLate = deadline.Done is null && deadline.Day < today,
        IsOver = deadline.Done is not null,
    };

    private static JobRow OtherCosts(IReadOnlyList<Cost> costs)
        => new(JobRowKind.OtherCosts, 0, Spoken("costs of no one job"), "", null, "", Sum(costs), [.. costs.Select(InWords)]);

    private static string Total(Shop shop, Vehicle vehicle, int minutes, IReadOnlyList<Cost> costs)
    {
        string[] parts =
        [
            minutes > 0 ? Spoken($"{WorkTime.InWords(minutes)} worked") : "",
            costs.Count > 0 ? Spoken($"{Sum(costs)} spent") : "",
            shop.Budget(vehicle) is { } budget ? Spoken($"budget {budget}") : "",
        ];
        return parts.Any(part => part.Length > 0) ? string.Join(", ", parts.Where(part => part.Length > 0)) : Spoken("nothing worked or spent yet");
    }

    internal static string InWords(OutsideWork work)
    {
        var back = work.BackDay is { } returned ? Spoken($", back {DayText.InShort(returned)}") : StillAway(work, DayText.InShort);
        var paper = work.Certificate.Length > 0 ? $" ({work.Certificate})" : "";
        return Spoken($"{DayText.InShort(work.SentDay)}  sent to {work.Supplier.Name}: {work.What}{back}{paper}");
    }

    /// <summary>What is away, for those who do not know the jobs.</summary>
    public static string Sent(OutsideWork work)
        => Spoken($"{work.What}: sent to {work.Supplier.Name} {work.SentDay.InWords}{StillAway(work, DayText.InWords)}");

    private static string StillAway(OutsideWork work, Func<DateOnly, string> inWords)
        => Spoken($"{(work.Promised is { } day ? Spoken($", promised for {inWords(day)}") : "")}, still away");

    internal static string InWords(WorkEntry work) => Line(work.Day, WorkTime.InWords(work.Minutes), work.What, work.Who);

    internal static string InWords(Cost cost) => Line(cost.Day, cost.Amount?.ToString() ?? "", cost.What, cost.Supplier?.Name ?? "");

    private static string Line(LooseDay day, string amount, string what, string who)
        => $"{DayText.InShort(day)}  {amount}  {string.Join(", ", new[] { what, who }.Where(text => text.Length > 0))}".TrimEnd();

    private static string Sum(IReadOnlyList<Cost> costs) => string.Join(" + ", Money.Totals(costs.Select(cost => cost.Amount)));
}
