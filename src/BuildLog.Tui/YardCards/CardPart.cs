using BuildLog.Data.Hunting;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.YardCards;

/// <summary>What there is a card for.</summary>
internal enum CardPart
{
    Axle,

    /// <summary>The front axle of a four-wheel drive, where it is not the one that speeds are computed through.</summary>
    FrontAxle,
    Gearbox,
    Overdrive,
    Tyres,
}

internal static class CardPartWords
{
    public const string All = "axle|front-axle|gearbox|overdrive|tyres";

    public static string InWords(this CardPart part) => part switch
    {
        CardPart.Axle => Spoken("axle"),
        CardPart.FrontAxle => Spoken("front axle"),
        CardPart.Gearbox => Spoken("gearbox"),
        CardPart.Overdrive => Spoken("overdrive"),
        CardPart.Tyres => Spoken("tyres"),
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "No such card."),
    };

    /// <summary>The word it is asked for by, the same in all languages.</summary>
    public static string Word(this CardPart part) => part switch
    {
        CardPart.Axle => "axle",
        CardPart.FrontAxle => "front-axle",
        CardPart.Gearbox => "gearbox",
        CardPart.Overdrive => "overdrive",
        CardPart.Tyres => "tyres",
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "No such card."),
    };

    public static Parsed<CardPart> Read(string text)
        => Enum.GetValues<CardPart>().Where(part => part.Word().Equals(text.Trim(), StringComparison.OrdinalIgnoreCase)).ToList() is [var part]
            ? part
            : new Refusal("part", Spoken($"There is no card for {Shown.Quoted(text)}: axle, front-axle, gearbox, overdrive or tyres."), "tyres");

    /// <summary>Whether there is a card for such a part.</summary>
    public static bool IsThereFor(WantedKind kind) => Enum.GetValues<CardPart>().Any(part => part.IsFor(kind));

    /// <summary>Whether a part that is hunted is what the card is for.</summary>
    public static bool IsFor(this CardPart part, WantedKind kind) => kind switch
    {
        WantedKind.Axle => part == CardPart.Axle,
        WantedKind.Transmission => part == CardPart.Gearbox,
        WantedKind.Overdrive => part == CardPart.Overdrive,
        WantedKind.Tyres or WantedKind.Wheels => part == CardPart.Tyres,
        _ => false,
    };
}
