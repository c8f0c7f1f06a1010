using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Plans;

/// <summary>What a plan changes besides parts: what the vehicle has to move and how it carries it, and what the owner wants. <see cref="WishSheet"/> says what each is called and what it does; they are put in the order they have here.</summary>
public enum Wish
{
    // The vehicle.
    Mass,
    DrivenShare,
    FrontAxleMass,
    RearAxleMass,
    DragArea,
    RollingResistance,
    Altitude,
    GravityHeight,
    Wheelbase,
    FrontSprings,
    FrontPad,
    RearSprings,
    RearPad,

    // What is wanted of it.
    Cruise,
    Hill,
    TopSpeed,
    HillStart,
    OverallLow,
    TyreDiameter,
    TyreWidth,
    Track,
}

public static class WishWords
{
    public static string InWords(this Wish wish) => wish.Line().Words;

    /// <summary>Why the text means nothing under this heading; null where it does.</summary>
    public static Refusal? Refuses(this Wish wish, string text) => Parsed.From(() => wish.Line().Put(Trial.OfNothing, text)).Refusal;
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
