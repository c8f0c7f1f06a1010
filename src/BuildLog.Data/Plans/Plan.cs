using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Plans;

/// <summary>What became of a plan.</summary>
public enum PlanState
{
    Open,
    Kept,
    Rejected,
}

public static class PlanStateWords
{
    public static string InWords(this PlanState state) => state switch
    {
        PlanState.Open => Spoken("open"),
        PlanState.Kept => Spoken("kept"),
        PlanState.Rejected => Spoken("rejected"),
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "No such state."),
    };
}

/// <summary>A what-if that is worth keeping: what would be changed on a vehicle, and why it was or was not done.</summary>
public sealed class Plan : Entered
{
    public Plan(Vehicle vehicle) => VehicleId = vehicle.Id;

    private Plan() { }

    public long VehicleId { get; internal set; }

    public string Name
    {
        get;
        set => field = value.Trim();
    } = "";

    public DateOnly Date { get; set; }

    public IReadOnlyList<PlannedChange> Changes
    {
        get => [.. Rows.OrderBy(row => row.Position).ThenBy(row => row.Id).Select(row => new PlannedChange(row.Position, row.Listed, row.ComponentId))];
        set
        {
            Rows.Clear();
            Rows.AddRange(value.Select(change => new PlannedChangeRow { Position = change.Position, Listed = change.Listed.Trim(), ComponentId = change.ComponentId }));
        }
    }

    /// <summary>The load and wishes that go with it; none twice.</summary>
    public IReadOnlyList<PlannedWish> Wishes
    {
        get => [.. Wished.OrderBy(row => row.Wish).Select(row => new PlannedWish(row.Wish, row.Typed))];
        set
        {
            Wished.Clear();
            Wished.AddRange(value.Select(wish => new PlannedWishRow { Wish = wish.Wish, Typed = wish.Typed.Trim() }));
        }
    }

    public PlanState State { get; set; }

    /// <summary>Why it was kept or rejected: the rule that failed.</summary>
    public string Reason { get; set; } = "";

    internal List<PlannedChangeRow> Rows { get; } = [];

    internal List<PlannedWishRow> Wished { get; } = [];

    public override void Check()
    {
        TextRules.CheckTitle(Name, new Later("name of the plan"), "3.08 axle on the tall tyres");
        TextRules.CheckText(Reason, new Later("reason"));
        TextRules.CheckDay(Date, new Later("date of the plan"));
        if (Rows.Count == 0 && Wished.Count == 0) throw new RefusedException("plan", Spoken("A plan changes at least one part, the load or a wish."), "axle 3.08");
        foreach (var wish in Wished)
        {
            if (wish.Wish.Refuses(wish.Typed) is { } refusal) throw new RefusedException(refusal);
        }

        if (Wished.GroupBy(row => row.Wish).FirstOrDefault(group => group.Count() > 1) is { } again)
            throw new RefusedException("plan", Spoken($"The {again.Key.InWords()} is changed twice in one plan; keep two plans."), "");
        foreach (var row in Rows)
        {
            TextRules.CheckLine(row.Listed, new Later("planned change"), "3.08");
            if (row.ComponentId is null && row.Listed.Length == 0)
                throw new RefusedException("plan", Spoken($"What would be fitted as {row.Position.InWords()}: a part of the shop, or a listed ratio or size?"), "3.08");
        }

        if (Rows.GroupBy(row => row.Position).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new RefusedException("plan", Spoken($"The {twice.Key.InWords()} is changed twice in one plan; keep two plans."), "");
        if (State == PlanState.Rejected && Reason.Trim().Length == 0)
            throw new RefusedException("plan", Spoken($"Why was '{Name}' rejected? The rule that failed keeps others from buying it again."), "propshaft would turn too fast");
    }

    public override string ToString() => Name;
}

/// <summary>One part changed in a plan: a part of the shop, or a listed ratio or size.</summary>
/// <param name="Position">Where.</param>
/// <param name="Listed">A ratio or size as typed; empty where a part of the shop is meant.</param>
/// <param name="ComponentId">The part of the shop; null for a listed value.</param>
public sealed record PlannedChange(Position Position, string Listed, long? ComponentId = null)
{
    public PlannedChange(Position position, Component component) : this(position, "", component.Id) { }
}

/// <summary>A planned change as it is stored.</summary>
internal sealed class PlannedChangeRow
{
    public long Id { get; set; }

    public long PlanId { get; set; }

    public Position Position { get; set; }

    public string Listed { get; set; } = "";

    public long? ComponentId { get; set; }
}
