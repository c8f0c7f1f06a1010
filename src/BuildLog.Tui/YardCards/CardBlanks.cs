using BuildLog.Data.Hunting;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Sheet.Papers.Cards;

namespace BuildLog.Tui.YardCards;

/// <summary>What has to match, beside the box for what is found.</summary>
internal static class CardBlanks
{
    /// <summary>For every part: what an offer needs.</summary>
    public static readonly IReadOnlyList<CardBlank> OfOffer = [new("price"), new("yard, row, telephone")];

    /// <summary>The first of the neighbours that is known: <c>springs 1070 mm</c>.</summary>
    public static string Matching(params IEnumerable<(string Whose, string? Words)> neighbours)
        => neighbours.Where(each => each.Words is not null).Select(each => $"{each.Whose} {each.Words}").FirstOrDefault() ?? "";

    public static string? Millimetres(Known? length) => length is null ? null : Rounded.Value(length.Value, Units.Millimetre);

    /// <summary><c>5 x 114.3 mm</c>.</summary>
    public static string? Circle(Bolting? bolting)
        => bolting is { Studs: { } studs, PitchCircle: { } circle } ? FormattableString.Invariant($"{studs} x {Millimetres(circle)}") : null;

    /// <summary>What the hunted part must have stands at the line it is about, or on one of its own.</summary>
    public static IReadOnlyList<CardBlank> With(IEnumerable<CardBlank> blanks, IEnumerable<MustHave> musts)
    {
        var lines = blanks.ToList();
        foreach (var must in musts)
        {
            var at = lines.FindIndex(line => line.What.Contains(must.What, StringComparison.OrdinalIgnoreCase));
            var line = new CardBlank(at < 0 ? must.What : lines[at].What, at < 0 ? "" : lines[at].Unit, $"must {must.Text}");
            if (at < 0) lines.Add(line);
            else lines[at] = line;
        }

        return lines;
    }
}
