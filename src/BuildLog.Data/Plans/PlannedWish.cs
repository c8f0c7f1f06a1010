using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Data.Plans;

/// <summary>What a plan changes besides parts: the load, or what the owner wants.</summary>
public enum Wish
{
    Mass,
    DragArea,
    Cruise,
    TopSpeed,
    HillStart,
    TyreDiameter,
}

public static class WishWords
{
    public static string InWords(this Wish wish) => wish switch
    {
        Wish.Mass => Spoken("mass"),
        Wish.DragArea => Spoken("drag area"),
        Wish.Cruise => Spoken("cruise"),
        Wish.TopSpeed => Spoken("top speed"),
        Wish.HillStart => Spoken("hill start"),
        Wish.TyreDiameter => Spoken("tyre diameter at most"),
        _ => throw new ArgumentOutOfRangeException(nameof(wish), wish, "No such wish."),
    };

    /// <summary>The text means something under this heading.</summary>
    public static Refusal? Refuses(this Wish wish, string text) => wish switch
    {
        Wish.Mass => VehicleLoad.ReadMass(text).Refusal,
        Wish.DragArea => VehicleLoad.ReadDragArea(text).Refusal,
        Wish.Cruise => CruiseGoal.ReadLine(text).Refusal,
        Wish.TopSpeed => TopSpeedGoal.Read(text).Refusal,
        Wish.HillStart => HillStartGoal.Read(text).Refusal,
        Wish.TyreDiameter => LengthLimit.ReadTyreDiameter(text).Refusal,
        _ => throw new ArgumentOutOfRangeException(nameof(wish), wish, "No such wish."),
    };
}

/// <summary>Another load or wish in a plan, as typed.</summary>
public sealed record PlannedWish(Wish Wish, string Typed);

/// <summary>A planned wish as it is stored.</summary>
internal sealed class PlannedWishRow
{
    public long Id { get; set; }

    public long PlanId { get; set; }

    public Wish Wish { get; set; }

    public string Typed { get; set; } = "";
}
