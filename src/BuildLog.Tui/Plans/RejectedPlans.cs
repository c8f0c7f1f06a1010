using BuildLog.Data;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Plans;

/// <summary>What was tried on paper and rejected: whoever comes to the same combination again is told the rule that failed.</summary>
internal sealed class RejectedPlans
{
    // 3.36 as it was typed and 37/11 as it is counted are one pair of gears.
    private const double Same = 0.002;

    public static readonly RejectedPlans None = new([]);

    private readonly IReadOnlyList<(Plan Plan, Driveline Driveline)> plans;

    private RejectedPlans(IReadOnlyList<(Plan Plan, Driveline Driveline)> plans) => this.plans = plans;

    /// <summary>Those of a vehicle that still mean something; a part that is gone takes its plan with it.</summary>
    public static RejectedPlans Of(Shop shop, VehicleOnBench bench)
    {
        var known = new List<(Plan, Driveline)>();
        foreach (var plan in shop.Plans(bench.Vehicle).Where(plan => plan.State == PlanState.Rejected && plan.Changes.Count > 0))
        {
            if (Parsed.From(() => bench.Driveline.With(shop, plan.Changes)).Understood(out var driveline)) known.Add((plan, driveline));
        }

        return new(known);
    }

    /// <summary><c>rejected (3.08 axle, 3 May 2026): propshaft would turn too fast</c>; null where nobody rejected it.</summary>
    public string? Says(Driveline driveline)
        => plans.Where(each => IsSame(each.Driveline, driveline)).Select(each => Spoken($"rejected ({each.Plan.Name}, {DayText.InShort(each.Plan.Date)}): {each.Plan.Reason}")).FirstOrDefault();

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
}
