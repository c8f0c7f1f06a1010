using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Gear ratios printed beside their tooth counts.</summary>
internal static class GearsInPrint
{
    public static PublishedSet TwoStage() => new("Gears over a layshaft, from teeth", "service data of a three-speed box", Standing.Read,
    [
        Figure.ToPlaces("29/19 x 31/14", 3.38, 2, Ratio("29/19 x 31/14")),
        Figure.ToPlaces("29/19 x 25/22", 1.734, 3, Ratio("29/19 x 25/22")),
        Figure.ToPlaces("29/19 x 31/13, reverse over an idler", 3.64, 2, Ratio("29/19 x 31/13")),
    ]);

    public static PublishedSet TwoPlanetary() => new("First gear of three-speed automatics from second and reverse", "ratios as quoted in the trade", Standing.FromMemory,
    [
        First(2.52, 1.52, 1.92), First(2.45, 1.45, 2.22), First(2.46, 1.46, 2.17),
    ]);

    private static Figure First(double first, double second, double reverse)
        => Figure.ToPlaces(FormattableString.Invariant($"{first}/{second}/1, reverse {reverse}"), first, 2, SimpsonTrain.FirstBeside(second, reverse).Value);

    private static double Ratio(string text) => TwoStageGear.Read(text).OrRefuse().Ratio;
}
