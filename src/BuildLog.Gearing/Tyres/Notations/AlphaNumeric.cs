using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres.Tables;

namespace BuildLog.Gearing.Tyres.Notations;

/// <summary>A letter for the load, the aspect ratio, the rim: <c>G78-15</c>, <c>GR70-15</c>, <c>H78-15LT</c>.</summary>
/// <remarks>
/// <code>D = d + 2 S a,   S, a of the metric size that replaces it</code>
/// <para>The letter grows with the load, not with one dimension, so the width comes from the conversion to metric sizes; u(D) = 2 %.</para>
/// <para>Source: <see cref="LoadLetterTable"/>, from memory.</para>
/// </remarks>
internal sealed class AlphaNumeric : ITyreNotation
{
    public string Example => "G78-15";

    public Parsed<TyreSize> Read(Marking marking)
    {
        if (!marking.LoadLetter(out var letter, out var radial)) return marking.Stop(Spoken("a load letter such as G"));
        if (!marking.Number(out var series)) return marking.Stop(Spoken("the aspect ratio in per cent"));
        if (!LoadLetterTable.HasSeries(series)) return marking.Wrong(Spoken($"{series:0.##} is no aspect ratio of a size with a letter (78, 70, 60 or 50)"));
        if (LoadLetterTable.Find(letter, series) is not { } metric) return marking.Wrong(Spoken($"the letter {letter} is not among those known in the {series:0} series ({LoadLetterTable.Letters(series)})"));
        if (!marking.Cords(out var construction, out var rated)) return marking.Stop(Spoken("'-' for bias, or R for radial"));

        return RimCode.Read(marking).Then(rim =>
        {
            var lightTruck = marking.Take("LT");
            return ServiceDescription.Read(marking, rated).Then<TyreSize>(service => service.On(new TyreSize
            {
                Designation = marking.Designation,
                Notation = "alpha-numeric",
                SectionWidth = metric.Width / 1000,
                AspectRatio = series / 100,
                Construction = radial ? Construction.Radial : construction,
                IsCommercial = lightTruck,
                RimDiameter = rim * 0.0254,
                Dimensions = Dimensions.ByTable((rim * 0.0254) + (2 * metric.Width / 1000 * metric.Aspect), LoadLetterTable.Source, LoadLetterTable.Spread),
                RimWidth = RimWidth.OfMetric(metric.Width / 1000, metric.Aspect),
            }));
        });
    }
}
