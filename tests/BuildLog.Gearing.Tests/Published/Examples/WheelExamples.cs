using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Tests.Published.Examples;

/// <summary>Bolt circles, rims, tyre loads, and front against rear axle.</summary>
internal static class WheelExamples
{
    public static IEnumerable<Figure> WorkedOut =>
    [
        WorkedExamples.Sheet("H1 5 studs, 67.18 mm to the next: circle, mm", 114.293, Circle(67.18, Chord.Adjacent)),
        WorkedExamples.Sheet("H2 5 studs, 108.71 mm to the one after: circle, mm", 114.304, Circle(108.71, Chord.SkipOne)),
        WorkedExamples.Sheet("H3 loaded radii 365 and 360 mm, 3.73 and 3.73: % (transfer case maker's manual)", 1.36986, 100 * FourWheelMatch.LowSpeed(0.365, 0.360, 3.73, 3.73).Value),
        WorkedExamples.Sheet("H4 tyres alike, 4.10 in front of 4.11: % (transfer case maker's manual)", 0.243309, 100 * FourWheelMatch.LowSpeed(0.36, 0.36, 4.10, 4.11).Value),
        WorkedExamples.Sheet("H5 a passenger tyre of 800 kg on a truck: kg (US safety standard)", 727.273, TyreLoad.OfAxle(Read("215/75R15 100S"), passengerOnTruck: true)!.Value / 2),

        // Rims come in half inches.
        new("H6 0.75 of 225 mm: measuring rim, in (tyre retailer's technical page)", 6.6437, RimWidth.OfMetric(0.225, 0.65).Measuring, 0.25),
        WorkedExamples.Sheet("H7 offset from 25 to 0: wider track, mm", 50, 1000 * WheelPlace.TrackChange(0.025, 0, 1.45, 1.45).Value),

        // The limit was taken from this very print, to two places: this proves the typing.
        new("H8 marks 1½ in apart after ten turns of a 30 in tyre: % (trade press)", 0.163908, 100 * FourWheelMatch.Limits(FrontDrive.ClutchPack).Low, 0.005),
    ];

    private static double Circle(double millimetres, Chord between) => 1000 * BoltCircle.FromChord(millimetres / 1000, 5, between).Value;

    private static TyreSize Read(string size) => TyreSizeText.Read(size).OrRefuse();
}
