using BuildLog.Data;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Plans;

/// <summary>That somebody rejected such a combination before.</summary>
/// <param name="Says">In words, with the rule that failed.</param>
/// <param name="AreTheseParts">It was these very parts; else others of the same number, which the rule depends on.</param>
internal sealed record RejectedBefore(string Says, bool AreTheseParts);

/// <summary>What was tried on paper and rejected: whoever comes to the same parts again is told the rule that failed.</summary>
/// <remarks>Other parts of the same numbers are another matter: of them it is told only where the rule that failed is about a number that is the same.</remarks>
internal sealed class RejectedPlans
{
    // 3.36 as it was typed and 37/11 as it is counted are one pair of gears.
    private const double Same = 0.002;

    public static readonly RejectedPlans None = new([]);

    private readonly IReadOnlyList<Rejected> plans;

    private RejectedPlans(IReadOnlyList<Rejected> plans) => this.plans = plans;

    /// <summary>Those of a vehicle that still mean something; a part that is gone takes its plan with it.</summary>
    public static RejectedPlans Of(Shop shop, VehicleOnBench bench)
    {
        var known = new List<Rejected>();
        foreach (var plan in shop.Plans(bench.Vehicle).Where(plan => plan.State == PlanState.Rejected && plan.Changes.Count > 0))
        {
            if (Parsed.From(() => bench.Driveline.With(shop, plan.Changes)).Understood(out var driveline)) known.Add(new(plan, driveline, IsByNumber(driveline, bench, plan)));
        }

        return new(known);
    }

    /// <summary><c>rejected (3.08 axle, 3 May 2026): propshaft would turn too fast</c>; null where nobody rejected it.</summary>
    /// <param name="driveline">What it comes to.</param>
    /// <param name="changes">The parts that make it so.</param>
    public RejectedBefore? Says(Driveline driveline, IReadOnlyList<PlannedChange> changes)
    {
        if (plans.FirstOrDefault(each => AreTheseParts(each.Plan.Changes, changes)) is { } these)
            return new(Spoken($"rejected ({these.Plan.Name}, {DayText.InShort(these.Plan.Date)}): {these.Plan.Reason}"), AreTheseParts: true);

        return plans.FirstOrDefault(each => each.IsByNumber && IsSame(each.Driveline, driveline)) is { } number
            ? new(Spoken($"same number as the rejected plan {number.Plan.Name} of {DayText.InShort(number.Plan.Date)} ({number.Plan.Reason})"), AreTheseParts: false)
            : null;
    }

    // An offer is known again by its name, whatever was counted on it since.
    private static bool AreTheseParts(IReadOnlyList<PlannedChange> these, IReadOnlyList<PlannedChange> those)
    {
        static IEnumerable<(Position Position, long? Id, string Text)> Known(IReadOnlyList<PlannedChange> changes)
            => changes.Select(change => (change.Position, change.ComponentId, change.ComponentId is null ? PlannedOffer.Read(change.Listed)?.What ?? change.Listed : ""));
        return these.Count == those.Count && Known(these).ToHashSet().SetEquals(Known(those));
    }

    // The rule is known again by its title, with which a rejection proposes its reason; it is about a number where it leaves a window of one of the parts.
    private static bool IsByNumber(Driveline driveline, VehicleOnBench bench, Plan plan)
        => AllChecks.Look(driveline, bench.Goals).Any(finding => finding.Verdict != Verdict.Fits && plan.Reason.Contains(finding.Title, StringComparison.OrdinalIgnoreCase)
            && finding.Windows.Any(window => plan.Changes.Any(change => change.Position == window.Position)));

    // By its numbers: a part of the shop, an offer and a line of a list may be one and the same.
    private static bool IsSame(Driveline one, Driveline other)
        => one.Engine == other.Engine && one.TransferCase == other.TransferCase && one.Propshaft == other.Propshaft && one.FrontPropshaft == other.FrontPropshaft && one.Speedometer == other.Speedometer
            && Alike(Gears(one), Gears(other))
            && Alike([one.Overdrive?.Ratio], [other.Overdrive?.Ratio])
            && Alike([one.RearAxle?.Ratio, one.FrontAxle?.Ratio], [other.RearAxle?.Ratio, other.FrontAxle?.Ratio])
            && (one.Tyres == other.Tyres || (one.Tyres?.Size?.Designation == other.Tyres?.Size?.Designation && Alike([one.Tyres?.RollingCircumference], [other.Tyres?.RollingCircumference])));

    private static IReadOnlyList<Known?> Gears(Driveline driveline) => [.. driveline.Transmission?.Gears.Select(gear => gear.Ratio) ?? []];

    private static bool Alike(IReadOnlyList<Known?> these, IReadOnlyList<Known?> those)
        => these.Count == those.Count && these.Zip(those).All(pair => pair.First is { } first && pair.Second is { } second ? Math.Abs((first.Value.Value / second.Value.Value) - 1) < Same : pair is { First: null, Second: null });

    private sealed record Rejected(Plan Plan, Driveline Driveline, bool IsByNumber);
}
