using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres.Notations;

/// <summary>Diameter and width in inches: <c>31x10.50R15LT</c>, <c>33x12.50-15</c>, <c>LT31x10.50R15 109Q</c>.</summary>
/// <remarks>
/// <code>D = (nominal − ½) · 25.4 mm</code>
/// <para>
/// The design diameter of a highway tread is half an inch less than the marking says; a traction tread stands some 6 mm higher. So u(D) = 1.5 %.
/// </para>
/// <para>Source: UN R54 annex 5 and TRA practice, from memory; the rule agrees with the nine rows remembered.</para>
/// </remarks>
internal sealed class Flotation : ITyreNotation
{
    /// <summary>What the design diameter is less than the marking, inches.</summary>
    internal const double BelowMarked = 0.5;

    public string Example => "31x10.50R15LT 109Q";

    public Parsed<TyreSize> Read(Marking marking)
    {
        _ = marking.Take("LT");
        if (!marking.Number(out var nominal)) return marking.Stop(Spoken("the diameter in inches"));
        if (nominal is < 22 or > 50) return marking.NotBegun(Spoken($"{nominal:0.##} is no tyre diameter in inches (22 to 50)"));
        if (!marking.Take("X") && !marking.Take("×")) return marking.Stop(Spoken("'x' and the section width in inches"));
        if (!marking.Number(out var width)) return marking.Stop(Spoken("the section width in inches"));
        if (width is < 6 or > 20) return marking.Wrong(Spoken($"{width:0.##} is no section width in inches (6 to 20)"));
        if (!marking.Cords(out var construction, out var rated)) return marking.Stop(Spoken("R for radial, or '-' for bias"));

        return RimCode.Read(marking).Then(rim =>
        {
            if (nominal - rim < 6) return marking.Wrong(Spoken($"a tyre of {nominal:0.##} in leaves no height over a rim of {rim:0.##} in"));
            _ = marking.Take("LT");
            return ServiceDescription.Read(marking, rated).Then<TyreSize>(service => service.On(new TyreSize
            {
                Designation = marking.Designation,
                Notation = "flotation",
                SectionWidth = width * 0.0254,
                Construction = construction,
                IsCommercial = true,
                RimDiameter = rim * 0.0254,
                Dimensions = Dimensions.ByFormula((nominal - BelowMarked) * 0.0254, Spoken("nominal diameter less half an inch (UN R54 annex 5, from memory)"), 0.015),
                RimWidth = RimWidth.OfFlotation(width),
            }));
        });
    }
}
