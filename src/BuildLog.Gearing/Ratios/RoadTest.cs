using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speeds;

namespace BuildLog.Gearing.Ratios;

/// <summary>How well the instruments of a road test read, as half-widths.</summary>
/// <param name="RoadSpeed">Metres per second; satellite speed, held steady, is good to about 1 km/h.</param>
/// <param name="EngineSpeed">Revolutions per second; a rev counter in the dashboard to 50 rev/min at best.</param>
public sealed record RoadTestPrecision(double RoadSpeed = 1 / 3.6, double EngineSpeed = 50 / 60.0);

/// <summary>An axle's ratio from a drive: road speed by satellite, engine speed by a rev counter.</summary>
/// <remarks>
/// <code>i = n (1 − s) C / (v · i_gear · i_transfer)</code>
/// <para>n engine speed, rev/s; s converter slip, zero when locked or manual; C rolling circumference, m; v road speed, m/s; i ratios.</para>
/// <para>
/// Errors: both instruments rectangular, half-widths as given; gear and circumference bring their own. At 80 km/h it comes to two per cent or three, which
/// tells 3.42 from 3.73 and never 3.70 from 3.73.
/// </para>
/// <para>Not for: a climbing or slipping run, an unlocked converter of unknown slip, a rev counter nobody has compared. Source: <see cref="SpeedRelation"/>.</para>
/// </remarks>
public static class RoadTest
{
    private static readonly Evidence BySatellite = new(new Later("road speed of the road test"), _ => Spoken("time a measured kilometre at steady speed, or count the axle's turns"));

    private static readonly Evidence ByRevCounter = new(new Later("rev counter of the road test"), _ => Spoken("compare the rev counter with an optical one, or count the axle's turns"));

    /// <summary>The same of a vehicle whose gear and driven tyres are known; null where one of them is not, refused where no axle has such a ratio.</summary>
    /// <param name="driveline">As it was driven.</param>
    /// <param name="gear">The gear's name on the knob.</param>
    /// <param name="roadSpeed">Metres per second.</param>
    /// <param name="engineSpeed">Revolutions per second.</param>
    public static Parsed<Measured>? AxleRatio(Driveline driveline, string gear, double roadSpeed, double engineSpeed)
        => driveline.Step(gear) is { } step && driveline.DrivingTyres?.RollingCircumference is { } circumference
            ? (Parsed<Measured>?)Parsed.From(() => AxleRatio(roadSpeed, engineSpeed, step.Gear, circumference.Value, transfer: step.Transfer, slip: driveline.Transmission?.Converter?.CruiseSlip))
            : null;

    /// <param name="roadSpeed">Metres per second.</param>
    /// <param name="engineSpeed">Revolutions per second.</param>
    /// <param name="gear">Ratio of the gear driven in, an overdrive in it; the direct one is best.</param>
    /// <param name="circumference">Rolling circumference, metres.</param>
    /// <param name="how">How well the instruments read; null for the usual.</param>
    /// <param name="transfer">Transfer case; null for none.</param>
    /// <param name="slip">Converter slip as a share; null for locked or manual.</param>
    /// <exception cref="RefusedException">A standing vehicle or engine, impossible half-widths, or a ratio that no axle has.</exception>
    public static Measured AxleRatio(
        double roadSpeed, double engineSpeed, Measured gear, Measured circumference, RoadTestPrecision? how = null, Measured? transfer = null, Measured? slip = null)
    {
        how ??= new();
        if (!(roadSpeed is > 0 and < double.PositiveInfinity && engineSpeed is > 0 and < double.PositiveInfinity))
            throw new RefusedException("standing", Spoken($"A road test needs a rolling vehicle and a running engine: both speeds are more than 0, not {roadSpeed * 3.6:G4} km/h and {engineSpeed * 60:G4} rev/min."), "80 km/h");
        if (!(how.RoadSpeed >= 0 && how.RoadSpeed < roadSpeed && how.EngineSpeed >= 0 && how.EngineSpeed < engineSpeed))
            throw new RefusedException("precision", Spoken($"An instrument reads to 0 or more, and to less than what it shows, not to {how.RoadSpeed * 3.6:G4} km/h and {how.EngineSpeed * 60:G4} rev/min."), "1 km/h");

        var ratio = new SpeedRelation
        {
            RoadSpeed = Measured.From(roadSpeed, Input.Rectangular(Spoken("road speed by satellite"), how.RoadSpeed, BySatellite)),
            EngineSpeed = Measured.From(engineSpeed, Input.Rectangular(Spoken("rev counter"), how.EngineSpeed, ByRevCounter)),
            Gear = gear,
            Circumference = circumference,
            Transfer = transfer ?? 1,
            Slip = slip ?? 0,
        }.Solved().Axle!;
        _ = RatioRange.Axle.Checked(ratio.Value);
        return ratio;
    }
}
