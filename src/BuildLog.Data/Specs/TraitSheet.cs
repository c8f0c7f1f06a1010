using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Specs;

/// <summary>What is noted in words under one heading.</summary>
/// <param name="Words">What it is called, in sentences and lists.</param>
/// <param name="Example">One written right.</param>
/// <param name="Choices">The only words there are; empty where the shop calls it what it likes.</param>
public sealed record TraitLine(string Words, string Example, IReadOnlyList<string> Choices)
{
    internal const int Longest = 40;

    public Parsed<string> Read(string text)
        => text.Trim() is not { Length: > 0 and <= Longest } words || words.Any(char.IsControl)
                ? new Refusal("trait", FormattableString.Invariant($"For the {Words} write 1 to {Longest} characters."), Example).In(text)
            : Choices.Count > 0 && !Choices.Contains(words) ? new Refusal("trait", $"{Shown.Quoted(words)} is no {Words}: it is one of {string.Join(", ", Choices)}.", Example)
            : words;
}

/// <summary>What the words are called and what they can be.</summary>
public static class TraitSheet
{
    private static readonly Dictionary<Trait, TraitLine> Lines = new()
    {
        [Trait.BellHousing] = Free("bell-housing pattern", "Corvane six"),
        [Trait.Plate] = OneOf<Plate>("plate on the crankshaft"),
        [Trait.Starter] = OneOf<StarterSide>("starter side"),
        [Trait.Turns] = OneOf<Sense>("direction of rotation"),
        [Trait.InputSpline] = Free("input spline", "26 × 1 1/8 in"),
        [Trait.DiscSpline] = Free("clutch-disc spline", "26 × 1 1/8 in"),
        [Trait.Output] = Free("output", "flange 4 × 80 mm"),
        [Trait.FrontOutput] = Free("front output", "flange 4 × 80 mm"),
        [Trait.SpeedometerFeed] = OneOf<SpeedometerFeed>("speedometer drive"),
        [Trait.ParkingBrake] = OneOf<Presence>("parking brake"),
        [Trait.ShiftLinkage] = OneOf<Presence>("shift linkage"),
        [Trait.PinionFlange] = Free("pinion flange", "flange 4 × 80 mm"),
        [Trait.FrontEnd] = Free("front end", "flange 4 × 80 mm"),
        [Trait.RearEnd] = Free("rear end", "flange 4 × 80 mm"),
    };

    public static TraitLine Line(this Trait trait) => Lines[trait];

    private static TraitLine Free(string words, string example) => new(words, example, []);

    private static TraitLine OneOf<TWords>(string words)
        where TWords : struct, Enum
        => new(words, Enum.GetNames<TWords>()[0], Enum.GetNames<TWords>());
}
