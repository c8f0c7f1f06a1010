using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>Findings as the workbench says them.</summary>
public static class FindingsWords
{
    public static FindingsModel Of(IReadOnlyList<Finding> findings, UnitSystem units) => new([.. findings.Select(finding => Row(finding, units))]);

    public static VerdictCounts Count(IReadOnlyList<Finding> findings) => new(
        findings.Count(finding => finding.Verdict == Verdict.Clash),
        findings.Count(finding => finding.Verdict == Verdict.Open),
        findings.Count(finding => finding.Verdict == Verdict.Watch),
        findings.Count(finding => finding.Verdict == Verdict.Fits));

    /// <summary>The worst verdict that hangs at the joint before a position: of the findings it shares with a part further up.</summary>
    public static Verdict? AtJointBefore(Position position, IReadOnlyList<Finding> findings)
        => findings.Where(finding => finding.Between.Count > 1 && finding.Between.Max() == position).Select(finding => (Verdict?)finding.Verdict).Min();

    private static FindingRow Row(Finding finding, UnitSystem units) => new(
        finding.Verdict,
        finding.Title,
        finding.SaysIn(units.Shown),
        Place(finding.Between),
        Why(finding),
        Bar(finding),
        finding.CuresIn(units.Shown),
        finding.SettledBy,
        finding.Source,
        finding.Check);

    private static string Place(IReadOnlyList<Position> parts) => parts switch
    {
        [] => "",
        [var one] => Spoken($"at the {one.InWords()}"),
        _ => Spoken($"between {string.Join(Spoken(" and "), parts.Select(position => position.InWords()))}"),
    };

    // Splines and bolts have no interval: they go together or they do not.
    private static string Why(Finding finding) => finding.Because switch
    {
        Because.Inside when finding.Value is null => Spoken("What is known of it is as wanted."),
        Because.Outside when finding.Value is null => Spoken("What is known of it is not as wanted."),
        Because.Inside => Spoken("The whole 95 % interval is inside what is wanted."),
        Because.Outside => Spoken("The whole 95 % interval is outside what is wanted."),
        Because.Uncertainty => Spoken("The 95 % interval reaches over a limit: it cannot be said yet on which side the truth lies."),
        Because.UnverifiedLimit when finding.Value is null => Spoken("A doubt, not a limit: it may warn but not condemn."),
        Because.UnverifiedLimit when !finding.LimitIsVerified => Spoken("The limit is practice or memory, so it may warn but not condemn."),
        Because.UnverifiedLimit => Spoken("It is outside what is best, and no verified limit condemns it."),
        _ => Spoken("A number is missing."),
    };

    private static WindowBar? Bar(Finding finding)
    {
        if (finding is not { Value: { } value, Wanted: { } wanted }) return null;
        var unit = finding.Unit;
        var interval = value.Interval95;
        return new(
            unit.FromBase(interval.Low), unit.FromBase(value.Value), unit.FromBase(interval.High), Side(wanted.Low, unit), Side(wanted.High, unit),
            Spoken($"{Rounded.WithInterval(value, unit, finding.Reaches ?? wanted)}, wanted {wanted.InWords(unit)}"));
    }

    private static double? Side(double limit, Unit unit) => double.IsFinite(limit) ? unit.FromBase(limit) : null;
}
