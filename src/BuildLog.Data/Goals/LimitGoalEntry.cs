using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Goals;

/// <summary>What a limit is set on; a vehicle has one limit of each.</summary>
public enum Limited
{
    /// <summary>A gradient to pull away on, at least.</summary>
    HillStart,

    /// <summary>At least.</summary>
    TopSpeed,

    /// <summary>Overall ratio in the lowest gear and range, at least.</summary>
    OverallLow,

    /// <summary>At most, as the following two.</summary>
    TyreDiameter,

    TyreWidth,

    Track,
}

public static class LimitedWords
{
    public static string InWords(this Limited limited) => limited switch
    {
        Limited.HillStart => Spoken("hill start"),
        Limited.TopSpeed => Spoken("top speed"),
        Limited.OverallLow => Spoken("overall low ratio"),
        Limited.TyreDiameter => Spoken("tyre diameter"),
        Limited.TyreWidth => Spoken("tyre width"),
        Limited.Track => Spoken("track"),
        _ => throw new ArgumentOutOfRangeException(nameof(limited), limited, "No such limit."),
    };
}

/// <summary>A limit that the owner sets, as it was typed.</summary>
public sealed class LimitGoalEntry : GoalEntry
{
    public LimitGoalEntry(Vehicle vehicle, Limited limited) => (VehicleId, Limited) = (vehicle.Id, limited);

    internal LimitGoalEntry() { }

    public Limited Limited { get; internal set; }

    /// <summary>Such as <c>25 %</c>, <c>150 km/h</c>, <c>40</c> or <c>790 mm</c>.</summary>
    public string Limit { get; set; } = "";

    /// <summary>The goals with this one among them.</summary>
    /// <exception cref="RefusedException">The text is no such limit.</exception>
    public OwnersGoals Join(OwnersGoals goals) => Limited switch
    {
        Limited.HillStart => goals with { HillStart = HillStartGoal.Read(Limit).OrRefuse() },
        Limited.TopSpeed => goals with { TopSpeed = TopSpeedGoal.Read(Limit).OrRefuse() },
        Limited.OverallLow => goals with { OverallLow = OverallLowGoal.Read(Limit).OrRefuse() },
        Limited.TyreDiameter => goals with { TyreDiameter = LengthLimit.ReadTyreDiameter(Limit).OrRefuse() },
        Limited.TyreWidth => goals with { TyreWidth = LengthLimit.ReadTyreWidth(Limit).OrRefuse() },
        Limited.Track => goals with { Track = LengthLimit.ReadTrack(Limit).OrRefuse() },
        _ => throw new InvalidOperationException($"There is no limit {Limited}."),
    };

    public override void Check() => _ = Join(OwnersGoals.None);

    internal override Later KindInWords => new Later("limit goal");

    public override string ToString() => $"{Limited.InWords()} {Limit}";
}
