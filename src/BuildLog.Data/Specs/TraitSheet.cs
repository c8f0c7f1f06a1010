using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Specs;

/// <summary>What is noted in words under one heading.</summary>
/// <param name="Words">What it is called, in sentences and lists.</param>
/// <param name="Example">One written right.</param>
/// <param name="Choices">The only words there are; empty where the shop calls it what it likes.</param>
public sealed record TraitLine(Later Words, string Example, IReadOnlyList<string> Choices)
{
    internal const int Longest = 40;

    public Parsed<string> Read(string text)
        => text.Trim() is not { Length: > 0 and <= Longest } words || words.Any(char.IsControl)
                ? new Refusal("trait", Spoken($"For the {Words} write 1 to {Longest} characters."), Example).In(text)
            : Choices.Count > 0 && !Choices.Contains(words) ? new Refusal("trait", Spoken($"{Shown.Quoted(words)} is no {Words}: it is one of {string.Join(", ", Choices)}."), Example)
            : words;
}

/// <summary>What the words are called and what they can be.</summary>
public static class TraitSheet
{
    private static readonly Dictionary<Trait, TraitLine> Lines = new()
    {
        [Trait.BellHousing] = Free(new Later("bell-housing pattern"), "Corvane six"),
        [Trait.Plate] = OneOf<Plate>(new Later("plate on the crankshaft")),
        [Trait.Starter] = OneOf<StarterSide>(new Later("starter side")),
        [Trait.Turns] = OneOf<Sense>(new Later("direction of rotation")),
        [Trait.InputSpline] = Free(new Later("input spline"), "26 × 1 1/8 in"),
        [Trait.DiscSpline] = Free(new Later("clutch-disc spline"), "26 × 1 1/8 in"),
        [Trait.Output] = Free(new Later("output"), "flange 4 × 80 mm"),
        [Trait.FrontOutput] = Free(new Later("front output"), "flange 4 × 80 mm"),
        [Trait.SpeedometerFeed] = OneOf<SpeedometerFeed>(new Later("speedometer drive")),
        [Trait.ParkingBrake] = OneOf<Presence>(new Later("parking brake")),
        [Trait.ShiftLinkage] = OneOf<Presence>(new Later("shift linkage")),
        [Trait.PinionFlange] = Free(new Later("pinion flange"), "flange 4 × 80 mm"),
        [Trait.FrontEnd] = Free(new Later("front end"), "flange 4 × 80 mm"),
        [Trait.RearEnd] = Free(new Later("rear end"), "flange 4 × 80 mm"),
    };

    public static TraitLine Line(this Trait trait) => Lines[trait];

    private static TraitLine Free(Later words, string example) => new(words, example, []);

    private static TraitLine OneOf<TWords>(Later words)
        where TWords : struct, Enum
        => new(words, Enum.GetNames<TWords>()[0], Enum.GetNames<TWords>());
}
