namespace BuildLog.Gearing.Propshafts;

/// <summary>One universal joint turning at an angle: what leaves it is not what enters.</summary>
/// <remarks>
/// <code>tan α₂ = tan α₁ / cos β;   ω₂ / ω₁ = cos β / (1 − sin² β · cos² α₁);   U = tan β · sin β</code>
/// <para>α₁ turn of the driving yoke, from where it lies in the plane of the angle; α₂ of the driven one; β working angle, radians; U swing of the output speed, both sides together, twice a turn.</para>
/// <para>Exact for a joint without play. Source: an industrial shaft maker's catalogue.</para>
/// </remarks>
public static class CardanJoint
{
    /// <summary>Output turn for an input turn, radians; both run on past a whole turn.</summary>
    public static double OutputTurn(double inputTurn, double angle)
    {
        // The two turns never part by a quarter turn, so the lag is found without a jump of the arc tangent.
        var (sin, cos) = Math.SinCos(inputTurn);
        return inputTurn + Math.Atan2(sin * cos * (1 - Math.Cos(angle)), (cos * cos * Math.Cos(angle)) + (sin * sin));
    }

    /// <summary>Swing of the output speed between its extremes, as a share of the input speed.</summary>
    public static double NonUniformity(double angle) => Math.Tan(angle) * Math.Sin(angle);
}
