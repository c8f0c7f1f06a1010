using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Wheels, bolt circles and four-wheel drive in print.</summary>
internal static class RunningGearTables
{
    // Studs, pitch circle, chord to the next stud and to the one after, mm to two places.
    private static readonly (int Studs, double Circle, double Adjacent, double SkipOne)[] Patterns =
    [
        (4, 98, 69.3, 98.0), (4, 100, 70.71, 100.0), (4, 101.6, 71.84, 101.6), (4, 108, 76.37, 108.0), (4, 114.3, 80.82, 114.3), (5,
        100, 58.78, 95.11), (5, 108, 63.48, 102.71), (5, 112, 65.83, 106.52), (5, 114.3, 67.18, 108.71), (5, 120, 70.53, 114.13), (5,
        120.65, 70.92, 114.74), (5, 127, 74.65, 120.78), (5, 130, 76.41, 123.64), (5, 135, 79.35, 128.39), (5, 139.7, 82.11, 132.86),
        (5, 150, 88.17, 142.66), (5, 165.1, 97.04, 157.02), (6, 114.3, 57.15, 98.99), (6, 120, 60.0, 103.92), (6, 127, 63.5, 109.99),
        (6, 130, 65.0, 112.58), (6, 135, 67.5, 116.91), (6, 139.7, 69.85, 120.98), (6, 170, 85.0, 147.22), (8, 165.1, 63.18, 116.74),
        (8, 170, 65.06, 120.21), (8, 180, 68.88, 127.28),
    ];

    public static PublishedSet ChordFactors() => new("Pitch circle over chord", "geometry, to the digits that tables of the trade have", Standing.Read,
    [
        .. new[] { (3, 1.1547), (4, 1.41421), (5, 1.7013), (6, 2.0), (8, 2.61313), (10, 3.23607) }
            .Select(row => new Figure($"{row.Item1} studs, adjacent", row.Item2, BoltCircle.Factor(row.Item1, Chord.Adjacent), 6e-6)),
        .. new[] { (4, 1.0), (5, 1.05146), (6, 1.1547), (8, 1.41421), (10, 1.7013) }
            .Select(row => new Figure($"{row.Item1} studs, skip-one", row.Item2, BoltCircle.Factor(row.Item1, Chord.SkipOne), 6e-6)),
    ]);

    // The chords are printed to 0.005 mm, which the factor carries into the circle.
    public static PublishedSet BoltCircles() => new("Bolt circles from chords, mm", "list of patterns; chords worked out apart from this code", Standing.FromMemory,
    [
        .. Patterns.SelectMany(row => new[]
        {
            new Figure($"{row.Studs} × {row.Circle} adjacent", row.Circle, Circle(row.Adjacent, row.Studs, Chord.Adjacent), 0.0051 * BoltCircle.Factor(row.Studs, Chord.Adjacent)),
            new Figure($"{row.Studs} × {row.Circle} skip-one", row.Circle, Circle(row.SkipOne, row.Studs, Chord.SkipOne), 0.0051 * BoltCircle.Factor(row.Studs, Chord.SkipOne)),
        }),
    ]);

    public static PublishedSet MatchLimits() => new("Front against rear axle, permitted %", "a transfer case maker's manual, p. 37", Standing.Read,
    [
        new("through shaft, low", 1.0, 100 * FourWheelMatch.Limits(FrontDrive.ThroughShaft).Low, 1e-12),
        new("through shaft, high", 1.5, 100 * FourWheelMatch.Limits(FrontDrive.ThroughShaft).High, 1e-12),
        new("declutch, low", 1.5, 100 * FourWheelMatch.Limits(FrontDrive.Declutch).Low, 1e-12),
        new("declutch, high", 2.0, 100 * FourWheelMatch.Limits(FrontDrive.Declutch).High, 1e-12),
        new("centre differential, low", 3.0, 100 * FourWheelMatch.Limits(FrontDrive.CentreDifferential).Low, 1e-12),
        new("centre differential, high", 3.0, 100 * FourWheelMatch.Limits(FrontDrive.CentreDifferential).High, 1e-12),
    ]);

    public static PublishedSet TyreSpeeds() => new("Speed a tyre must be made for, km/h", "a vehicle maker's service text", Standing.Read,
    [
        Figure.ToPlaces("145 km/h", 152.85, 2, TyreSpeed.Required(145)),
        Figure.ToPlaces("163 km/h", 171.13, 2, TyreSpeed.Required(163)),
        Figure.ToPlaces("172 km/h, European approval", 180.6, 1, TyreSpeed.RequiredByApproval(172)),
    ]);

    private static double Circle(double chord, int studs, Chord between) => BoltCircle.FromChord(Measured.Exact(chord / 1000), studs, between).Value * 1000;
}
