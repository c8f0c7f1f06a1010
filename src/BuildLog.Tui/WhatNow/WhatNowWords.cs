using BuildLog.Data;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Hunting;
using BuildLog.Data.Jobs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.WhatNow;

/// <summary>Reads what the first page says of a vehicle.</summary>
public static class WhatNowWords
{
    /// <param name="deadlines">All deadlines of the shop, read once for all vehicles.</param>
    /// <param name="units">The units to show; null for metric ones.</param>
    public static WhatNowRow Of(Shop shop, Vehicle vehicle, IReadOnlyList<Deadline> deadlines, DateOnly today, UnitSystem? units = null)
    {
        var shown = (units ?? UnitSystem.Metric).Shown;
        var judged = JudgedVehicle.Read(shop, vehicle, today);
        var open = shop.Jobs(vehicle).Where(job => job.IsOpen).ToList();
        var away = shop.OutsideWork(vehicle).Where(work => work.Back is null).ToList();
        var due = deadlines.Where(deadline => deadline.VehicleId == vehicle.Id && deadline.Done is null).ToList();
        var hunted = shop.NeededByADay(vehicle);
        var hours = shop.Hours(vehicle);
        var next = Next(open, away);
        var asking = judged.Findings.Where(finding => finding.Verdict is Verdict.Clash or Verdict.Open).OrderBy(finding => finding.Verdict).ToList();
        var goal = judged.Goals.Cruise.FirstOrDefault();
        var cruise = goal is null ? null : CruiseCheck.EngineSpeed(judged.Fitted.Driveline, goal);
        return new(vehicle.Id, vehicle.Name, vehicle.State.InWords(), FindingsWords.Count(judged.Findings))
        {
            Cruise = cruise is null ? "" : Rounded.WithInterval(cruise, Units.RevolutionPerMinute),
            CruiseWanted = goal is null ? "" : goal.Wanted.InWords(Units.RevolutionPerMinute),
            Worst = asking.Select(finding => $"{finding.Verdict.InWords()}: {finding.Title}").FirstOrDefault() ?? "",
            Findings = [.. asking.Select(finding => new WhatNowFinding(finding.Verdict, $"{finding.Title}: {finding.SaysIn(shown)}", finding.CuresIn(shown).FirstOrDefault() ?? finding.SettledBy ?? ""))],
            NextJob = next?.Title ?? "",
            FurtherJobs = [.. open.Where(job => job != next && IsFree(job, away)).Select(job => job.Title)],
            Late = [.. Dated(open, away, due, hunted, today).Where(item => item.Day < today).OrderBy(item => item.Day).Select(item => item.Says)],
            WaitsFor =
            [
                .. Waits(open),
                .. away.Where(work => work.Promised is not { } day || day >= today).OrderBy(work => work.Promised ?? DateOnly.MaxValue).Select(work => Away(open, work)),
                .. Dated([], [], due, hunted, today).Where(item => item.Day >= today).OrderBy(item => item.Day).Select(item => item.Says),
            ],
            IdleDays = LastTouched(shop, vehicle, hours) is { } day ? Math.Max(0, today.DayNumber - day.DayNumber) : null,
            Spent = string.Join(" + ", shop.Spent(vehicle)),
            Hours = hours.Count == 0 ? "" : WorkTime.InWords(hours.Sum(work => work.Minutes)),
            IsAtRest = vehicle.State is VehicleState.HandedOver or VehicleState.LaidUp,
        };
    }

    // What is under way goes on; else the first that nothing blocks. What is sent out blocks its job as a missing part does.
    private static Job? Next(List<Job> open, List<OutsideWork> away)
    {
        var free = open.Where(job => IsFree(job, away)).ToList();
        return free.Find(job => job.State == JobState.UnderWay) ?? free.FirstOrDefault() ?? open.FirstOrDefault();
    }

    private static bool IsFree(Job job, List<OutsideWork> away) => !job.IsBlocked && !away.Exists(work => work.JobId == job.Id);

    private static IEnumerable<DatedWord> Dated(IReadOnlyList<Job> open, IEnumerable<OutsideWork> away, IEnumerable<Deadline> due, IEnumerable<WantedPart> hunted, DateOnly today) =>
    [
        .. open.Where(job => job.Due is not null).Select(job => new DatedWord(job.Due!.Value, Spoken($"job due {DayText.InShort(job.Due!.Value)}: {job.Title}"))),
        .. away.Where(work => work.Promised is not null).Select(work => new DatedWord(work.Promised!.Value, Away(open, work))),
        .. due.Select(deadline => new DatedWord(deadline.Day, Spoken($"by {DayText.InShort(deadline.Day)}: {deadline.What}"))),
        .. hunted.Select(wanted => new DatedWord(wanted.Deadline!.Value, wanted.Deadline < today
            ? Spoken($"hunted, overdue since {DayText.InShort(wanted.Deadline.Value)}: {wanted.Title}")
            : Spoken($"hunted, needed by {DayText.InShort(wanted.Deadline.Value)}: {wanted.Title}"))),
    ];

    private static IEnumerable<string> Waits(List<Job> open)
        => open.Where(job => job.IsBlocked).Select(job => Spoken($"{job.Title}: waits for {(job.BlockedBy.Length > 0 ? job.BlockedBy : Spoken($"a part, the {job.WaitsFor!.Title}"))}"));

    private static string Away(IReadOnlyList<Job> open, OutsideWork work) =>
        (open.FirstOrDefault(job => job.Id == work.JobId), work.Promised) switch
        {
            (null, null) => Spoken($"at {work.Supplier.Name} since {DayText.InShort(work.SentDay)}: {work.What}"),
            (null, { } day) => Spoken($"at {work.Supplier.Name}, promised {DayText.InShort(day)}: {work.What}"),
            ({ } job, null) => Spoken($"{job.Title}: waits for {work.What}, at {work.Supplier.Name} since {DayText.InShort(work.SentDay)}"),
            ({ } job, { } day) => Spoken($"{job.Title}: waits for {work.What}, at {work.Supplier.Name}, promised {DayText.InShort(day)}"),
        };

    private static DateOnly? LastTouched(Shop shop, Vehicle vehicle, IReadOnlyList<WorkEntry> hours)
    {
        DateOnly?[] days =
        [
            hours.Count > 0 ? hours[0].Date : null,
            shop.Costs(vehicle).Select(cost => (DateOnly?)cost.Date).FirstOrDefault(),
            shop.Sessions(vehicle).Select(session => (DateOnly?)session.Date).FirstOrDefault(),
            shop.Fitments(vehicle).Select(fitment => fitment.To ?? (DateOnly?)fitment.From).Max(),
        ];
        return days.Max();
    }

    private sealed record DatedWord(DateOnly Day, string Says);
}
