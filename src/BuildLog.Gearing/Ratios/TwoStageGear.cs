using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>A gear of a manual box with a layshaft: constant mesh first, then the gear's own pair, teeth counted.</summary>
/// <remarks>
/// <code>i = (z_layshaft / z_input) · (z_output / z_layshaft gear)</code>
/// <para>z teeth; each pair driven over driver. Exact: no uncertainty.</para>
/// <para>
/// Direct gear couples input to output and has no teeth in it: enter 1. Reverse runs over an idler: a plain one is not in the ratio, a double one is a
/// third pair.
/// </para>
/// <para>Not for: transaxles without constant mesh, whose gears are one pair. Source: definition of a gear ratio; service data print it so.</para>
/// </remarks>
/// <param name="ConstantMesh">Layshaft gear over input gear; the same for every gear of the box.</param>
/// <param name="Own">Output gear over layshaft gear.</param>
public sealed record TwoStageGear(GearMesh ConstantMesh, GearMesh Own)
{
    private const string Right = "29/19 x 31/14";

    /// <summary>i, input turns per output turn; exact.</summary>
    public double Ratio => RatioRange.Gear.Checked(ConstantMesh.Ratio * Own.Ratio);

    /// <summary>The ratio without uncertainty, since teeth were counted.</summary>
    public Measured ToMeasured() => Ratio;

    /// <summary>Reads <c>29/19 x 31/14</c>: constant mesh, then the gear's own pair, driven first in each.</summary>
    public static Parsed<TwoStageGear> Read(string text)
    {
        var pairs = text.Split('x', 'X', '*', '·', '×');
        if (pairs.Length != 2)
            return new Refusal("teeth", Spoken($"{Shown.Quoted(text)} is not a gear of two pairs: write the constant mesh, x, the gear's own pair."), Right);

        return Pair(pairs[0], text).Then(first => Pair(pairs[1], text).Then(own => Parsed.From(() =>
        {
            var gear = new TwoStageGear(first, own);
            _ = gear.Ratio;
            return gear;
        })));
    }

    /// <summary>As it is read: <c>29/19 x 31/14</c>.</summary>
    public override string ToString() => $"{ConstantMesh} x {Own}";

    private static Parsed<GearMesh> Pair(string pair, string whole)
        => GearMesh.Read(pair) is { Refusal: { } refusal } ? refusal with { Message = $"{Shown.Quoted(whole)}: {refusal.Message}", Example = Right } : GearMesh.Read(pair);
}
