using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The two yokes of a propshaft stand in one plane.</summary>
/// <remarks>
/// Two joints at equal angles cancel only with the inner yokes in one plane; a quarter turn apart they add: β_eq² = β₁² + β₂². A shaft pulled
/// apart at its spline goes together either way. Where the shake that is left at the fastest turn is known, it is no worse than that: see <see cref="TorsionalCheck"/>. Source: an industrial shaft maker's catalogue; a few degrees off are tolerable at low speed.
/// </remarks>
internal sealed class PhasingCheck : ICheck
{
    private static string Limit => Spoken("inner yokes in one plane, an industrial shaft maker's catalogue");

    public string Id => "phasing";

    public string Title => Spoken("Propshaft phasing");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => FittedShaft.Of(driveline).SelectMany(shaft =>
        {
            // It is only asked for where yokes stand wrong, and is one for the whole shaft.
            var shake = shaft.Shaft.Pieces.Any(piece => piece.Yokes == Yokes.QuarterTurn) ? new TorsionalCheck().OfShaft(driveline, goals, shaft) : null;
            return shaft.Shaft.Pieces.Select((piece, k) => Judge(shaft, piece, k, shake));
        });

    private Finding Judge(FittedShaft shaft, ShaftPiece piece, int k, Finding? shake) => piece.Yokes switch
    {
        Yokes.InLine => this.Plain(shaft.Joint, Verdict.Fits, Because.Inside, $"The yokes of {shaft.Named(k)} are in line.", Limit),
        Yokes.QuarterTurn when shake is { Verdict: Verdict.Fits, Value: { } left } => this.Plain(
            shaft.Joint, Verdict.Fits, Because.Inside,
            $"The yokes of {shaft.Named(k)} are a quarter turn apart: {Effect(shaft, k)}. All joints together leave {Said.Number(left, Units.RadianPerSecondSquared, 0)}, which is little enough.", Limit),
        Yokes.QuarterTurn => this.Plain(
            shaft.Joint, shake is null or { Verdict: Verdict.Clash } ? Verdict.Clash : Verdict.Watch, shake is null or { Verdict: Verdict.Clash } ? Because.Outside : Because.UnverifiedLimit,
            $"The yokes of {shaft.Named(k)} are a quarter turn apart: {Effect(shaft, k)}.", Limit,
            $"pull {shaft.Named(k)} apart at its spline and put it together with both yokes in one plane, or have a yoke welded anew"),
        _ => this.Open(
            shaft.Joint, Spoken($"Whether {shaft.Named(k)} is in phase"),
            [new(Spoken("how its yokes stand is not known"), $"look along the tube of {shaft.Named(k)}: are its two yokes in one plane?")], Limit),
    };

    private static string Effect(FittedShaft shaft, int k)
    {
        if (shaft.Shaft.Joints is not { } joints) return Spoken("its joints add up instead of cancelling");

        var one = Math.Max(joints[k].Compound.Value, joints[k + 1].Compound.Value);
        var both = Math.Sqrt(EquivalentAngle.Squared([joints[k], joints[k + 1]], [Yokes.QuarterTurn]).Value);
        return Spoken($"its joints add up to one of {Said.Number(both, Units.Degree, 1)}, and the end it drives swings by {Said.Number(CardanJoint.NonUniformity(Math.Max(one, both)), Units.PercentUnit, 1)} of its speed twice a turn");
    }
}
