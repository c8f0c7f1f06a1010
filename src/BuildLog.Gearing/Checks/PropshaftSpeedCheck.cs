using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The propshaft stays clear of the speed at which it whips.</summary>
/// <remarks>
/// <code>share = n_max / n_c;   ≤ 0.65 fits, > 0.75 clashes</code>
/// <para>n_max see <see cref="FastestTurn"/>; n_c of the weakest piece, see <see cref="CriticalSpeed"/>; limits and their sources see <see cref="WorkingShare"/>.</para>
/// </remarks>
internal sealed class PropshaftSpeedCheck : ICheck, ILookedAt
{
    // The thickest tube that propshafts of light vehicles are made of, metres: common practice, no source.
    private const double ThickestMade = 0.13;

    private static string Limit => Spoken("0.65 of the critical speed, common practice; 0.75, a propshaft maker's page");

    public string Id => "propshaft-speed";

    public string Title => Spoken("Propshaft speed");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => FittedShaft.Of(driveline).Select(shaft =>
            FastestTurn.Of(driveline, goals, shaft) is { } fastest && shaft.Shaft.Pieces.All(piece => piece.Tube is not null)
                ? Judge(shaft, fastest).At(fastest, driveline)
                : this.Open(shaft.Joint, Spoken($"How close the {shaft.Position.InWords()} comes to its critical speed"), [.. Lacking(driveline, goals, shaft)], Limit));

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline) => FittedShaft.Unseen(driveline).Select(shaft => new Unlooked(shaft, Spoken("tube, length and joints"), Spoken("measure from joint centre to joint centre, across the tube and the joints' caps")));

    private Finding Judge(FittedShaft shaft, FastestTurn fastest)
    {
        var tubes = shaft.Shaft.Pieces.Select(piece => piece.Tube!).ToList();
        var weakest = CriticalSpeed.Weakest(tubes);
        var critical = CriticalSpeed.Of(weakest);
        var share = fastest.Speed / critical;
        var limits = new TwoLimits(Window.AtMost(WorkingShare.Good), Window.AtMost(WorkingShare.Limit));
        // From the upper end of the share, so that what is named would be sure.
        var wanted = critical.Value * share.Interval95.High / WorkingShare.Good;
        var thinnest = CriticalSpeed.ThinnestFor(weakest, wanted);
        return this.Judged(new(
            shaft.Joint, share, Units.PercentUnit, limits.Good,
            $"{Said.Capital(shaft.Named(tubes.IndexOf(weakest)))} turns {Said.Number(fastest.Speed, Units.RevolutionPerMinute, 0)} {fastest.At}, "
                + $"{Said.Number(share, Units.PercentUnit, 0)} of its critical {Said.Number(CriticalSpeed.Alone(weakest), Units.RevolutionPerMinute, 0)}; wanted {limits.Good.InWords(Units.PercentUnit)}.",
            Limit)
        {
            ByLimits = limits.Judge(share),
            Reaches = limits.Straddled(share),
            Cures = [
                $"{Said.AsTyped(Window.AtMost(CriticalSpeed.LongestFor(weakest, wanted)), Units.Millimetre, 0)} between joint centres; a centre bearing divides a shaft",
                .. thinnest <= ThickestMade ? [$"a tube of {Said.AsTyped(Window.AtLeast(thinnest), Units.Millimetre, 1)} across with the same wall"] : Array.Empty<Sentence>(),
            ],
        });
    }

    private static IEnumerable<Missing> Lacking(Driveline driveline, OwnersGoals goals, FittedShaft shaft)
    {
        for (var k = 0; k < shaft.Shaft.Pieces.Count; k++)
        {
            var (piece, name) = (shaft.Shaft.Pieces[k], shaft.Named(k));
            if (piece.Length is null) yield return new(Spoken($"the length of {name} is not known"), $"measure {name} from joint centre to joint centre");
            if (piece.Outer is null) yield return new(Spoken($"the tube diameter of {name} is not known"), $"measure the tube of {name} across with a caliper");
            if (piece.Wall is null) yield return new(Spoken($"the wall of {name} is not known"), $"take the wall of {name} from its maker, or weigh the shaft");
        }

        if (FastestTurn.Of(driveline, goals, shaft) is null) yield return new(Spoken("its fastest turn is not known"), Spoken("enter the engine's redline"));
    }
}
