using System.Globalization;
using BuildLog.Data;
using BuildLog.Data.Costs;
using BuildLog.Data.Deadlines;
using BuildLog.Data.Jobs;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Jobs;

/// <summary>What the keys of the page of jobs do. Each act returns what happened, or null if nothing did.</summary>
public sealed class JobsActs(Shop shop, TimeProvider clock)
{
    private const string NewJob = "job";
    private const string NewDeadline = "deadline";

    private DateOnly Today => clock.Today();

    public JobsModel Read(long vehicleId) => JobsWords.Of(shop, shop.FindVehicle(vehicleId), Today);

    public string? Add(IFormHost host, long vehicleId)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        return host.Choose(Spoken($"Add what to {vehicle.Name}?"), [new(NewJob, Spoken("a job")), new(NewDeadline, Spoken("a deadline"))], help: "Jobs") switch
        {
            NewJob => Filled(host, JobForm.For(new Job(vehicle), shop.Wanted(vehicle), Today, edit => shop.Add(new Job(vehicle), edit)), Spoken("The job is on the list.")),
            NewDeadline => Filled(host, DeadlineForm.For(new Deadline(vehicle), Today, edit => shop.Add(new Deadline(vehicle), edit)), Spoken("The deadline is noted.")),
            _ => null,
        };
    }

    public string? Edit(IFormHost host, long vehicleId, JobRow row) => row.Kind switch
    {
        JobRowKind.Job when Job(vehicleId, row) is var job => Filled(host, JobForm.For(job, shop.Wanted(shop.FindVehicle(vehicleId)), Today, edit => shop.Change(job, edit)), Spoken($"Changed: {row.Title}.")),
        JobRowKind.Deadline when Deadline(row) is var deadline => Filled(host, DeadlineForm.For(deadline, Today, edit => shop.Change(deadline, edit)), Spoken($"Changed: {row.Title}.")),
        _ => null,
    };

    /// <summary>Done, or to be done again.</summary>
    public string? Done(long vehicleId, JobRow row)
    {
        var isOver = row.IsOver;
        if (row.Kind == JobRowKind.Job) shop.Change(Job(vehicleId, row), job => job.State = isOver ? JobState.ToDo : JobState.Done);
        else if (row.Kind == JobRowKind.Deadline) shop.Change(Deadline(row), deadline => deadline.Done = isOver ? null : Today);
        else return null;
        return isOver ? Spoken($"To be done again: {row.Title}.") : Spoken($"Done: {row.Title}.");
    }

    public string? Hours(IWorkbenchView view, long vehicleId, JobRow row)
    {
        if (row.Kind != JobRowKind.Job) return Say(view, Spoken("Hours belong to a job: choose one, or add it with +."));
        var job = Job(vehicleId, row);
        return Filled(view, HoursForm.For(job, Today, edit => shop.Add(new WorkEntry(job), edit)), Spoken($"Hours noted: {job.Title}."));
    }

    /// <param name="row">Null for a cost of the vehicle as a whole.</param>
    public string? Spend(IFormHost host, long vehicleId, JobRow? row)
    {
        var vehicle = shop.FindVehicle(vehicleId);
        var job = row is { Kind: JobRowKind.Job } ? Job(vehicleId, row) : null;
        return Filled(host, CostForm.For(job?.Title ?? vehicle.Name, shop.Workshop().Bare, Today, edit => shop.Add(new Cost(vehicle, job), edit)), Spoken($"Noted: a cost of {job?.Title ?? vehicle.Name}."));
    }

    /// <summary>Gives work of this job out, or takes it back in.</summary>
    public string? GiveOut(IWorkbenchView view, long vehicleId, JobRow row)
    {
        if (row.Kind != JobRowKind.Job) return Say(view, Spoken("Work given out belongs to a job: choose one, or add it with +."));
        var job = Job(vehicleId, row);
        if (shop.OutsideWork(shop.FindVehicle(vehicleId)).FirstOrDefault(work => work.JobId == job.Id && work.Back is null) is { } away)
            return Filled(view, OutsideWorkForm.Back(away, Today, edit => shop.Change(away, edit)), Spoken($"Back: {away.What}."));

        var form = OutsideWorkForm.New(job, [.. shop.Suppliers().Select(supplier => supplier.Name)], Today, (name, edit) => shop.Add(new OutsideWork(job, shop.SupplierCalled(name)), edit));
        return Filled(view, form, Spoken($"Given out for {job.Title}."));
    }

    /// <summary>Strikes the job or deadline of the row; where something is noted under it, it is asked which of all that.</summary>
    public string? Strike(IWorkbenchView view, long vehicleId, JobRow row)
    {
        var entries = Entries(shop.FindVehicle(vehicleId), row);
        var at = entries.Count == 1 ? 0 : view.Choose(Spoken($"Strike what of {row.Title}?"), [.. entries.Select((entry, k) => new ChoiceOption(FormattableString.Invariant($"{k}"), entry.InWords))]) is { } chosen
            ? int.Parse(chosen, CultureInfo.InvariantCulture)
            : -1;
        if (at < 0) return null;

        var (struck, words) = entries[at];
        shop.Remove(struck, withEverything: true);
        return Spoken($"Struck: {words}. z brings it back.");
    }

    // What is noted under a row, the row itself first; costs of a job that is struck stay with the vehicle.
    private List<(Entered Entry, string InWords)> Entries(Vehicle vehicle, JobRow row)
    {
        if (row.Kind == JobRowKind.Deadline) return [(Deadline(row), row.Title)];

        var job = row.Kind == JobRowKind.Job ? Job(vehicle.Id, row) : null;
        var costs = shop.Costs(vehicle).Where(cost => cost.JobId == job?.Id).Select(cost => ((Entered)cost, JobsWords.InWords(cost)));
        if (job is null) return [.. costs];

        var with = shop.WhatGoesWith(job);
        return
        [
            (job, with.Length == 0 ? job.Title : Spoken($"{job.Title}, with {with}")),
            .. shop.OutsideWork(vehicle).Where(work => work.JobId == job.Id).Select(work => ((Entered)work, JobsWords.InWords(work))),
            .. shop.Hours(vehicle).Where(work => work.JobId == job.Id).Select(work => ((Entered)work, JobsWords.InWords(work))),
            .. costs,
        ];
    }

    private static string? Filled(IFormHost host, Form form, string said) => host.Fill(form) ? said : null;

    private static string? Say(IWorkbenchView view, string sentence)
    {
        view.Say(sentence);
        return null;
    }

    private Job Job(long vehicleId, JobRow row) => shop.Jobs(shop.FindVehicle(vehicleId)).First(job => job.Id == row.Id);

    private Deadline Deadline(JobRow row) => shop.Deadlines().First(deadline => deadline.Id == row.Id);
}
