using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>Reads a metric tyre marking: <c>205/65R15 94H</c>, <c>P215/75 R 15</c>, <c>LT235/85R16 120/116Q</c>, <c>175/80-13</c>.</summary>
/// <remarks>Letters may be large or small, spaces where people put them. R is radial; D, B or a dash is bias. Source: UN R30 and R54, par. 2.17.</remarks>
public static class TyreSizeText
{
    private const string Right = "205/65R15 94H";

    /// <summary>Reinforced, mud and snow, tubeless, with tube: said on many sidewalls, and nothing to the gearing.</summary>
    private static readonly string[] Remarks = ["XL", "RF", "M+S", "TL", "TT"];

    public static Parsed<TyreSize> Read(string text)
    {
        var marking = new Marking(text.Trim().ToUpperInvariant());
        if (marking.Text.Length is 0 or > 60) return Stop("a tyre size", text, marking);

        _ = marking.Take("LT") || marking.Take("P");
        if (!marking.Number(out var width)) return Stop("the section width in millimetres", text, marking);
        if (width is < 95 or > 555 || width != Math.Floor(width)) return Wrong($"{width:0.##} mm is no section width of a road tyre (95 to 555)", text);
        if (!marking.Take("/")) return Stop("'/' and the aspect ratio", text, marking);
        if (!marking.Number(out var aspect)) return Stop("the aspect ratio in per cent", text, marking);
        if (aspect is < 20 or > 110) return Wrong($"{aspect:0.##} is no aspect ratio (20 to 110)", text);

        var rated = marking.Take("Z");
        var radial = marking.Take("R");
        if (!radial && !marking.Take("D") && !marking.Take("B") && !marking.Take("-")) return Stop("R for radial, or '-' for bias", text, marking);
        if (!marking.Number(out var rim)) return Stop("the rim diameter in inches", text, marking);
        if (rim is < 8 or > 30) return Wrong($"{rim:0.##} is no rim diameter in inches (8 to 30)", text);
        _ = marking.Take("LT") || marking.Take("C");

        int? single = null, dual = null;
        string? symbol = null;
        var bracket = marking.Take("(");
        if (marking.Number(out var load))
        {
            if (!IsLoadIndex(load, out single)) return Wrong($"{load:0.##} is no load index (0 to {LoadIndex.Highest})", text);
            if (marking.Take("/"))
            {
                if (!marking.Number(out var second)) return Stop("the second load index", text, marking);
                if (!IsLoadIndex(second, out dual)) return Wrong($"{second:0.##} is no load index (0 to {LoadIndex.Highest})", text);
            }

            symbol = marking.Symbol();
            if (symbol is null) return Stop("a speed symbol such as H", text, marking);
            if (SpeedSymbol.LimitKmh(symbol) is null) return Wrong($"'{symbol}' is no speed symbol", text);
        }
        else if (bracket)
        {
            return Stop("a load index", text, marking);
        }

        if (bracket && !marking.Take(")")) return Stop("')'", text, marking);
        while (Array.Exists(Remarks, marking.Take)) { }
        if (!marking.AtEnd) return Stop("nothing more", text, marking);
        if (rated && symbol is not null && SpeedSymbol.LimitKmh(symbol) < 240) return Wrong($"ZR is above 240 km/h, which '{symbol}' is not", text);

        return new TyreSize
        {
            Designation = text.Trim(),
            SectionWidth = width / 1000,
            AspectRatio = aspect / 100,
            Construction = radial ? Construction.Radial : Construction.Bias,
            RimDiameter = rim * 0.0254,
            LoadIndex = single,
            LoadIndexDual = dual,
            SpeedSymbol = symbol,
        };
    }

    /// <summary>The same size with its tread worn by a typed depth.</summary>
    public static Parsed<TyreSize> WornBy(this TyreSize size, Typed depth)
        => depth.Value is >= 0 and <= 0.03
            ? size with { Worn = depth.Value }
            : new Refusal("worn", $"{Shown.Quoted(depth.Text)} is no tread depth: a tyre wears by 0 to 30 mm.", "4 mm");

    private static bool IsLoadIndex(double number, out int? index)
    {
        index = number == Math.Floor(number) && number <= LoadIndex.Highest ? (int)number : null;
        return index is not null;
    }

    private static Refusal Stop(string expected, string text, Marking marking)
        => new("tyre-size", marking.Position == 0
            ? $"{Shown.Quoted(text)} is no tyre size: {expected} should come first."
            : $"{Shown.Quoted(text)} is no tyre size: after {Shown.Quoted(marking.Taken)} {expected} is expected{(marking.AtEnd ? "" : $", not {Shown.Quoted(marking.Rest)}")}.", Right);

    private static Refusal Wrong(FormattableString what, string text)
        => new("tyre-size", $"{Shown.Quoted(text)} is no tyre size: {FormattableString.Invariant(what)}.", Right);
}
