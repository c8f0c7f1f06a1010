using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Tests.Published.Examples;

/// <summary>Rolling circumferences.</summary>
/// <remarks>
/// C1 to C3 are three other ways to a rolling circumference of 215/65R15, free radius 330.25 mm, that this engine does not go: it takes the loaded factor.
/// They have to lie inside what a label leaves open, 95 %.
/// </remarks>
internal static class TyreExamples
{
    private const double MillimetresInAMile = 1_609_344;

    public static IEnumerable<Figure> Printed =>
    [
        InsideTheLabel("C1 2π · 0.96 · R, the wrong way: mm (trade text)", 1991.01),
        Figure.ToPlaces("C4 867 turns a mile: rolling diameter, in (a club engineer's article)", 23.26, 2, RolledLoose(867, MillimetresInAMile).FreeDiameter!.Value / 0.0254),
    ];

    public static IEnumerable<Figure> WorkedOut =>
    [
        InsideTheLabel("C2 2π (⅔ R + ⅓ · 0.93 R): mm (a textbook's rule)", 2026.6),
        InsideTheLabel("C3 3.05 D: mm (tyre standard, from memory)", 2014.52),

        // Both prints are rounded to whole turns a mile, half a turn in 800.
        new("C5 867 turns a mile of 175/65R15: rolling over free (a club engineer's article)", 0.971, MillimetresInAMile / 867 / FreeMillimetres("175/65R15"), 0.0006),
        new("C6 821 turns a mile of 205/70R14: rolling over free (tyre shop's table)", 0.970767, MillimetresInAMile / 821 / FreeMillimetres("205/70R14"), 0.0006),
    ];

    private static Figure InsideTheLabel(string name, double millimetres)
    {
        var label = Read("215/65R15").RollingCircumference;
        return new(name, millimetres, label.Value * 1000, label.Expanded95 * 1000);
    }

    private static RollOut RolledLoose(double turns, double millimetres) => RollOut.Of([new RollReading(turns, millimetres / 1000, "a mile")], new RollOutPrecision(Loaded: false));

    private static double FreeMillimetres(string size) => Read(size).FreeCircumference * 1000;

    private static TyreSize Read(string size) => TyreSizeText.Read(size).OrRefuse();
}
