using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The slip joint neither bottoms nor comes apart while the axle moves.</summary>
/// <remarks>
/// <code>spare in = out now − travel in ≥ 0, 10 mm kept;   spare out = stroke − out now − travel out ≥ 0, 25 mm of spline kept</code>
/// <para>Travel see <see cref="SlipTravel"/>: it has no axle arc in it, so a small spare is not yet a pass on a leaf-sprung axle. Bottoming is
/// geometry and clashes; the 10 mm, for the arc and for a bump stop that gives, and the 25 mm are common practice and may only warn.</para>
/// </remarks>
internal sealed class SlipTravelCheck : ICheck, ILookedAt
{
    // What stands out is written up to the next millimetre that does when it is typed, and is then known to half of one.
    private const double WrittenUp = 2e-3;

    private const double AMillimetre = 1e-3;

    private static string Limit => Spoken("geometry; 10 mm before it bottoms and 25 mm of spline kept, common practice");

    public string Id => "slip-travel";

    public string Title => Spoken("Slip joint travel");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => FittedShaft.Of(driveline).Where(shaft => shaft.Shaft.Slip is not null).SelectMany(shaft =>
        {
            var missing = Lacking(shaft).ToList();
            return missing.Count > 0
                ? [this.Open(shaft.Joint, Spoken($"Whether the {shaft.Position.InWords()}'s slip joint is long enough"), missing, Limit)]
                : Judge(shaft);
        });

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => FittedShaft.Of(driveline).Where(shaft => shaft.Shaft.Slip is null)
            .Select(shaft => new Unlooked(shaft.Position, Spoken("slip joint"), Spoken("measure how far it stands out at ride height, and pushed fully in and pulled fully out")));

    private IEnumerable<Finding> Judge(FittedShaft shaft)
    {
        var (stroke, stands) = (shaft.Shaft.Slip!.Stroke!.Value, shaft.Shaft.Slip.Out!.Value);
        var travel = SlipTravel.Of(
            shaft.Shaft.Pieces[^1].Length!.Value, shaft.Shaft.Line![^2].Side!.Value, shaft.Axle!.Travel!.Droop!.Value, shaft.Axle.Travel.Bump!.Value);
        var spareIn = stands - travel.In;
        var spareOut = stroke - stands - travel.Out;

        // What is named would be sure, measured no better than now: with this stroke, or where it is too short for any, with another.
        var least = travel.In.Value + SlipTravel.Clear + spareIn.Expanded95;
        var beyond = travel.Out.Value + SlipTravel.Engaged + spareOut.Expanded95;
        var written = Math.Ceiling((least + AMillimetre) * 1000) / 1000;
        var place = stroke.Value - beyond - WrittenUp > least
            ? Said.As($"{Said.AsTyped(new(least, stroke.Value - beyond), Units.Millimetre, 0)} out at ride height, with the stroke it has")
            : Said.As($"{Said.Number(written, Units.Millimetre, 0)} out at ride height, of a stroke of {Said.AsTyped(Window.AtLeast(written + AMillimetre + beyond), Units.Millimetre, 0)}");

        var bottoms = new TwoLimits(Window.AtLeast(SlipTravel.Clear), Window.AtLeast(0));
        yield return this.Judged(new(
            shaft.Joint, spareIn, Units.Millimetre, bottoms.Good,
            $"On the way to full bump the {shaft.Position.InWords()} shortens by {Said.Number(travel.In, Units.Millimetre, 0)}; its slip joint can go in by {Said.Number(stands, Units.Millimetre, 0)}, and {Said.OrMore(SlipTravel.Clear, Units.Millimetre, 0)} should be left.",
            Limit)
        {
            ByLimits = bottoms.Judge(spareIn),
            Reaches = bottoms.Straddled(spareIn),
            Cures = [$"a slip joint that stands {place}"],
        });

        var limits = new TwoLimits(Window.AtLeast(SlipTravel.Engaged), Window.AtLeast(0));
        yield return this.Judged(new(
            shaft.Joint, spareOut, Units.Millimetre, limits.Good,
            $"At full droop the {shaft.Position.InWords()} lengthens by {Said.Number(travel.Out, Units.Millimetre, 0)}, and {(spareOut.Value < 0 ? Said.As($"the spline comes apart, {Said.Number(-spareOut, Units.Millimetre, 0)} too short") : Said.As($"{Said.Number(spareOut, Units.Millimetre, 0)} of spline stays engaged"))}.",
            Limit)
        {
            ByLimits = limits.Judge(spareOut),
            Reaches = limits.Straddled(spareOut),
            Cures = [$"a slip joint that stands {place}"],
        });
    }

    private static IEnumerable<Missing> Lacking(FittedShaft shaft)
    {
        if (shaft.Shaft.Slip!.Stroke is null) yield return new(Spoken("the slip joint's stroke is not known"), Spoken("push the slip joint fully in and pull it fully out, and measure between"));
        if (shaft.Shaft.Slip.Out is null) yield return new(Spoken("how far it stands out is not known"), Spoken("measure the free spline at ride height, and again pushed fully in"));
        if (shaft.Shaft.Pieces[^1].Length is null) yield return new(Spoken("the shaft's length is not known"), Spoken("measure from joint centre to joint centre"));
        if (shaft.Shaft.Line?[^2].Side is null) yield return new(Spoken("the shaft's slope is not known"), Spoken("lay an angle gauge on the tube at ride height"));
        if (shaft.Axle?.Travel?.Droop is null) yield return new(Spoken("the droop is not known"), Spoken("lift the frame until the wheels hang, and measure the way"));
        if (shaft.Axle?.Travel?.Bump is null) yield return new(Spoken("the bump travel is not known"), Spoken("measure from the axle to its bump stop at ride height"));
    }
}
