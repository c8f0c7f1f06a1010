using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Ratios;

/// <summary>The slips that turn a right count into a wrong ratio, as questions; the answer is the owner's.</summary>
/// <remarks>
/// <code>factor of two: 2 i or i / 2;   reciprocal: 1 / i, with one wheel held 4 / i;   hub reduction: i = i_diff · i_hub</code>
/// <para>
/// An open differential with one wheel held shows half the ratio, so a forgotten wheel halves or doubles. From 2.2 to 3.6 and from 4.4 to 7.2 both
/// readings would be an axle that is sold: there no number betrays the slip, only the note of how the wheels turned.
/// </para>
/// <para>One wheel held: i = 2 p / w, so the count turned round makes 2 w / p = 4 / i.</para>
/// <para>Usual ratios: axles of light vehicles 2.2 to 7.2, longest gears 0.5, from memory. So it may ask, never refuse.</para>
/// <para>Not for: heavy vehicles. Source: kinematics of the bevel differential; common practice.</para>
/// </remarks>
public static class RatioTraps
{
    /// <summary>Axle ratios of light vehicles without a hub reduction; from memory.</summary>
    public static readonly Window UsualAxle = new(2.2, 7.2);

    /// <summary>The longest gear that light vehicles usually have; from memory.</summary>
    private const double LongestGear = 0.5;

    /// <summary>What to ask before an axle's ratio is believed; nothing where it is a usual one.</summary>
    /// <param name="ratio">Propshaft turns per wheel turn, as counted or told.</param>
    /// <param name="teethCounted">Nobody turned a wheel, so no wheel can have been forgotten.</param>
    /// <param name="oneHeld">It was counted with one wheel held.</param>
    /// <param name="told">Nobody here counted it: it was read or heard somewhere.</param>
    public static IEnumerable<RatioQuestion> OfAxle(double ratio, bool teethCounted = false, bool oneHeld = false, bool told = false)
    {
        if (UsualAxle.Contains(ratio)) yield break;

        var why = Spoken($"axles of light vehicles usually have {UsualAxle.Low} to {UsualAxle.High}");
        var turnedRound = (oneHeld ? 4 : 1) / ratio;
        if (ratio < UsualAxle.Low && UsualAxle.Contains(turnedRound))
            yield return new(Spoken("Were the turns written the other way round, propshaft first?"), why, turnedRound);
        if (!teethCounted && ratio < UsualAxle.Low && UsualAxle.Contains(ratio * 2))
            yield return new(told ? Spoken("Was it once counted with one wheel standing still, and taken as if both had turned?") : OneStoodStill, why, ratio * 2);
        if (!teethCounted && ratio > UsualAxle.High && UsualAxle.Contains(ratio / 2))
            yield return new(told ? Spoken("Was it once counted with both wheels turning, and taken as if one had been held?") : BothTurned, why, ratio / 2);
        if (ratio > UsualAxle.High)
            yield return new(Spoken("Is there a reduction in the hubs? Enter it with the axle."), why, null);
    }

    /// <summary>A gear's count that turned round would be a ratio known for the gearbox, or that is longer than gears usually are.</summary>
    /// <param name="ratio">Input turns per output turn, as counted.</param>
    /// <param name="known">Ratios known for the gearbox; may be none.</param>
    public static RatioQuestion? OfGear(double ratio, IReadOnlyList<double> known)
    {
        var Asks = Spoken("Were the turns written the other way round, input first?");
        if (ratio < LongestGear) return new(Asks, Spoken($"gears are seldom longer than {LongestGear}"), 1 / ratio);
        return known.Count > 0 && !known.Any(one => Alike(one, ratio)) && known.Any(one => Alike(one, 1 / ratio))
            ? new(Asks, Spoken("it would be a ratio known for the gearbox"), 1 / ratio)
            : null;

        static bool Alike(double one, double other) => Math.Abs((one / other) - 1) < 0.02;
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
                yield return new(Spoken($"Was gear {name} written output over input?"), Spoken($"gear {name} is not faster than gear {gears[k - 1].Name}"), 1 / ratio);
            else if (k == 0 && gears.Count > 1 && ratio < 1)
                yield return new(Spoken($"Was gear {name} written output over input?"), Spoken("the lowest gear is not slower than direct"), 1 / ratio);
        }
    }

    /// <summary>A constant mesh that would turn the layshaft faster than the input; common practice, no source: it turns slower.</summary>
    public static RatioQuestion? OfConstantMesh(GearTrain train)
        => train.ConstantMesh is { Ratio: < 1 } mesh
            ? new(Spoken($"Was the constant mesh {mesh} written driver first?"), Spoken("a layshaft turns slower than the input"), 1 / mesh.Ratio)
            : null;

    /// <summary>How the wheels turned, where no number tells: had they turned otherwise, the ratio would be as usual as it is now; null where it would not.</summary>
    /// <param name="ratio">Propshaft turns per wheel turn, as counted.</param>
    /// <param name="oneHeld">It was counted with one wheel held.</param>
    public static RatioQuestion? OfWheels(double ratio, bool oneHeld)
    {
        var otherwise = oneHeld ? ratio / 2 : ratio * 2;
        if (!UsualAxle.Contains(ratio) || !UsualAxle.Contains(otherwise)) return null;

        return new(oneHeld ? BothTurned : OneStoodStill, Spoken("both would be usual axles, and no number tells them apart"), otherwise);
    }

    private static string OneStoodStill => Spoken("Did one wheel stand still, though the count says that both turned?");

    private static string BothTurned => Spoken("Did both wheels turn, though the count says that one was held?");

    /// <summary>Asks for the wheel that was forgotten where a count is twice or half of what is told.</summary>
    /// <param name="agrees">Whether the count, so many times, agrees with it.</param>
    public static IEnumerable<string> ForgottenWheel(Func<double, bool> agrees)
    {
        foreach (var (factor, asks) in ((double, string)[])[(2, OneStoodStill), (0.5, BothTurned)])
        {
            if (agrees(factor)) yield return Spoken($"{asks} Then count and tag agree.");
        }
    }
}
