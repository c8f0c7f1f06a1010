using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Parts;

namespace BuildLog.Tui.Vehicles;

/// <summary>What a vehicle has to move and carry, and where it hangs its axles. All of it may stay open.</summary>
internal static class LoadEntries
{
    private const string NotSaid = "";

    private static IReadOnlyList<SpecField<Vehicle>> Masses =>
    [
        new(Spec.Mass, Spoken("Mass"), Spoken("as driven, such as 1450 kg"), v => v.Mass, (v, n) => v.Mass = n),
        new(Spec.FrontAxleMass, Spoken("On front axle"), Spoken("from the weighbridge, laden, such as 700 kg"), v => v.FrontAxleMass, (v, n) => v.FrontAxleMass = n),
        new(Spec.RearAxleMass, Spoken("On rear axle"), Spoken("such as 750 kg"), v => v.RearAxleMass, (v, n) => v.RearAxleMass = n),
        new(Spec.DrivenShare, Spoken("On driven wheels"), Spoken("such as 52 %; axle masses count first"), v => v.DrivenShare, (v, n) => v.DrivenShare = n),
        new(Spec.Altitude, Spoken("Altitude"), Spoken("above sea level, such as 300 m"), v => v.Altitude, (v, n) => v.Altitude = n),
        new(Spec.DragArea, Spoken("Drag area"), Spoken("Cd times area, if coasted down, such as 0.9 m2"), v => v.DragArea, (v, n) => v.DragArea = n),
        new(Spec.RollingResistance, Spoken("Rolling"), Spoken("resistance over weight, if known, such as 0.013"), v => v.RollingResistance, (v, n) => v.RollingResistance = n),
        new(Spec.GravityHeight, Spoken("Gravity height"), Spoken("centre of gravity above the road, such as 620 mm"), v => v.GravityHeight, (v, n) => v.GravityHeight = n),
        new(Spec.Wheelbase, Spoken("Wheelbase"), Spoken("such as 2650 mm"), v => v.Wheelbase, (v, n) => v.Wheelbase = n),
        new(Spec.FrontSprings, Spoken("Front springs"), Spoken("apart, middle to middle, such as 760 mm"), v => v.FrontSprings, (v, n) => v.FrontSprings = n),
        new(Spec.FrontPad, Spoken("  lie at"), Spoken("at the centre bolt, front high is +, such as 2 deg"), v => v.FrontPad, (v, n) => v.FrontPad = n),
        new(Spec.RearSprings, Spoken("Rear springs"), Spoken("such as 1020 mm"), v => v.RearSprings, (v, n) => v.RearSprings = n),
        new(Spec.RearPad, Spoken("  lie at"), Spoken("such as 0 deg"), v => v.RearPad, (v, n) => v.RearPad = n),
    ];

    // Laden, an axle pair carries the vehicle and its load; nothing on wheels carries twice itself. A tenth is for what was driven lighter than weighed.
    private const double LeastLaden = 0.9, MostLaden = 3;

    /// <summary>That axles and vehicle were weighed apart by more than any load, or that one axle would carry all of it; null where they go together, or the mass or both axles were not typed.</summary>
    public static (Spec Line, string Says)? Contradiction(FormValues values)
    {
        if (Kilograms(values, Spec.Mass) is not { } mass) return null;

        var (front, rear) = (Kilograms(values, Spec.FrontAxleMass), Kilograms(values, Spec.RearAxleMass));
        if (front is not null && rear is not null) return Laden(mass, front.Value, rear.Value) is { } apart ? (Spec.RearAxleMass, apart) : null;

        // A load lies over the rear axle: that one alone may carry more than the vehicle does empty.
        return front >= mass ? (Spec.FrontAxleMass, AllOnOne(Position.FrontAxle, front.Value, mass))
            : rear >= MostLaden * mass ? (Spec.RearAxleMass, AllOnOne(Position.RearAxle, rear.Value, mass))
            : null;
    }

    /// <summary>That the axles stand unusually; null where they do not, or too little was typed.</summary>
    public static string? Doubt(FormValues values)
    {
        if (Contradiction(values) is not null || Kilograms(values, Spec.FrontAxleMass) is not { } front) return null;

        return (Kilograms(values, Spec.RearAxleMass) is { } rear ? front + rear : Kilograms(values, Spec.Mass)) is { } both ? FrontShare.Doubt(front, both) : null;
    }

    private static string AllOnOne(Position axle, double carries, double mass)
        => Spoken($"The {axle.InWords()} would carry {Rounded.Exact(carries)} kg, all of the vehicle's {Rounded.Exact(mass)} kg or more, and the other axle nothing. Example: 1450 kg, on the axles 700 kg and 750 kg");

    private static string? Laden(double mass, double front, double rear)
    {
        var laden = (front + rear) / mass;
        return laden is >= LeastLaden and <= MostLaden
            ? null
            : Spoken($"The axles carry {Rounded.Exact(front + rear)} kg, and the vehicle has a mass of {Rounded.Exact(mass)} kg: laden, they carry that and its load. Example: 1450 kg, on the axles 700 kg and 750 kg");
    }

    private static double? Kilograms(FormValues values, Spec line)
        => QuantityText.Read(values[$"{line}"], Kind.Mass, Units.Kilogram).Understood(out var typed) ? typed.Value : null;

    public static IEnumerable<Entry> Entries(Vehicle vehicle) =>
    [
        .. Masses.SelectMany(field => (Entry[])[field.Entry(vehicle), .. Instead(field.Line, vehicle)]),
        Telling.Entry(SourceOf(vehicle), Spoken("how these are known; a weighbridge session counts before them")),
    ];

    // The class that stands in for a number nobody measured, beside it.
    private static IEnumerable<Entry> Instead(SpecLine line, Vehicle vehicle)
    {
        if (line == Spec.DragArea.Line()) yield return Class("body", Spoken("Or the body"), vehicle.BodyClass, BodyClass.All.Select(body => body.Name));
        if (line == Spec.RollingResistance.Line()) yield return Class("rolling", Spoken("Or the tyres"), vehicle.RollingClass, RollingClass.All.Select(tyre => tyre.Name));
    }

    public static void Apply(FormValues values, Vehicle vehicle)
    {
        var told = Telling.Of(values, SourceOf(vehicle));
        foreach (var field in Masses) field.Apply(values, vehicle, field.Line == Spec.Altitude.Line() ? Source.OwnersWord : told);
        vehicle.BodyClass = values.IsEmpty("body") ? null : values["body"];
        vehicle.RollingClass = values.IsEmpty("rolling") ? null : values["rolling"];
    }

    // Where it is driven is nobody's to measure.
    private static Source? SourceOf(Vehicle vehicle)
        => Masses.Where(field => field.Line != Spec.Altitude.Line()).Select(field => field.Get(vehicle)?.Source).FirstOrDefault(source => source is not null);

    private static ChoiceEntry Class(string id, string caption, string? now, IEnumerable<string> names)
        => new(id, caption, [new(NotSaid, Spoken("not said")), .. names.Select(name => new ChoiceOption(name, name))]) { Initial = now ?? NotSaid };
}
