using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres.Notations;

/// <summary>A rim's nominal diameter, marked in inches.</summary>
/// <remarks><code>d = code · 25.4 mm</code> Not rounded to whole millimetres, as the regulations' tables are. Source: UN R30 and R54, par. 2.17.1.3.</remarks>
internal static class RimCode
{
    public static Parsed<double> Read(Marking marking)
        => !marking.Number(out var rim) ? marking.Stop(Spoken("the rim diameter in inches"))
            : rim is < 8 or > 30 ? marking.Wrong(Spoken($"{rim:0.##} is no rim diameter in inches (8 to 30)"))
            : rim;
}
