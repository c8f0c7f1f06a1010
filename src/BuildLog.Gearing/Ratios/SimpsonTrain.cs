using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Ratios;

/// <summary>The three-speed automatic of two planetary gears on one sun shaft.</summary>
/// <remarks>
/// <code>i₁ = 1 + a + a/b,   i₂ = 1 + a,   i₃ = 1,   i_R = −1/b;   a = S/R of the input set, b = S/R of the output set</code>
/// <para>
/// 1st: ring of the input set drives, carrier of the output set held. 2nd: the sun shaft held. Reverse: the sun shaft drives, carrier of the output set
/// held. With equal sets i₁ = 2 + a and i_R = −1/a.
/// </para>
/// <para>
/// So three quoted ratios bind each other: i₁ = i₂ + (i₂ − 1) |i_R|. A box of this build whose ratios do not is mistyped or another box.
/// </para>
/// <para>Not for: Ravigneaux sets, boxes with an added overdrive. Source: the equation of <see cref="Planetary"/>, solved by hand.</para>
/// </remarks>
public sealed record SimpsonTrain(Planetary Input, Planetary Output)
{
    private double A => (double)Input.Sun / Input.Ring;

    private double B => (double)Output.Sun / Output.Ring;

    /// <summary>i₁, input turns per output turn.</summary>
    public double First => 1 + A + (A / B);

    /// <summary>i₂.</summary>
    public double Second => Input.SunHeld;

    /// <summary>Negative: it turns backwards.</summary>
    public double Reverse => Output.CarrierHeld;

    /// <summary>What first gear must be beside the other two; reverse as a plain number.</summary>
    public static Measured FirstBeside(Measured second, Measured reverse) => second + ((second - 1) * reverse);

    /// <summary>Typed ratios can be those of one such box: first lies where second and reverse put it, to the digits typed.</summary>
    public static bool CanBe(QuotedRatio first, QuotedRatio second, QuotedRatio reverse)
        => CanBe(first.ToMeasured(Spoken("first gear")), second.ToMeasured(Spoken("second gear")), reverse.ToMeasured(Spoken("reverse")));

    /// <summary>The same of ratios however they are known: |i₁ − FirstBeside(i₂, i_R)| within what is not known of it.</summary>
    public static bool CanBe(Measured first, Measured second, Measured reverse)
    {
        var apart = first - FirstBeside(second, reverse);
        return Math.Abs(apart.Value) <= apart.Expanded95 + 1e-9;
    }
}
