using System.Globalization;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.Options;

/// <summary>One gear as it is told.</summary>
/// <param name="Name">As the knob names it; empty where only its place among the others says which it is.</param>
/// <param name="Text">Its ratio as typed.</param>
/// <param name="Ratio">The same, as sure as its last digit or its ±.</param>
/// <exception cref="RefusedException">A ratio that is not above zero.</exception>
public sealed record ToldGear(string Name, string Text, Measured Ratio)
{
    /// <summary>Input turns per output turn; above zero.</summary>
    public Measured Ratio { get; init => field = value.AboveZero(Spoken("A gear ratio"), "0.82"); } = Ratio.AboveZero(Spoken("A gear ratio"), "0.82");

    /// <summary>As it stands in a claim: <c>1:3.32</c>.</summary>
    public override string ToString() => Name.Length == 0 ? Text : $"{Plain(Name)}:{Text}";

    /// <summary>It is the gear of that name.</summary>
    public bool IsCalled(string name) => Name.Length > 0 && Plain(Name).Equals(Plain(name), StringComparison.OrdinalIgnoreCase);

    // Blanks and colons part gears in a claim.
    private static string Plain(string name) => string.Concat(name.Where(sign => !char.IsWhiteSpace(sign) && sign is not (':' or ';' or '/')));
}

/// <summary>What is told of a gearbox's gears: all of them, <c>3.32 2.05 1.38 1.00 0.81</c>; the top gear alone, <c>0.81</c>; or some by their names, <c>1:3.32 5:0.81</c>.</summary>
/// <param name="Told">From the lowest to the top.</param>
public sealed record ToldGears(IReadOnlyList<ToldGear> Told)
{
    private const char Named = ':';

    // A top gear is direct or longer, or little shorter; common practice, no source.
    internal const double ShortestTop = 1.3;

    // Neighbours in a box lie further apart; common practice, no source.
    private const double Alike = 1.12;

    // A splitter and a range group make 18 of a truck's box; far more is no gearbox.
    private const int Most = 40;

    private static readonly char[] BetweenGears = [' ', '\t', '\r', '\n', ';', '/'];

    /// <summary>The top gear, where that is told.</summary>
    public ToldGear? Top => Told[^1] is { Name.Length: 0 } or { Ratio.Value: <= ShortestTop } ? Told[^1] : null;

    /// <summary>All forward gears are told.</summary>
    internal bool AreAll => !AreNamed && !IsTopAlone;

    /// <summary>The top gear is all that is told.</summary>
    internal bool IsTopAlone => Told is [{ Name.Length: 0 }];

    /// <summary>Some are told by their names, and others may be there.</summary>
    internal bool AreNamed => Told[0].Name.Length > 0;

    /// <summary>Reads what stands in a claim, whatever stands between the gears.</summary>
    public static Parsed<ToldGears> Read(string text)
    {
        var gears = new List<ToldGear>();
        foreach (var word in text.Split(BetweenGears, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var (name, told) = word.IndexOf(Named, StringComparison.Ordinal) is >= 0 and var at ? (word[..at], word[(at + 1)..]) : ("", word);
            if (told.Length == 0) return NoGear(word);
            if (gears.Count == Most) return new Refusal("gears", Spoken($"{Shown.Quoted(text)} tells more gears than a gearbox has."), "3.32 2.05 1.38 1.00 0.81");
            if (!QuotedRatio.ReadMeasured(told, RatioRange.Gear, Spoken("gear ratio")).Understood(out var ratio)) return QuotedRatio.Read(told, RatioRange.Gear).Refusal!;
            gears.Add(new(name, told, ratio));
        }

        return gears.Count > 0 ? Of(gears) : NoGear(text);
    }

    /// <summary>Puts gears in order.</summary>
    public static Parsed<ToldGears> Of(IReadOnlyList<ToldGear> gears)
    {
        if (gears.FirstOrDefault(gear => gear.Name.Length == 0) is { } nameless && gears.Any(gear => gear.Name.Length > 0))
            return new Refusal("gears", Spoken($"Which gear is {Shown.Quoted(nameless.Text)}? Name each of them, or none."), "1:3.32 5:0.81");

        var told = gears[0].Name.Length == 0 ? gears : [.. gears.OrderByDescending(gear => gear.Ratio.Value)];
        for (var k = 1; k < told.Count; k++)
        {
            if (told[k].Ratio.Value >= told[k - 1].Ratio.Value) return CannotFollow(told[k].Text, told[k - 1].Ratio.Value);
        }

        // Gears by a word, such as a crawler, may stand between numbered ones.
        var numbered = told.Where(gear => Number(gear) is not null).ToList();
        if (numbered.Zip(numbered.Skip(1)).FirstOrDefault(pair => Number(pair.Second) <= Number(pair.First)) is ({ } lower, { } upper))
            return new Refusal("gears", Spoken($"Gear {upper.Name} cannot be longer than gear {lower.Name}: {Shown.Quoted(upper.Text)} and {Shown.Quoted(lower.Text)}. Output turns come first."), "1:3.32 5:0.81");

        return new ToldGears(told);
    }

    /// <summary>The gears of the box, from the lowest to the top.</summary>
    /// <param name="others">Those it is taken to have where nothing is told of them.</param>
    /// <remarks>A gear that nobody told of stays where none of its name, and none that is nearly as long, is told.</remarks>
    internal IReadOnlyList<Gear> Among(IReadOnlyList<Gear> others)
    {
        if (IsTopAlone) return others.Count > 1 ? [.. others.SkipLast(1), Gear(Told[0], others[^1].Name)] : [Gear(Told[0], Spoken("top"))];
        if (!AreNamed) return [.. Told.Select((gear, k) => Gear(gear, (k + 1).ToString(CultureInfo.InvariantCulture)))];

        var left = others.Where(gear => !Told.Any(told => told.IsCalled(gear.Name) || Math.Max(told.Ratio.Value, gear.Ratio.Value.Value) < Alike * Math.Min(told.Ratio.Value, gear.Ratio.Value.Value)));
        return [.. left.Concat(Told.Select(told => Gear(told, others.FirstOrDefault(gear => told.IsCalled(gear.Name))?.Name ?? told.Name))).OrderByDescending(gear => gear.Ratio.Value.Value)];
    }

    /// <summary>It is told of this gear of the box.</summary>
    public bool Tells(Gear gear) => Told.Any(told => told.Ratio == gear.Ratio.Value);

    /// <summary>What a gear is refused with that is no longer than the one before it.</summary>
    internal static Refusal CannotFollow(string text, double lower)
        => new("gears", Spoken($"Gears stand from the lowest to the top: {Shown.Quoted(text)} cannot follow {Rounded.Exact(lower)}."), "3.32 2.05 1.38 1.00 0.81");

    private static Refusal NoGear(string text)
        => new("gears", Spoken($"{Shown.Quoted(text)} tells no gear: write all forward gears, the lowest first, the top gear alone, or some by their names."), "1:3.32 5:0.81");

    private static Gear Gear(ToldGear told, string name) => new(name, new(told.Ratio, Source.OwnersWord, told.Text));

    private static int? Number(ToldGear gear) => int.TryParse(gear.Name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
