using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speeds;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Speeds worked out in print or told in the trade.</summary>
internal static class WorkedSpeeds
{
    // A handbook gives engine speed per road speed; that fixes C/i, and with it every other speed.
    public static PublishedSet Handbooks() => new("Road speed in top gear", "factory handbooks quoted on a club list", Standing.Read,
    [
        Figure.ToPlaces("482 rev/min at 10 mph: mph at 3800 rev/min", 78.8, 1, FromHandbook(482, 3800)),
        Figure.ToPlaces("420 rev/min at 10 mph: mph at 3800 rev/min", 90.5, 1, FromHandbook(420, 3800)),
        Figure.ToPlaces("420 rev/min at 10 mph: mph per 1000 rev/min", 23.8, 1, FromHandbook(420, 1000)),
    ]);

    public static PublishedSet MakersGuideFromMemory() => new("Truck speeds through a transfer case", "a vehicle maker's calculation guide, formulas 1 and 2", Standing.FromMemory,
    [
        Figure.ToPlaces("n 900, C 3.185 m, 13.80 · 1.652 · 4.77", 1.58, 2, Kmh(900, 13.80, 4.77, 3.185, transfer: 1.652)),
        Figure.ToPlaces("n 1900, C 3.185 m, 0.84 · 1.007 · 4.77", 90, 0, Kmh(1900, 0.84, 4.77, 3.185, transfer: 1.007)),
        Figure.ToPlaces("the same with 4 % more engine speed", 93.6, 1, Kmh(1900 * 1.04, 0.84, 4.77, 3.185, transfer: 1.007)),
    ]);

    public static PublishedSet TextbookFromMemory() => new("Speeds at 4400 rev/min, rolling radius 12.59 in", "a textbook of vehicle dynamics", Standing.FromMemory,
    [
        Figure.ToPlaces("first gear 4.28, axle 2.92: mph", 26.4, 1, Mph(4400, 4.28, 2.92, 2 * Math.PI * 12.59 * 0.0254)),
        Figure.ToPlaces("first gear 4.28, axle 2.92: ft/s", 38.7, 1, Mph(4400, 4.28, 2.92, 2 * Math.PI * 12.59 * 0.0254) * 5280 / 3600),
        Figure.ToPlaces("fifth gear 1.00, axle 2.92: mph", 113, 0, Mph(4400, 1, 2.92, 2 * Math.PI * 12.59 * 0.0254)),
    ]);

    public static PublishedSet CommonPractice() => new("Facts of the trade", "told from shop to shop", Standing.CommonPractice,
    [
        Figure.ToPlaces("3000 rev/min, direct top, axle 3.0, 2.19 m: km/h", 131.4, 1, Kmh(3000, 1, 3.0, 2.19)),

        // 68.87 km/h · 4.77 / (0.06 · 2500) = 2.190 m: the statement is about the same tyre.
        Figure.ToPlaces("2500 rev/min, 4.77, 68.87 km/h: the circumference, m", 2.19, 2, Circumference(68.87, 2500, 4.77)),
        Figure.ToPlaces("2500 rev/min, axle 4.77, 2.19 m: km/h", 68.87, 2, Kmh(2500, 1, 4.77, 2.19)),
        Figure.ToPlaces("2500 rev/min, axle 43/9, 2.19 m: km/h", 68.76, 2, Kmh(2500, 1, new Teeth(43, 9).Ratio, 2.19)),
        Figure.ToPlaces("2500 rev/min, axle 4.77, a tyre 890 mm high that rolls π D: km/h", 88, 0, Kmh(2500, 1, 4.77, Math.PI * 0.890)),
        Figure.ToPlaces("88 km/h at 2500 rev/min with 4.77: that tyre's circumference, m", 2.80, 2, Circumference(88, 2500, 4.77)),
        new("120 km/h at 2500 rev/min on a 30 in tyre at π D: axle", 3, Axle(120, 2500, Math.PI * 30 * 0.0254), 0.01),
        Figure.ToPlaces("one wheel held, 10 wheel turns, 23.7 propshaft turns", 4.74, 2, TurnCount.Of([TurnReading.Read("10:23.7", Wheels.OneHeld).OrRefuse()], new CountPrecision()).Ratio.Value),

        // 43/9 is 4.7778, and goes by the name of 4.77.
        Figure.ToPlaces("the axle sold nearest to it, as a name", 4.77, 2, Math.Floor(NearestSold(4.74).Ratio * 100) / 100),
    ]);

    private static Teeth NearestSold(double ratio) => ListedRatios.Common.MinBy(teeth => Math.Abs(teeth.Ratio - ratio));

    private static double FromHandbook(double rpmAtTen, double rpm)
    {
        var handbook = new SpeedRelation { RoadSpeed = 10 * Units.MilePerHour.Factor, EngineSpeed = rpmAtTen / 60, Gear = 1, Axle = 1 }.Solved();
        return Units.MilePerHour.FromBase((handbook with { RoadSpeed = null, EngineSpeed = rpm / 60 }).Solved().RoadSpeed!.Value);
    }

    private static SpeedRelation Going(double rpm, double gear, double axle, double circumference, double transfer)
        => new() { EngineSpeed = rpm / 60, Gear = gear, Axle = axle, Circumference = circumference, Transfer = Measured.Exact(transfer) };

    private static double Kmh(double rpm, double gear, double axle, double circumference, double transfer = 1)
        => Units.KilometrePerHour.FromBase(Going(rpm, gear, axle, circumference, transfer).Solved().RoadSpeed!.Value);

    private static double Mph(double rpm, double gear, double axle, double circumference)
        => Units.MilePerHour.FromBase(Going(rpm, gear, axle, circumference, 1).Solved().RoadSpeed!.Value);

    private static double Circumference(double kmh, double rpm, double axle)
        => new SpeedRelation { RoadSpeed = kmh / 3.6, EngineSpeed = rpm / 60, Gear = 1, Axle = axle }.Solved().Circumference!.Value;

    private static double Axle(double kmh, double rpm, double circumference)
        => new SpeedRelation { RoadSpeed = kmh / 3.6, EngineSpeed = rpm / 60, Gear = 1, Circumference = circumference }.Solved().Axle!.Value;
}
