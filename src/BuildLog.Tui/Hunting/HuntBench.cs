using BuildLog.Data;
using BuildLog.Data.Hunting;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Hunting;

/// <summary>What a hunted part is judged on: the vehicle as it is, or where it is hunted for a plan, with everything else of that plan in place. Windows, offers, counts and yard cards all ask here.</summary>
/// <param name="Wanted">The part.</param>
/// <param name="Bench">The vehicle so.</param>
internal sealed record HuntBench(WantedPart Wanted, VehicleOnBench Bench)
{
    /// <summary>The plan it is hunted for; null for none.</summary>
    public Plan? Plan { get; private init; }

    /// <summary>What else of the plan is taken to be in place.</summary>
    public IReadOnlyList<PlannedChange> Others { get; private init; } = [];

    /// <summary>What of a plan it is judged with, or why with none of it; empty where it is hunted for no plan.</summary>
    public string Says { get; private init; } = "";

    /// <param name="shop">The record.</param>
    /// <param name="bench">The vehicle as it is.</param>
    /// <param name="wanted">The part.</param>
    public static HuntBench Of(Shop shop, VehicleOnBench bench, WantedPart wanted)
    {
        var here = new HuntBench(wanted, bench);
        return wanted.PlanId is { } id && shop.Plans(bench.Vehicle).FirstOrDefault(plan => plan.Id == id) is { } plan ? here.For(shop, plan) : here;
    }

    private HuntBench For(Shop shop, Plan plan)
    {
        var here = this with { Plan = plan };
        if (plan.State == PlanState.Rejected) return here with { Says = Spoken($"Plan {plan.Name} is rejected ({plan.Reason}): judged on the vehicle as it is now.") };

        IReadOnlyList<PlannedChange> others = [.. StillToCome.Of(shop, Bench, plan).Where(change => !IsThisPart(change.Position))];
        var wishes = new TriedWishes(plan.Wishes);
        if (others.Count == 0 && wishes.AreNone) return here with { Says = Spoken($"All else of plan {plan.Name} is on the vehicle: judged on it as it is now.") };

        return Parsed.From(() => wishes.On(Bench.With(shop, others))) is var read && read.Understood(out var planned)
            ? here with { Bench = planned, Others = others, Says = Spoken($"Judged with {PlannedWords.Of(shop, others, wishes)}, of plan {plan.Name}.") }
            : here with { Says = Spoken($"Nothing of plan {plan.Name} can be taken as chosen, so it is judged on the vehicle as it is now: {read.Refusal!.Sentence}") };
    }

    // Where two of a kind are fitted, only axles are told apart by their names; the other axle that is geared alike comes with the driving one.
    private bool IsThisPart(Position position)
    {
        var place = HuntedPlace.Of(Bench.Driveline, Wanted);
        return position == place || (Wanted.Kind == WantedKind.Axle
            ? place == Bench.Driveline.DrivingPosition && position == Bench.Driveline.OtherPosition && Bench.Driveline.TransferCase is not null
            : WantedWindows.Kind(position) == Wanted.Kind);
    }
}
