using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Options;

/// <summary>A part of which only a few words are known: what an advert claims, a line of a list, a what-if.</summary>
/// <remarks>
/// What the words leave open is taken as on the part that is fitted: wheels, flanges, the gears below the top. All gears told are another box, of whose ends
/// nobody knows anything, as of one that is merely listed; so is any box on offer, and of its gears only those are known that were told
/// (<see cref="OfferedGearbox"/>). What was counted decides over what is said, and what is said stays beside it.
/// </remarks>
public static class ToldPart
{
    /// <param name="text">A ratio such as <c>3.36</c>, or teeth such as <c>37/11</c>; a hub reduction inside.</param>
    /// <param name="name">What to call it.</param>
    /// <param name="fitted">The axle in its place now; null for none.</param>
    public static Parsed<Axle> Axle(string text, string name, Axle? fitted)
        => QuotedRatio.ReadMeasured(text, RatioRange.Axle, Spoken("axle ratio"))
            .Then<Axle>(ratio => (fitted ?? new(name, null)) with { Name = name, Ratio = Told(ratio, text), Quoted = null });

    /// <summary>The axle of a claim.</summary>
    public static Parsed<Axle> Axle(Claim claim, string name, Axle? fitted)
    {
        var axle = Axle(claim.Decides, name, fitted);
        return claim.IsWordAlone ? axle : axle.Then<Axle>(counted => counted with { Ratio = AsCounted(counted.Ratio!), Quoted = Axle(claim.Said, name, fitted).Understood(out var said) ? said.Ratio : null });
    }

    /// <param name="text">A ratio such as <c>0.78</c>.</param>
    /// <param name="name">What to call it.</param>
    public static Parsed<Overdrive> Overdrive(string text, string name)
        => QuotedRatio.ReadMeasured(text, RatioRange.Overdrive, Spoken("overdrive ratio")).Then<Overdrive>(ratio => new Overdrive(name, Told(ratio, text)));

    /// <summary>The overdrive unit of a claim.</summary>
    public static Parsed<Overdrive> Overdrive(Claim claim, string name)
    {
        var unit = Overdrive(claim.Decides, name);
        return claim.IsWordAlone ? unit : unit.Then<Overdrive>(counted => counted with { Ratio = AsCounted(counted.Ratio!), Quoted = Overdrive(claim.Said, name).Understood(out var said) ? said.Ratio : null });
    }

    /// <param name="text">All forward gears from the lowest to the top, such as <c>3.32 2.05 1.38 1.00 0.81</c>; where a gearbox is fitted the top gear alone, or some by their names, such as <c>1:3.32 5:0.81</c>.</param>
    /// <param name="name">What to call it.</param>
    /// <param name="fitted">The gearbox in its place now; null for none.</param>
    public static Parsed<Transmission> Gearbox(string text, string name, Transmission? fitted) => ToldGears.Read(text).Then<Transmission>(told =>
    {
        var gears = told.Among(fitted?.Gears ?? []);
        return gears.Count < 2 ? new Refusal("gears", Spoken($"{Shown.Quoted(text)} is no gearbox: write all its forward gears, the lowest first."), "3.32 2.05 1.38 1.00 0.81")
            : gears[^1].Ratio.Value.Value >= gears[^2].Ratio.Value.Value ? ToldGears.CannotFollow(gears[^1].Ratio.Says, gears[^2].Ratio.Value.Value)
            : told.IsTopAlone || told.AreNamed ? (fitted ?? new(name, [])) with { Name = name, Gears = gears }
            : new Transmission(name, gears) { Converter = fitted?.Converter };
    });

    /// <summary>The gearbox of a claim; what is said of gears that nobody counted stands, and of gears that nobody told nothing is known.</summary>
    public static Parsed<Transmission> Gearbox(Claim claim, string name, Transmission? fitted)
        => OfferedGearbox.Of(claim, name).Then<Transmission>(box => box with { Converter = fitted?.Converter });

    /// <param name="text">A size such as <c>205/65R15</c>, or a rolling circumference such as <c>2.05 m</c>.</param>
    /// <param name="name">What to call it.</param>
    /// <param name="fitted">The set in its place now; null for none.</param>
    public static Parsed<TyreSet> Tyres(string text, string name, TyreSet? fitted)
    {
        var wheels = (fitted ?? new(name, null, null)) with { Name = name, FreeCircumference = null, LoadedRadius = null, FrontPair = null };
        if (!QuantityText.Read(text, Kind.Length).Understood(out var length))
            return TyreSizeText.Read(text).Then<TyreSet>(size => wheels with { Size = size, RollingCircumference = Told(size.RollingCircumference, text) });

        return length.Value is >= RollReading.Smallest and <= RollReading.Largest
            ? wheels with { Size = null, RollingCircumference = Told(Circumference(length), text) }
            : new Refusal("out-of-range", Spoken($"{Shown.Quoted(text)} is no rolling circumference of a road tyre: it lies between 0.8 and 6 m."), "2.05 m");
    }

    /// <summary>The tyres of a claim; what was rolled out keeps the size that is said.</summary>
    public static Parsed<TyreSet> Tyres(Claim claim, string name, TyreSet? fitted)
    {
        var set = Tyres(claim.Decides, name, fitted);
        return claim.IsWordAlone ? set : set.Then<TyreSet>(rolled => rolled with
        {
            Size = rolled.Size ?? (Tyres(claim.Said, name, fitted).Understood(out var said) ? said.Size : null),
            RollingCircumference = AsCounted(rolled.RollingCircumference!),
        });
    }

    /// <summary>A rolling circumference that somebody states: as sure as its last digit, or as the ± typed with it.</summary>
    public static Measured Circumference(Typed length) => length.ToItsLastDigit(Spoken("rolling circumference"), Spoken("roll the tyres out with the vehicle standing on them"));

    internal static Known AsCounted(Known told) => told with { Source = Source.Measured };

    private static Known Told(Measured value, string text) => new(value, Source.OwnersWord, text.Trim());
}
