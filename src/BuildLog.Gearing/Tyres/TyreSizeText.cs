using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres.Notations;

namespace BuildLog.Gearing.Tyres;

/// <summary>
/// Reads a tyre marking in any notation: <c>205/65R15 94H</c>, <c>LT235/85R16 120/116Q</c>, <c>195R14C</c>, <c>31x10.50R15LT</c>, <c>6.00-16</c>,
/// <c>7.50R16LT</c>, <c>G78-15</c>.
/// </summary>
/// <remarks>
/// Every notation tries; where none understands, the one that came furthest says where it stopped, the earlier one of two that came as far.
/// </remarks>
public static class TyreSizeText
{
    private const int Longest = 60;

    /// <summary>The commonest first.</summary>
    private static readonly ITyreNotation[] Notations = [new Metric(), new MetricWithoutAspect(), new Flotation(), new Numeric(), new AlphaNumeric()];

    /// <summary>Reads a marking of up to 60 signs; a refusal says what was understood and where reading stopped.</summary>
    public static Parsed<TyreSize> Read(string text)
    {
        if (text.Trim().Length is 0 or > Longest) return new Marking(text).Stop(Spoken("a tyre size")) with { Example = Notations[0].Example };

        Refusal? furthest = null;
        var reached = -1;
        foreach (var notation in Notations)
        {
            var marking = new Marking(text);
            var read = notation.Read(marking);
            if (read.Understood(out var size)) return size;
            if (marking.Position <= reached) continue;
            (furthest, reached) = (read.Refusal! with { Example = notation.Example }, marking.Position);
        }

        return furthest!;
    }

    /// <summary>Of the diameter, what the deepest tread is: a fortieth. Common practice, no source: 8 mm on a car's tyre, 20 on a large mud tyre.</summary>
    private const double DeepestTread = 1.0 / 40;

    /// <summary>The same size with its tread worn by a typed depth.</summary>
    public static Parsed<TyreSize> WornBy(this TyreSize size, Typed depth)
    {
        var deepest = Math.Min(0.03, Math.Floor(size.Dimensions.Diameter * DeepestTread * 1000) / 1000);
        return depth.Value >= 0 && depth.Value <= deepest
            ? size with { Worn = depth.Value }
            : new Refusal("worn", Spoken($"{Shown.Quoted(depth.Text)} is no tread depth: a tyre of this size wears by 0 to {deepest * 1000:0} mm."), "4 mm");
    }
}
