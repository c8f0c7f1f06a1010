using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Propshafts;

/// <summary>How close to its critical speed a shaft may run.</summary>
/// <remarks>
/// <code>n ≤ 0.65 n_c: good;   n ≤ 0.75 n_c: the limit;   not for long within 8 % of n_c / 2</code>
/// <para>n shaft speed; n_c critical speed of the piece. Joints shake a shaft twice a turn, so at half the critical speed they excite the bending.</para>
/// <para>Source: 0.75 and the 8 % read on a propshaft maker's page; 0.65, the usual caution, from memory.</para>
/// </remarks>
public static class WorkingShare
{
    /// <summary>Up to this share of the critical speed it fits; from memory.</summary>
    public const double Good = 0.65;

    /// <summary>Beyond this share it clashes.</summary>
    public const double Limit = 0.75;

    private const double HalfBand = 0.08;

    /// <summary>Shares of the critical speed at which a shaft should not be driven steadily.</summary>
    public static readonly Window HalfCritical = new(0.5 * (1 - HalfBand), 0.5 * (1 + HalfBand));
}
