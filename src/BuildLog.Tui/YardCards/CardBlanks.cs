using BuildLog.Data.Costs;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.YardCards;

/// <summary>What has to match, beside the box for what is found.</summary>
internal static class CardBlanks
{
    /// <summary>For every part: what an offer needs.</summary>
    /// <param name="most">What the hunted part may cost; null where nobody said.</param>
    public static IReadOnlyList<CardBlank> OfOffer(Money? most) => [new(Spoken("price"), "", most is null ? "" : Spoken($"at most {most}")), new(Spoken("yard, row, telephone"))];

    /// <summary>The first of the neighbours that is known: <c>springs 1070 mm</c>.</summary>
    public static string Matching(params IEnumerable<(string Whose, string? Words)> neighbours)
        => neighbours.Where(each => each.Words is not null).Select(each => $"{each.Whose} {each.Words}").FirstOrDefault() ?? "";

    /// <summary>What a length of a part is written down in.</summary>
    public static Unit OfLength(UnitSystem units) => units.Shown(Units.Millimetre);

    /// <summary><c>1070 mm</c>, or the inches of it.</summary>
    public static string? Length(Known? length, UnitSystem units)
    {
        if (length is null) return null;

        var shown = OfLength(units);
        return length.Value.IsExact && shown != Units.Millimetre ? Rounded.InFigures(length.Value, shown)
            : length.Value.IsExact ? Rounded.Value(length.Value, shown)
            : Rounded.WithUnit(Rounded.Fixed(shown.FromBase(length.Value.Value), Places(shown.FromBase(length.Value.Expanded95))), shown);
    }

    // No ± stands beside it, so its last figure is the one that was read: a millimetre leaves half a one on either side.
    private static int Places(double halfWidth) => Math.Max(0, -(int)Math.Floor(Math.Log10(2 * halfWidth)));

    /// <summary><c>5 x 114.3 mm</c>.</summary>
    public static string? Circle(Bolting? bolting, UnitSystem units)
        => bolting is { Studs: { } studs, PitchCircle: { } circle } ? FormattableString.Invariant($"{studs} x {Length(circle, units)}") : null;

    /// <summary>What the hunted part must have stands at the line it is about, or on one of its own.</summary>
    public static IReadOnlyList<CardBlank> With(IEnumerable<CardBlank> blanks, IEnumerable<MustHave> musts)
    {
        var lines = blanks.ToList();
        foreach (var must in musts)
        {
            var at = lines.FindIndex(line => IsAbout(line.What, must.What));
            var line = new CardBlank(at < 0 ? must.What : lines[at].What, at < 0 ? "" : lines[at].Unit, Spoken($"must {must.Text}"));
            if (at < 0) lines.Add(line);
            else lines[at] = line;
        }

        return lines;
    }

    // In the language spoken, or in the one of the code: who wrote it down may have spoken the other.
    private static bool IsAbout(Later line, string what)
        => line.Text.Contains(what, StringComparison.OrdinalIgnoreCase) || line.ToString().Contains(what, StringComparison.OrdinalIgnoreCase);
}
