using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Tests.Drivelines;

/// <summary>An invented car to be changed by each test: four gears, axle 4.10, tyres of 2.00 m, everything exact.</summary>
internal static class InventedCar
{
    public static readonly Driveline Plain = new()
    {
        Transmission = new("four-speed", [Gear("1", 3.5), Gear("2", 2.1), Gear("3", 1.4), Gear("4", 1)]),
        RearAxle = new("rear axle", Exactly(4.10)),
        Tyres = Rolling(2.00),
    };

    public static Gear Gear(string name, Measured ratio) => new(name, new(ratio, Source.MakersData));

    public static Known Exactly(Measured value) => new(value, Source.Measured);

    public static Axle Axle(Measured ratio) => new("axle", Exactly(ratio));

    public static TyreSet Rolling(Measured circumference) => new("tyres", Exactly(circumference), null);

    /// <summary>On 205/65R15 of the label alone, hub faces 1.5 m apart; with a rim's width in inches on wheels of ET 25.</summary>
    public static Driveline OnLabelledTyres(double? rim = null) => Plain with
    {
        RearAxle = Axle(4.10) with { HubFaces = Exactly(1.5) },
        Tyres = new("tyres", null, TyreSizeText.Read("205/65R15").OrRefuse()) { Wheel = rim is { } inches ? new(Exactly(inches * 0.0254), Exactly(0.025)) : null },
    };

    public static Measured Of(double value, double u, string name = "reading", Func<double, string>? settle = null)
        => Measured.From(value, new Input(name, u, new Evidence(name, settle)));

    public static CruiseGoal Goal(string speed, string engineSpeed, string tolerance = "", string gear = "")
        => CruiseGoal.Read(speed, engineSpeed, tolerance, gear).OrRefuse();
}
