using BuildLog.Data.Plans;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Plans;

/// <summary>Another load and other wishes to try on the bench, as typed; what is not among them stays as it is.</summary>
internal sealed class TriedWishes(IReadOnlyList<PlannedWish> wishes)
{
    public static TriedWishes None { get; } = new([]);

    public IReadOnlyList<PlannedWish> All => wishes;

    public bool AreNone => wishes.Count == 0;

    /// <summary><c>mass 1600 kg, cruise 110 km/h at 2400 rpm</c>.</summary>
    public string InWords => string.Join(", ", wishes.Select(each => $"{each.Wish.InWords()} {each.Typed}"));

    /// <summary>What is tried of it; null where it stays as it is.</summary>
    public string? this[Wish wish] => wishes.FirstOrDefault(each => each.Wish == wish)?.Typed;

    /// <summary>The vehicle with them, judged again.</summary>
    /// <exception cref="RefusedException">A text means nothing.</exception>
    public VehicleOnBench On(VehicleOnBench bench)
    {
        if (AreNone) return bench;

        var tried = wishes.OrderBy(each => each.Wish).Aggregate(new Trial(bench.Driveline, bench.Goals), (trial, each) => each.Wish.Line().Put(trial, each.Typed));
        return bench with { Fitted = bench.Fitted with { Driveline = tried.Driveline }, Goals = tried.Goals, Findings = AllChecks.Look(tried.Driveline, tried.Goals) };
    }
}
