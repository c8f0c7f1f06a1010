using BuildLog.Data.Plans;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
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

        var (load, goals) = (bench.Driveline.Load ?? new VehicleLoad(), bench.Goals);
        if (this[Wish.Mass] is { } mass) load = load with { Mass = Spec.Mass.Line().Told(mass) };
        if (this[Wish.DragArea] is { } drag) load = load with { DragArea = Spec.DragArea.Line().Told(drag) };
        if (this[Wish.Cruise] is { } cruise) goals = goals with { Cruise = [CruiseGoal.ReadLine(cruise).OrRefuse(), .. goals.Cruise.Skip(1)] };
        if (this[Wish.TopSpeed] is { } top) goals = goals with { TopSpeed = TopSpeedGoal.Read(top).OrRefuse() };
        if (this[Wish.HillStart] is { } hill) goals = goals with { HillStart = HillStartGoal.Read(hill).OrRefuse() };
        if (this[Wish.TyreDiameter] is { } diameter) goals = goals with { TyreDiameter = LengthLimit.ReadTyreDiameter(diameter).OrRefuse() };
        var driveline = bench.Driveline with { Load = load };
        return bench with { Fitted = bench.Fitted with { Driveline = driveline }, Goals = goals, Findings = AllChecks.Look(driveline, goals) };
    }
}
