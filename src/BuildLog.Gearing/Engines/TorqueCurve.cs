using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Engines;

/// <summary>What an engine pulls at full load, over engine speed.</summary>
/// <remarks>
/// <code>T(n) through the points by <see cref="MonotoneCubic"/>, times 1 ± u;   P = 2 π n T</code>
/// <para>
/// T torque, N·m; n engine speed, rev/s; P power, W. One error for the whole curve: a dynamometer that reads high does so everywhere, so torques at
/// two engine speeds share it. Default u: 3 % for typed points (correction and dynamometer), see <see cref="PlausibleCurve"/> for a drawn one.
/// </para>
/// <para>Valid between its first and last point; it is never carried on beyond them. Net torque, at the conditions of its standard.</para>
/// </remarks>
public sealed class TorqueCurve
{
    /// <summary>From memory: makers' figures and rolling-road readings of one engine differ by some per cent.</summary>
    public const double UsualSpread = 0.03;

    private const int StepsPerPiece = 200;

    /// <summary>What a way from engine speed to road speed and back may lose, as a share.</summary>
    private const double Rounding = 1e-12;

    private readonly MonotoneCubic curve;
    private readonly Measured scale;
    private readonly double ceiling;

    private TorqueCurve(IReadOnlyList<TorquePoint> points, Source source, double spread, TorquePoint? mostPowerful = null)
    {
        (Points, Source) = (points, source);
        curve = new([.. points.Select(point => (point.EngineSpeed, point.Torque))]);
        var evidence = new Evidence(Spoken("torque curve"), _ => source == Source.Measured ? Spoken("have the engine's torque measured again, on another rolling road") : Spoken("have the engine's torque measured on a rolling road"));
        scale = spread == 0 ? 1 : Measured.From(1, new Input(Spoken("torque curve as a whole"), spread, evidence));
        StrongestPoint = points.MaxBy(point => point.Torque)!;
        // A data sheet that rounds may have more power at its torque peak than at its power peak.
        ceiling = mostPowerful is null ? double.PositiveInfinity : Math.Max(mostPowerful.Power, StrongestPoint.Power);
        MostPowerful = mostPowerful ?? Peak();
    }

    /// <summary>The points it goes through, by rising engine speed.</summary>
    public IReadOnlyList<TorquePoint> Points { get; }

    /// <summary>How they are known; assumed for a drawn curve.</summary>
    public Source Source { get; }

    /// <summary>Lowest engine speed it knows, rev/s.</summary>
    public double From => curve.Low;

    /// <summary>Highest engine speed it knows, rev/s.</summary>
    public double To => curve.High;

    /// <summary>Where torque peaks; the lower engine speed of two equal ones.</summary>
    public TorquePoint StrongestPoint { get; }

    /// <summary>Where power peaks.</summary>
    public TorquePoint MostPowerful { get; }

    /// <summary>From where on up to its strongest point it makes its peak, as nearly as two curves of one engine agree, rev/s.</summary>
    public double StrongFrom
    {
        get
        {
            var (peak, steps) = (StrongestPoint, StepsPerPiece * (Points.Count - 1));
            return Enumerable.Range(0, steps + 1).Select(k => peak.EngineSpeed - ((peak.EngineSpeed - From) * k / steps))
                .TakeWhile(n => TorqueAt(n) >= (1 - UsualSpread) * peak.Torque).Last();
        }
    }

    /// <summary>Peak torque, N·m.</summary>
    public Measured PeakTorque => scale * StrongestPoint.Torque;

    /// <summary>Peak power, W.</summary>
    public Measured PeakPower => scale * MostPowerful.Power;

    /// <param name="points">In any order.</param>
    /// <param name="source">How they are known.</param>
    /// <param name="spread">Standard uncertainty of the whole curve as a share of it.</param>
    /// <exception cref="RefusedException">Fewer than two points, or two of one engine speed.</exception>
    public static TorqueCurve Of(IReadOnlyList<TorquePoint> points, Source source = Source.MakersData, double spread = UsualSpread)
        => new(Ordered(points), source, spread);

    /// <summary>A curve that was drawn to a peak of power, which it meets and nowhere exceeds.</summary>
    internal static TorqueCurve Drawn(IReadOnlyList<TorquePoint> points, TorquePoint mostPowerful, double spread)
        => new(Ordered(points), Source.Assumed, spread, mostPowerful);

    /// <summary>Whether power falls at its end: then it falls beyond, too, and what it makes there is the most that it can.</summary>
    public bool EndsPastItsPowerPeak => MostPowerful.EngineSpeed < To * (1 - Rounding);

    /// <summary>Power at its last point, W.</summary>
    public Measured PowerAtEnd => scale * Points[^1].Power;

    /// <summary>Whether an engine speed, rev/s, lies between its first and last point, but for rounding.</summary>
    public bool Reaches(double engineSpeed) => engineSpeed >= From * (1 - Rounding) && engineSpeed <= To * (1 + Rounding);

    /// <summary>N·m at an engine speed in rev/s, without its uncertainty.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The curve does not reach there.</exception>
    public double TorqueAt(double engineSpeed)
        => Reaches(engineSpeed) ? Held(engineSpeed) : throw new ArgumentOutOfRangeException(nameof(engineSpeed), engineSpeed, "The curve does not reach that far.");

    /// <summary>N·m at an engine speed in rev/s; null where the curve does not reach.</summary>
    public Measured? At(Measured engineSpeed)
        => Reaches(engineSpeed.Value) ? engineSpeed.Map(Held, SlopeAt(engineSpeed.Value)) * scale : null;

    /// <summary>Watts at an engine speed in rev/s; null where the curve does not reach.</summary>
    public Measured? PowerAt(Measured engineSpeed) => At(engineSpeed) is { } torque ? torque * engineSpeed * (2 * Math.PI) : null;

    private static TorquePoint[] Ordered(IReadOnlyList<TorquePoint> points)
    {
        if (points.Count < 2) throw new RefusedException("torque", Spoken("A torque curve needs at least two points."), "1500:180 Nm and 3000:210 Nm");
        TorquePoint[] ordered = [.. points.OrderBy(point => point.EngineSpeed)];
        for (var k = 1; k < ordered.Length; k++)
        {
            if (ordered[k].EngineSpeed == ordered[k - 1].EngineSpeed)
                throw new RefusedException("torque", Spoken($"Two torques are given at {ordered[k].EngineSpeed * 60:0} rev/min."), "1500:180 Nm and 3000:210 Nm");
        }

        return ordered;
    }

    // An engine speed that is drawn a little past an end has the torque of the end.
    private double Held(double engineSpeed)
    {
        var within = Math.Clamp(engineSpeed, From, To);
        return Math.Min(curve.At(within), Allowed(within));
    }

    private double SlopeAt(double engineSpeed)
    {
        var within = Math.Clamp(engineSpeed, From, To);
        return curve.At(within) > Allowed(within) ? -Allowed(within) / within : curve.SlopeAt(within);
    }

    // Between two points of a falling curve the cubic may bulge over the power it was drawn to.
    private double Allowed(double engineSpeed) => ceiling / (2 * Math.PI * engineSpeed);

    // Power peaks between points; a fine walk is good to a thousandth of a piece, and there the power is flat.
    private TorquePoint Peak()
    {
        var steps = StepsPerPiece * (Points.Count - 1);
        return Enumerable.Range(0, steps + 1)
            .Select(k => Math.Min(To, From + ((To - From) * k / steps)))
            .Concat(Points.Select(point => point.EngineSpeed))
            .Select(n => new TorquePoint(n, curve.At(n)))
            .MaxBy(point => point.Power)!;
    }
}
