using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speeds;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Factors fixed by definition, and the constants the trade computes speeds with.</summary>
internal static class UnitFactors
{
    public static PublishedSet Exact() => new("Unit factors", "NIST SP 811, appendix B", Standing.Read,
    [
        Is("inch in mm", 25.4, Units.Inch, Units.Millimetre),
        Is("foot in m", 0.3048, Units.Foot, Units.Metre),
        Is("mile in m", 1609.344, Units.Mile, Units.Metre),
        Is("mile in inches", 63360, Units.Mile, Units.Inch),
        Is("mile per hour in km/h", 1.609344, Units.MilePerHour, Units.KilometrePerHour),
        Is("mile per hour in m/s", 0.44704, Units.MilePerHour, Units.Spelt("m/s")!),
        Is("pound in kg", 0.45359237, Units.Spelt("lb")!, Units.Kilogram),
        Is("bar in kPa", 100, Units.Bar, Units.Spelt("kPa")!),
        Figure.ToRelative("pound-force per square inch in kPa", 6.894757293168361, Factor(Units.Spelt("psi")!, Units.Spelt("kPa")!), 1e-14),
    ]);

    public static PublishedSet SpeedConstants()
    {
        // One mile per hour, one inch, 1:1: what is left is the constant.
        var turning = new SpeedRelation { RoadSpeed = Units.MilePerHour.Factor, Gear = 1, Axle = 1 };
        double Rpm(double circumference) => Units.RevolutionPerMinute.FromBase((turning with { Circumference = circumference }).Solved().EngineSpeed!.Value);

        var metric = new SpeedRelation { EngineSpeed = 1 / 60.0, Gear = 1, Axle = 1 };
        double Kmh(Measured circumference) => Units.KilometrePerHour.FromBase((metric with { Circumference = circumference }).Solved().RoadSpeed!.Value);

        return new("Constants of the speed formula", "derived from NIST SP 811; 0.06 in a vehicle maker's calculation guide", Standing.Read,
        [
            Figure.ToPlaces("rev/min per mph, diameter in inches: 63360 / (60 π)", 336.13524, 5, Rpm(Math.PI * 0.0254)),
            Figure.ToPlaces("rev/min per mph, radius in inches: 63360 / (120 π)", 168.06762, 5, Rpm(2 * Math.PI * 0.0254)),
            Figure.ToRelative("rev/min per mph, circumference in inches", 1056, Rpm(0.0254), 1e-14),
            Figure.ToRelative("km/h per rev/min, circumference in m", 0.06, Kmh(1), 1e-14),
            Figure.ToPlaces("km/h per rev/min, radius in m: 2 π 60 / 1000", 0.376991, 6, Kmh(2 * Math.PI)),
        ]);
    }

    private static Figure Is(string name, double exact, Unit from, Unit to) => Figure.ToRelative(name, exact, Factor(from, to), 1e-15);

    private static double Factor(Unit from, Unit to) => to.FromBase(from.ToBase(1));
}
