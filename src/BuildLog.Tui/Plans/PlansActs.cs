using BuildLog.Data;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Fitments;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Options;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Plans;

/// <summary>What the keys of the plans page do: to the bench, and to the record only where a plan is kept or decided.</summary>
internal sealed class PlansActs(Shop shop, TimeProvider clock, ForNow forNow) : IPlansActs
{
    private readonly WhatIf whatIf = forNow.WhatIf;

    private DateOnly Today => clock.Today();

    public PlansModel Read(long vehicleId)
    {
        var bench = Bench(vehicleId);
        var rejected = RejectedPlans.Of(shop, bench);
        return new([.. shop.Plans(bench.Vehicle).Select(plan => Row(bench, plan, rejected))], whatIf.IsOf(vehicleId) ? PlannedWords.Of(shop, whatIf.Changes, whatIf.Wishes) : "");
    }

    public string? Try(IWorkbenchView view, long vehicleId)
    {
        var bench = Bench(vehicleId);
        var isOf = whatIf.IsOf(vehicleId);
        if (!view.Fill(WhatIfForm.For(bench, shop, isOf ? whatIf.Changes : [], isOf ? whatIf.Wishes : TriedWishes.None, (changes, wishes) => whatIf.Put(vehicleId, changes, wishes), forNow.Units))) return null;

        return whatIf.IsOf(vehicleId) ? Spoken($"On the bench, not stored: {PlannedWords.Of(shop, whatIf.Changes, whatIf.Wishes)}. p keeps it as a plan, d drops it.") : Spoken("Nothing is tried: the bench shows what is fitted.");
    }

    public string? TryPlan(long vehicleId, PlanRow row)
    {
        var plan = Plan(vehicleId, row);
        whatIf.Put(vehicleId, plan.Changes, new(plan.Wishes));
        return Spoken($"On the bench, not stored: {row.Name}. d drops it.");
    }

    public string? Keep(IWorkbenchView view, long vehicleId)
    {
        if (!whatIf.IsOf(vehicleId))
        {
            view.Say(Spoken("Nothing is tried: press i first."));
            return null;
        }

        var vehicle = shop.FindVehicle(vehicleId);
        if (!view.Fill(PlanForm.For(Spoken("Keep it as a plan"), PlannedWords.Of(shop, whatIf.Changes, whatIf.Wishes), shop, vehicle, whatIf.Changes, Today, whatIf.Wishes.All))) return null;

        whatIf.Clear();
        return Spoken($"Kept as a plan: {shop.Plans(vehicle)[0].Name}. The bench shows what is fitted.");
    }

    public string? Drop(IWorkbenchView view, long vehicleId)
    {
        if (!whatIf.IsOf(vehicleId))
        {
            view.Say(Spoken("Nothing is tried."));
            return null;
        }

        whatIf.Clear();
        return Spoken("Dropped: the bench shows what is fitted.");
    }

    public string Strike(long vehicleId, PlanRow row)
    {
        shop.Remove(Plan(vehicleId, row));
        return Spoken($"Struck: {row.Name}. z brings it back.");
    }

    public string? Decide(IWorkbenchView view, long vehicleId, PlanRow row)
    {
        var plan = Plan(vehicleId, row);
        var failed = Failed(Bench(vehicleId), plan);
        var form = new Form
        {
            Title = Spoken($"What became of {plan.Name}"),
            HelpPage = "Plans",
            Entries =
            [
                new ChoiceEntry("state", Spoken("It is"), [.. Enum.GetValues<PlanState>().Select(state => new ChoiceOption(state.ToString(), state.InWords()))]) { Initial = plan.State.ToString() },
                new TextEntry("kept", Spoken("Why"))
                {
                    AnswersFor = ["reason"],
                    Initial = plan.State == PlanState.Kept ? plan.Reason : "",
                    Hint = Spoken("what speaks for it; may stay empty"),
                    ShownWhen = values => values["state"] == nameof(PlanState.Kept),
                },
                new TextEntry("reason", Spoken("Why"))
                {
                    Initial = plan.State == PlanState.Rejected ? plan.Reason : failed,
                    Hint = Spoken("the rule that failed"),
                    ShownWhen = values => values["state"] == nameof(PlanState.Rejected),
                    Check = values => values.IsEmpty("reason") ? Spoken("Which rule failed? It keeps others from buying it again.") : null,
                },
            ],
            Save = values => Checks.Try(() => Decided(plan, Enum.Parse<PlanState>(values["state"]), values["kept"] + values["reason"])),
        };
        if (!view.Fill(form)) return null;

        var decided = Plan(vehicleId, row);
        if (decided.Version != plan.Version) return string.Join(' ', ((string[])[Spoken($"Decided: {plan.Name} is {decided.State.InWords()}."), .. StillHunted(decided)]));

        view.Say(Spoken($"{plan.Name} stays {plan.State.InWords()}: nothing was changed."));
        return null;
    }

    // What a rejected plan was to be made of is hunted on, on the vehicle as it is, until somebody drops it.
    private IEnumerable<string> StillHunted(Plan plan)
    {
        if (plan.State != PlanState.Rejected) yield break;

        var hunts = shop.Wanted(shop.FindVehicle(plan.VehicleId)).Where(wanted => wanted.PlanId == plan.Id && wanted.State == WantedState.Hunting).Select(wanted => wanted.Title).ToList();
        if (hunts.Count > 0) yield return Spoken($"Still hunted, but judged on the vehicle as it is now: {string.Join("; ", hunts)}. d on the page Wanted drops it.");
    }

    /// <summary>Rejects a plan by its name; where no rule is named, for the one that failed.</summary>
    /// <exception cref="RefusedException">No plan, or more than one, is called so; or no rule failed and none is named.</exception>
    public PlanRow Reject(long vehicleId, string name, string because)
    {
        var (bench, plans) = (Bench(vehicleId), shop.Plans(shop.FindVehicle(vehicleId)));
        if (plans.Where(plan => plan.Name.StartsWith(name.Trim(), StringComparison.OrdinalIgnoreCase)).ToList() is not [var plan])
            throw new RefusedException(
                "plan",
                Spoken($"{Shown.Quoted(name)} is not one plan of {bench.Vehicle.Name}: {(plans.Count == 0 ? Spoken("there is none") : string.Join(", ", plans.Select(each => each.Name)))}."),
                plans.FirstOrDefault()?.Name ?? "");

        Decided(plan, PlanState.Rejected, because.Length > 0 ? because : Failed(bench, plan));
        return Read(vehicleId).Rows.First(row => row.Id == plan.Id);
    }

    public string? CarryOut(IWorkbenchView view, long vehicleId, PlanRow row)
    {
        var (bench, plan) = (Bench(vehicleId), Plan(vehicleId, row));
        if (plan.State == PlanState.Rejected || plan.Changes.Count == 0)
        {
            view.Say(plan.State == PlanState.Rejected ? Spoken($"{plan.Name} is rejected: {plan.Reason}. o decides anew.") : Spoken($"{plan.Name} changes no part: there is nothing to hunt or fit."));
            return null;
        }

        if (Parsed.From(() => Planned(bench, plan)) is var read && !read.Understood(out var planned))
        {
            view.Say(read.Refusal!.Sentence);
            return null;
        }

        if (plan.Changes.Count > 0 && RejectedPlans.Of(shop, bench).Says(planned.Driveline, plan.Changes) is { AreTheseParts: true } before)
        {
            view.Say(Spoken($"These parts were {before.Says}. o on that plan decides anew."));
            return null;
        }

        var said = Hunt(bench, planned, plan).Concat(Fit(view, bench, plan)).ToList();
        if (said.Count == 0) return null;

        if (plan.State == PlanState.Open) shop.Change(Plan(vehicleId, row), edited => edited.State = PlanState.Kept);
        return string.Join(' ', said.Concat(ToKnow(planned, plan)));
    }

    // Whoever spends money on a plan should know what it leaves wrong, and what it took for granted.
    private static IEnumerable<string> ToKnow(VehicleOnBench planned, Plan plan)
    {
        var clashes = planned.Findings.Where(finding => finding.Verdict == Verdict.Clash).Select(finding => finding.Title).Distinct().ToList();
        if (clashes.Count > 0) yield return Spoken($"As planned it still clashes: {string.Join("; ", clashes)}.");
        if (plan.Wishes.Count > 0) yield return Spoken($"The plan was judged with {new TriedWishes(plan.Wishes).InWords}, and so is what is hunted for it; what is wanted of the vehicle stays as it was until g or e changes it.");
    }

    // The other axle of a four-wheel drive gets the gears of the driving one, and is not hunted by itself.
    private List<string> Hunt(VehicleOnBench bench, VehicleOnBench planned, Plan plan)
    {
        var said = new List<string>();
        var other = bench.Driveline.OtherPosition;
        var named = plan.Changes.Any(change => change.Position == other);
        var alike = plan.Changes.Any(change => change.Position == bench.Driveline.DrivingPosition) && (named ? bench.Driveline.TransferCase is not null : IsGearedAlike(bench, planned, plan));
        var listed = plan.Changes.Where(change => change.ComponentId is null && !change.IsNone() && !(alike && change.Position == other)).ToList();
        foreach (var change in listed)
        {
            if (TriedNumbers.Parted(change.Position, change.Listed) is { Others.Length: 0, Named.Count: > 0 })
            {
                said.Add(Spoken($"Nothing is hunted by {change.Listed}: that is what the {change.Position.InWords()} is taken to stand."));
                continue;
            }

            var hunted = new HuntedPart(bench, planned, change.Position, change.Listed)
            {
                Plan = plan.Wishes.Count > 0 || plan.Changes.Any(each => each.Position != change.Position && !(alike && each.Position == other)) ? plan : null,
                Alike = alike ? OptionWords.GearedAlike(other) : "",
            };
            said.Add(hunted.Already(shop) is { } already ? Spoken($"Hunted already: {already.Title}.") : Spoken($"Hunted now: {hunted.Hunt(shop).Title}."));
        }

        return said;
    }

    // Nobody said anything of the other axle of a four-wheel drive, and it cannot stay as it is.
    private static bool IsGearedAlike(VehicleOnBench bench, VehicleOnBench planned, Plan plan)
        => plan.Changes.All(change => change.Position != bench.Driveline.OtherPosition) && planned.Driveline.OtherAxle != bench.Driveline.OtherAxle;

    private List<string> Fit(IWorkbenchView view, VehicleOnBench bench, Plan plan)
    {
        var said = new List<string>();
        foreach (var change in plan.Changes)
        {
            var acts = new FitActs(shop, bench.Vehicle, change.Position, Today);
            var fitted = change.IsNone() ? acts.TakeOff(view)
                : change.ComponentId is { } id && bench.Fitted.At(change.Position)?.Id != id && shop.Parts().FirstOrDefault(part => part.Component.Id == id) is { } place ? acts.Fit(view, place.Component)
                : null;
            if (fitted is not null) said.Add(fitted);
        }

        return said;
    }

    private void Decided(Plan plan, PlanState state, string reason)
    {
        if ((plan.State, plan.Reason) != (state, reason)) shop.Change(plan, edited => (edited.State, edited.Reason) = (state, reason));
    }

    private PlanRow Row(VehicleOnBench bench, Plan plan, RejectedPlans rejected)
    {
        var lines = new List<string> { PlannedWords.Of(shop, plan.Changes, new(plan.Wishes)) };
        if (plan.Reason.Length > 0) lines.Add($"{plan.State.InWords()}: {plan.Reason}");
        var doubts = Doubts(bench, plan);
        try
        {
            var planned = Planned(bench, plan);
            if (IsGearedAlike(bench, planned, plan)) lines.Add(Spoken($"The {bench.Driveline.OtherPosition.InWords()} is geared alike with it."));
            if (plan.State != PlanState.Rejected && rejected.Says(planned.Driveline, plan.Changes) is { } before) doubts.Add(before.Says);
            var counts = FindingsWords.Count(planned.Findings);
            return new(
                plan.Id, plan.Name, DayText.InShort(plan.Date), plan.State.InWords(), counts.Worst, counts.Summary(), WhatIfForm.Cruise(planned),
                [
                    .. lines, .. doubts.Select(doubt => $"! {doubt}"),
                    .. planned.Findings.Where(finding => finding.Verdict != Verdict.Fits).Select(finding => $"{finding.Verdict.Sign()} {finding.Verdict.InWords()}  {finding.Says}"),
                ])
            {
                Day = plan.Date,
                EngineSpeed = WhatIfForm.EngineSpeed(planned),
                Reason = plan.Reason,
                Doubts = doubts,
                Whole = Gearing.Options.VerdictCounts.Of(planned.Findings),
            };
        }
        catch (RefusedException refused)
        {
            return new(plan.Id, plan.Name, DayText.InShort(plan.Date), plan.State.InWords(), null, Spoken("cannot be said"), "", [.. lines, .. doubts.Select(doubt => $"! {doubt}"), refused.Message]) { Day = plan.Date, Reason = plan.Reason, Doubts = doubts };
        }
    }

    // Of the shop's own parts: why one is not just bolted on, and who would have to go without it.
    private List<string> Doubts(VehicleOnBench bench, Plan plan)
    {
        var doubts = new List<string>();
        foreach (var place in shop.Parts().Where(place => plan.Changes.Any(change => change.ComponentId == place.Component.Id)))
        {
            if (place.Fitment?.Vehicle is { } vehicle && vehicle.Id != bench.Vehicle.Id) doubts.Add(Spoken($"{place.Component.Name} is now on {vehicle.Name}."));
            if (PartDoubts.Of(shop, place.Component).InWords is { } doubt) doubts.Add($"{place.Component.Name}: {doubt}");
        }

        return doubts;
    }

    private VehicleOnBench Planned(VehicleOnBench bench, Plan plan) => new TriedWishes(plan.Wishes).On(bench.With(shop, plan.Changes));

    // The rule that failed, as a proposal.
    private string Failed(VehicleOnBench bench, Plan plan)
    {
        var planned = Parsed.From(() => Planned(bench, plan));
        return planned.Understood(out var whole) && whole.Findings.FirstOrDefault(finding => finding.Verdict == Verdict.Clash) is { } clash ? $"{clash.Title}: {clash.Says}" : "";
    }

    private VehicleOnBench Bench(long vehicleId) => VehicleOnBench.Read(shop, shop.FindVehicle(vehicleId), Today);

    private Plan Plan(long vehicleId, PlanRow row) => shop.Plans(shop.FindVehicle(vehicleId)).First(plan => plan.Id == row.Id);
}
