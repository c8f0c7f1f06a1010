using BuildLog.Tui.Jobs;
using BuildLog.Tui.Tests.Bench;
using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Jobs;

public sealed class JobsActsTests : IDisposable
{
    private readonly SmallShop small = new();
    private readonly AnsweringView view = new(WorkbenchModel.EmptyShop);
    private readonly JobsActs acts;

    public JobsActsTests() => acts = new(small.Shop, small.Clock);

    private long Bittern => small.Bittern.Id;

    public void Dispose() => small.Dispose();

    [Fact]
    public void A_job_is_added_worked_on_paid_for_given_out_taken_back_and_done()
    {
        Assert.NotNull(acts.Add(view.Pick("job").Type(("title", "Balance the propshaft"), ("due", "1 June 2026"), ("handover", "yes")), Bittern));
        var job = Assert.Single(acts.Read(Bittern).Rows);

        Assert.NotNull(acts.Hours(view.Type(("hours", "1 1/2 h")), Bittern, job));
        Assert.NotNull(acts.Spend(view.Type(("what", "strap kit"), ("amount", "19,90")), Bittern, job));
        Assert.NotNull(acts.GiveOut(view.Type(("what", "balance"), ("to", "Tolland machine shop"), ("promised", "25 May 2026")), Bittern, job));
        Assert.Contains("still away", Text(), StringComparison.Ordinal);
        Assert.NotNull(acts.GiveOut(view.Type(("certificate", "report 1182")), Bittern, job));
        Assert.NotNull(acts.Done(Bittern, job));

        Assert.Empty(view.Refused);
        job = Assert.Single(acts.Read(Bittern).Rows);
        Assert.Equal(("done", new DateOnly(2026, 6, 1), "1:30 h", "19.90 EUR"), (job.State, job.Due, job.Hours, job.Cost));
        Assert.Contains("back 20 May 2026 (report 1182)", Text(), StringComparison.Ordinal);
        Assert.Contains("before the vehicle is handed over", Text(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_late_and_what_belongs_to_no_job_is_told_apart()
    {
        small.WithWork();
        var model = acts.Read(Bittern);

        Assert.Equal(["Rebuild the brake cylinders"], model.Rows.Where(row => row.IsLate).Select(row => row.Title));
        Assert.Equal("120.00 EUR", model.Rows[^1].Cost);
        Assert.Equal("2:30 h worked, 165.50 EUR spent", model.Total);
    }

    [Fact]
    public void The_chosen_job_is_struck_with_its_hours_and_its_costs_stay_with_the_vehicle()
    {
        small.WithWork();
        var brakes = acts.Read(Bittern).Rows.First(row => row.Title == "Rebuild the brake cylinders");

        Assert.Equal("Struck: Rebuild the brake cylinders, with 1 work. z brings it back.", acts.Strike(view.Pick("0"), Bittern, brakes));
        var model = acts.Read(Bittern);
        Assert.DoesNotContain(model.Rows, row => row.Title == brakes.Title);
        Assert.Equal(("165.50 EUR", "165.50 EUR spent"), (model.Rows[^1].Cost, model.Total));

        small.Shop.Undo();
        Assert.Equal(brakes.Lines, acts.Read(Bittern).Rows.First(row => row.Title == brakes.Title).Lines);
    }

    [Fact]
    public void One_cost_is_struck_and_nothing_else()
    {
        small.WithWork();
        var before = acts.Read(Bittern);
        var brakes = before.Rows.First(row => row.Title == "Rebuild the brake cylinders");

        Assert.NotNull(acts.Strike(view.Pick("2"), Bittern, brakes));
        Assert.Equal("2:30 h worked, 120.00 EUR spent", acts.Read(Bittern).Total);
        Assert.Equal("Struck: 1 May 2026  120.00 EUR  transport. z brings it back.", acts.Strike(view, Bittern, before.Rows[^1]));
        Assert.Equal("2:30 h worked", acts.Read(Bittern).Total);
        Assert.Equal(before.Rows.Count - 1, acts.Read(Bittern).Rows.Count);
    }

    [Fact]
    public void A_deadline_is_struck_without_a_question()
    {
        small.WithWork();
        var deadline = acts.Read(Bittern).Rows.First(row => row.Kind == JobRowKind.Deadline);
        Assert.NotNull(acts.Strike(view, Bittern, deadline));
        Assert.DoesNotContain(acts.Read(Bittern).Rows, row => row.Kind == JobRowKind.Deadline);
    }

    [Fact]
    public void What_only_a_job_can_have_is_refused_in_the_status_line()
    {
        small.WithWork();
        var deadline = acts.Read(Bittern).Rows.First(row => row.Kind == JobRowKind.Deadline);

        Assert.Null(acts.Hours(view, Bittern, deadline));
        Assert.Null(acts.GiveOut(view, Bittern, deadline));
        Assert.Equal(["Hours belong to a job: choose one, or add it with +.", "Work given out belongs to a job: choose one, or add it with +."], view.Said);
        Assert.Empty(view.Told);
    }

    [Fact]
    public void Nonsense_is_refused_beside_its_field_and_changes_nothing()
    {
        small.WithWork();
        var job = acts.Read(Bittern).Rows.First(row => row.Kind == JobRowKind.Job);

        Assert.Null(acts.Hours(view.Type(("hours", "ages"), ("day", "30 February 2026")), Bittern, job));
        Assert.Equal(2, view.Refused.Count);
        Assert.Equal(150, small.Shop.Hours(small.Bittern).Sum(work => work.Minutes));
    }

    private string Text() => string.Join("\n", acts.Read(Bittern).Rows[0].Lines);
}
