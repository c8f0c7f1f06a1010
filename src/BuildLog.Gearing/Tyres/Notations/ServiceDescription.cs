using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres.Notations;

/// <summary>What stands behind every size: load index or two, speed symbol, and remarks that say nothing to the gearing.</summary>
/// <remarks>
/// <c>94H</c>, <c>120/116Q</c> (single and dual fitment), <c>(94Y)</c> in brackets for more than the symbol's speed, <c>8PR</c>, <c>XL</c>, <c>M+S</c>. A speed letter before the R
/// counts where no symbol follows: SR is S; VR and ZR only say above 210 and 240 km/h. Source: UN R30 and R54, par. 2.17 and 3.1; ZR, Directive 92/23/EEC, annex I;
/// VR and the brackets from memory.
/// </remarks>
internal sealed record ServiceDescription(int? LoadIndex, int? LoadIndexDual, string? SpeedSymbol, int? SpeedAbove)
{
    /// <summary>Reinforced, mud and snow, tubeless, with tube, white wall, load range.</summary>
    private static readonly string[] Remarks = ["XL", "RF", "M+S", "TL", "TT", "WW", "LRB", "LRC", "LRD", "LRE"];

    /// <summary>A size with what it is marked to carry and to stand.</summary>
    public TyreSize On(TyreSize size) => size with { LoadIndex = LoadIndex, LoadIndexDual = LoadIndexDual, SpeedSymbol = SpeedSymbol, SpeedAboveKmh = SpeedAbove };

    /// <param name="marking">Read up to the rim and its suffix.</param>
    /// <param name="rated">The speed letter that stood before the R.</param>
    public static Parsed<ServiceDescription> Read(Marking marking, char? rated)
    {
        int? single = null, dual = null;
        string? symbol = null;

        SkipRemarks(marking);
        var bracket = marking.Take("(");
        if (marking.Number(out var load))
        {
            if (!IsLoadIndex(load, out single)) return marking.Wrong(Spoken($"{load:0.##} is no load index (0 to {Tyres.LoadIndex.Highest})"));
            if (marking.Take("/"))
            {
                if (!marking.Number(out var second)) return marking.Stop(Spoken("the second load index"));
                if (!IsLoadIndex(second, out dual)) return marking.Wrong(Spoken($"{second:0.##} is no load index (0 to {Tyres.LoadIndex.Highest})"));
                if (dual > single) return marking.Wrong(Spoken($"the load index of single fitment stands first, and {single} is below {dual} of dual fitment"));
            }

            symbol = marking.Symbol();
            if (symbol is null) return marking.Stop(Spoken("a speed symbol such as H"));
            if (Tyres.SpeedSymbol.LimitKmh(symbol) is null) return marking.Wrong(Spoken($"'{symbol}' is no speed symbol"));
        }
        else if (bracket)
        {
            return marking.Stop(Spoken("a load index"));
        }

        if (bracket && !marking.Take(")")) return marking.Stop("')'");
        SkipRemarks(marking);
        if (!marking.AtEnd)
        {
            var nothingMore = marking.Stop(Spoken("nothing more"));
            return single is null && marking.Symbol() is { } alone && marking.AtEnd && Tyres.SpeedSymbol.LimitKmh(alone) is not null
                ? marking.Wrong(Spoken($"before the speed symbol {alone} a load index such as 94 is expected"))
                : nothingMore;
        }


        if (symbol is not null && Above(rated) is { } least && Tyres.SpeedSymbol.LimitKmh(symbol) < least)
            return marking.Wrong(Spoken($"{rated}R is above {least} km/h, which '{symbol}' is not"));
        if (symbol is not null) return bracket ? new ServiceDescription(single, dual, $"({symbol})", Tyres.SpeedSymbol.LimitKmh(symbol)) : new ServiceDescription(single, dual, symbol, null);
        return new ServiceDescription(single, dual, rated is null || Above(rated) is not null ? null : $"{rated}", Above(rated));
    }

    private static int? Above(char? rated) => rated switch
    {
        'V' => 210,
        'Z' => 240,
        _ => null,
    };

    private static void SkipRemarks(Marking marking)
    {
        while (Array.Exists(Remarks, marking.Take) || marking.PlyRating()) { }
    }

    private static bool IsLoadIndex(double number, out int? index)
    {
        index = number == Math.Floor(number) && number <= Tyres.LoadIndex.Highest ? (int)number : null;
        return index is not null;
    }
}
