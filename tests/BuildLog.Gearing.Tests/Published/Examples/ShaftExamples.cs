using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tests.Published.Examples;

/// <summary>Propshafts, their joints, and the torque they see.</summary>
internal static class ShaftExamples
{
    private const double Degree = Math.PI / 180;
    private const double Inch = 0.0254;
    private const double Pound = 0.45359237;

    public static IEnumerable<Figure> Printed =>
    [
        Figure.ToPlaces("E3 2.15° and 2.50°: compound angle (shaft maker's manual)", 3.3, 1, new JointAngle(2.15 * Degree, 2.5 * Degree).Compound.Value / Degree),
        Figure.ToPlaces("E6 1500 rev/min, first joint 9°: second joint (engineering reference page)", 11.6, 1, ShaftTables.SecondAngle(1500, 9, TorsionalAcceleration.Limit)),
        Figure.ToPlaces("E7 1500 rev/min, first joint 0°: second joint (engineering reference page)", 7.3, 1, ShaftTables.SecondAngle(1500, 0, TorsionalAcceleration.Limit)),
    ];

    public static IEnumerable<Figure> WorkedOut =>
    [
        WorkedExamples.Sheet("E1 tube 3.5 × 0.083 in, 45 in: critical rev/min", 11231.1, Critical(3.5, 0.083, 45)),
        WorkedExamples.Sheet("E2 tube 3.0 × 0.083 in, 60 in: critical rev/min", 5393.67, Critical(3.0, 0.083, 60)),
        WorkedExamples.Sheet("E4 3° and 2° at 3000 rev/min: rad/s²", 150.323, Shake(3000, 3, 2)),
        WorkedExamples.Sheet("E4 4° and 3° at 3000 rev/min: rad/s²", 210.452, Shake(3000, 4, 3)),
        WorkedExamples.Sheet("E4 5° and 4° at 3000 rev/min: rad/s²", 270.581, Shake(3000, 5, 4)),
        WorkedExamples.Sheet("E4 6° and 5° at 3000 rev/min: rad/s²", 330.71, Shake(3000, 6, 5)),
        WorkedExamples.Sheet("E5 7° at 2500 rev/min: rad/s² (propshaft shop's page)", 1023.03, Shake(2500, 7, 0)),
        WorkedExamples.Sheet("E8 380 lb·ft · 3.5 · 0.85 · 2.72 · 0.95: low-gear torque, lb·ft (shaft maker's manual)", 2921.21,
            ShaftTorque.LowGear(380, 3.5, ShaftTorque.ManualEfficiency, 1, 2.72).Value),

        // The manual's 11.4 is 12 · 0.95, so nothing but rounding is between the pounds and the newtons.
        WorkedExamples.Sheet("E9 3500 lb, 15 in, axle 4.10: wheel-slip torque, lb·ft (shaft maker's manual)", 797.497,
            Units.PoundFoot.FromBase(ShaftTorque.WheelSlip(0.71, 3500 * Pound, 15 * Inch, 4.10).Value)),
        WorkedExamples.Sheet("E10 swing of a joint at 5° (industrial shaft maker's catalogue)", 0.00762514, CardanJoint.NonUniformity(5 * Degree)),
        WorkedExamples.Sheet("E11 1200 mm at 6°, 100 mm of droop: out, mm", 14.5315, 1000 * Travel.Out.Value),
        WorkedExamples.Sheet("E12 1200 mm at 6°, 80 mm of bump: in, mm", 5.70919, 1000 * Travel.In.Value),
    ];

    private static SlipTravel Travel => SlipTravel.Of(1.2, 6 * Degree, 0.100, 0.080);

    private static double Critical(double outer, double wall, double length) => 60 * CriticalSpeed.Of(new(outer * Inch, wall * Inch, length * Inch)).Value;

    private static double Shake(double rpm, double first, double second)
        => TorsionalAcceleration.Of(EquivalentAngle.Squared([new(first * Degree, 0), new(-second * Degree, 0)], [Yokes.InLine]), rpm / 60).Value;
}
