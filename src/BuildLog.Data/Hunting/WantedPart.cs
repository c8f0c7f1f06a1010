using BuildLog.Data.Costs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Hunting;

/// <summary>A part being hunted for a vehicle: between which values it will do, what it must have, and what it may cost.</summary>
public sealed class WantedPart : Entered
{
    public WantedPart(Vehicle vehicle, WantedKind kind) => (VehicleId, Kind) = (vehicle.Id, kind);

    internal WantedPart() { }

    public long VehicleId { get; internal set; }

    public WantedKind Kind { get; internal set; }

    /// <summary>What the shop calls it: <c>longer axle</c>.</summary>
    public string Title
    {
        get;
        set => field = value.Trim();
    } = "";

    /// <summary>The plan that it is hunted for: it goes in beside the other parts of that; null where it goes in by itself.</summary>
    public long? PlanId { get; set; }

    /// <summary>Between which values it will do.</summary>
    public IReadOnlyList<WantedWindow> Windows
    {
        get => [.. WindowRows.OrderBy(row => row.Ordinal).Select(row => new WantedWindow(row.Quantity, row.Low, row.High))];
        set
        {
            WindowRows.Clear();
            WindowRows.AddRange(value.Select((window, k) => WindowRow.Of(window, k + 1)));
        }
    }

    /// <summary>What it must have besides: bolt circle, track, spline, flange, brakes.</summary>
    public IReadOnlyList<MustHave> MustHaves
    {
        get => [.. MustHaveRows.OrderBy(row => row.Ordinal).Select(row => new MustHave(row.What, row.Text))];
        set
        {
            MustHaveRows.Clear();
            MustHaveRows.AddRange(value.Select((must, k) => new MustHaveRow { Ordinal = k + 1, What = must.What.Trim(), Text = must.Text.Trim() }));
        }
    }

    /// <summary>The most it may cost.</summary>
    public Money? Most { get; set; }

    public DateOnly? Deadline { get; set; }

    public WantedState State { get; set; }

    /// <summary>Why it was dropped: the rule that failed, so that nobody hunts it again.</summary>
    public string DroppedFor { get; set; } = "";

    public string Notes { get; set; } = "";

    internal List<WindowRow> WindowRows { get; } = [];

    internal List<MustHaveRow> MustHaveRows { get; } = [];

    public override void Check()
    {
        TextRules.CheckTitle(Title, new Later("name of the wanted part"), "longer axle");
        TextRules.CheckLine(DroppedFor, new Later("reason for dropping it"), "propshaft would turn too fast");
        TextRules.CheckText(Notes, new Later("notes"));
        TextRules.CheckDay(Deadline, new Later("deadline"));
        foreach (var window in Windows) window.Check();
        if (Windows.GroupBy(window => window.Quantity).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new RefusedException("window", Spoken($"The {twice.Key.InWords()} is limited twice; give it one window."), "2.85 to 3.21");
        foreach (var must in MustHaves)
        {
            TextRules.CheckTitle(must.What, new Later("name of what it must have"), "bolt circle");
            TextRules.CheckTitle(must.Text, must.What, "5 × 114.3");
        }

        if (State == WantedState.Dropped && DroppedFor.Trim().Length == 0)
            throw new RefusedException("dropped", Spoken($"Why is the {Title} wanted no more? The rule that failed keeps others from hunting it again."), "propshaft would turn too fast");
        if (Most is { Minor: < 0 }) throw new RefusedException("money", Spoken("The most it may cost is zero or more."), "250 EUR");
    }

    public override string ToString() => Title;
}

/// <summary>Something that a wanted part must have: <c>bolt circle</c>, <c>5 × 114.3</c>.</summary>
public sealed record MustHave(string What, string Text);

/// <summary>A must-have as it is stored.</summary>
internal sealed class MustHaveRow
{
    public long Id { get; set; }

    public long WantedPartId { get; set; }

    public int Ordinal { get; set; }

    public string What { get; set; } = "";

    public string Text { get; set; } = "";
}
