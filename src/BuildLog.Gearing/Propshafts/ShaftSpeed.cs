using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Propshafts;

/// <summary>How fast a propshaft turns.</summary>
/// <remarks>
/// <code>n_shaft = n_engine / (i_gear · i_overdrive · i_transfer) = v · i_axle / C</code>
/// <para>Speeds of rotation in rev/s; v road speed, m/s; C rolling circumference, m. An overdrive makes the shaft faster than the engine.</para>
/// <para>Uncertainty: through <see cref="Measured"/>. Not for: a slipping clutch or converter. Source: kinematics.</para>
/// </remarks>
public static class ShaftSpeed
{
    /// <param name="engine">Revolutions per second.</param>
    /// <param name="ratio">Engine turns per shaft turn: gearbox, overdrive and transfer case.</param>
    public static Measured FromEngine(Measured engine, Measured ratio) => engine / ratio;

    /// <param name="roadSpeed">Metres per second.</param>
    /// <param name="axle">Shaft turns per wheel turn.</param>
    /// <param name="circumference">Rolling circumference, metres.</param>
    public static Measured FromRoad(Measured roadSpeed, Measured axle, Measured circumference) => roadSpeed * axle / circumference;
}
