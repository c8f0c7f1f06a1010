using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Ratios;

/// <summary>The slips that turn a right count into a wrong ratio, as questions; the answer is the owner's.</summary>
/// <remarks>
/// <code>factor of two: 2 i or i / 2;   reciprocal: 1 / i;   hub reduction: i = i_diff · i_hub</code>
/// <para>
/// An open differential with one wheel held shows half the ratio, so a forgotten wheel halves or doubles. From 2.2 to 3.6 and from 4.4 to 7.2 both
/// readings would be an axle that is sold: there no number betrays the slip, only the note of how the wheels turned.
/// </para>
/// <para>Usual ratios: axles of light vehicles 2.2 to 7.2, from memory. So it may ask, never refuse.</para>
/// <para>Not for: heavy vehicles. Source: kinematics of the bevel differential; common practice.</para>
/// </remarks>
public static class RatioTraps
{
    /// <summary>Axle ratios of light vehicles without a hub reduction; from memory.</summary>
    public static readonly Window UsualAxle = new(2.2, 7.2);

    /// <param name="ratio">Propshaft turns per wheel turn, as counted or told.</param>
    /// <param name="teethCounted">Nobody turned a wheel, so no wheel can have been forgotten.</param>
    public static IEnumerable<RatioQuestion> OfAxle(double ratio, bool teethCounted = false)
    {
        if (UsualAxle.Contains(ratio)) yield break;

        var why = FormattableString.Invariant($"axles of light vehicles usually have {UsualAxle.Low} to {UsualAxle.High}");
        if (UsualAxle.Contains(1 / ratio))
            yield return new("Were the turns written the other way round, propshaft first?", why, 1 / ratio);
        if (!teethCounted && ratio < UsualAxle.Low && UsualAxle.Contains(ratio * 2))
            yield return new("Did one wheel stand still, though the count says that both turned?", why, ratio * 2);
        if (!teethCounted && ratio > UsualAxle.High && UsualAxle.Contains(ratio / 2))
            yield return new("Did both wheels turn, though the count says that one was held?", why, ratio / 2);
        if (ratio > UsualAxle.High)
            yield return new("Is there a reduction in the hubs? Enter it with the axle.", why, null);
    }

    /// <summary>A gear whose ratio is not below that of the gear before it, though turned round it would be.</summary>
    /// <param name="gears">Input turns per output turn, from the lowest gear to the top, with their names.</param>
    public static IEnumerable<RatioQuestion> OfGears(IReadOnlyList<(string Name, double Ratio)> gears)
    {
        for (var k = 0; k < gears.Count; k++)
        {
            var (name, ratio) = gears[k];
            var rises = k > 0 && ratio >= gears[k - 1].Ratio;
            if (rises && 1 / ratio < gears[k - 1].Ratio)
                yield return new($"Was gear {name} written output over input?", $"gear {name} is not faster than gear {gears[k - 1].Name}", 1 / ratio);
            else if (k == 0 && gears.Count > 1 && ratio < 1)
                yield return new($"Was gear {name} written output over input?", "the lowest gear is not slower than direct", 1 / ratio);
        }
    }

    /// <summary>Two-wheel counts between which no number decides: half or twice the ratio is as usual as the ratio itself.</summary>
    public static bool IsAmbiguous(double ratio) => UsualAxle.Contains(ratio) && (UsualAxle.Contains(ratio / 2) || UsualAxle.Contains(ratio * 2));
}
