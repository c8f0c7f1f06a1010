using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tyres;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Sheets;

/// <summary>Tyres and wheels of both axles for paper, against what each axle carries.</summary>
internal static class RunningGearOfVehicle
{
    public static IReadOnlyList<RunningGearRow> Of(Driveline driveline, UnitSystem units)
        => driveline.Tyres is { } tyres
            ? [Row(Spoken("Front"), tyres.On(Position.FrontAxle), driveline.AxleMasses?.Front, twin: false, units), Row(Spoken("Rear"), tyres, driveline.AxleMasses?.Rear, tyres.TwinRear, units)]
            : [];

    private static RunningGearRow Row(string axle, TyreSet tyres, Known? mass, bool twin, UnitSystem units) => new()
    {
        Axle = axle,
        Tyre = tyres.Size?.Designation,
        Wheel = tyres.Wheel is { } wheel ? InWords(wheel) : null,
        AxleMass = mass is null ? null : $"{Rounded.WithInterval(mass.Value, units.Mass)}, {mass.Source.InWords()}",
        TyresCarry = tyres.Size is { } size && TyreLoad.OfAxle(size, twin, tyres.PassengerOnTruck) is { } kilograms
            ? Rounded.WithUnit(Rounded.Fixed(Math.Floor(units.Mass.FromBase(kilograms)), 0), units.Mass) + (twin ? Spoken(", twin wheels") : "")
            : null,
        SpeedLimit = tyres.Size is { SpeedLimitKmh: { } limit, SpeedSymbol: { } symbol } ? $"{symbol}: {Speed(limit, units)}"
            : tyres.Size?.SpeedAboveKmh is { } above ? Spoken($"above {Speed(above, units)}")
            : null,
    };

    private static string Speed(int kmh, UnitSystem units) => Rounded.WithUnit(Rounded.Fixed(Math.Floor(units.Speed.FromBase(Units.KilometrePerHour.ToBase(kmh))), 0), units.Speed);

    private static string? InWords(Wheel wheel)
    {
        string?[] facts =
        [
            wheel.RimWidth is { } width ? Spoken($"rim {Rounded.WithInterval(width.Value, Units.Inch)} wide") : null,
            wheel.Offset is { } offset ? Spoken($"offset {Rounded.WithInterval(offset.Value, Units.Millimetre)}") : null,
            wheel.Bolting is { Studs: { } studs, PitchCircle: { } circle } ? FormattableString.Invariant($"{studs} × {Rounded.WithInterval(circle.Value, Units.Millimetre)}") : null,
            wheel.Bolting?.Bore is { } bore ? Spoken($"bore {Rounded.WithInterval(bore.Value, Units.Millimetre)}") : null,
        ];
        var known = facts.OfType<string>().ToList();
        return known.Count == 0 ? null : string.Join(", ", known);
    }
}
