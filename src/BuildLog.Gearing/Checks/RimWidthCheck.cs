using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres sit on rims of a width that suits them.</summary>
/// <remarks>The permitted band is from memory, see <see cref="RimWidth"/>: it may warn, never clash. The tyre maker's data sheet decides.</remarks>
internal sealed class RimWidthCheck : ICheck, ILookedAt
{
    private static string Limit => Spoken("rim width rule, from memory; the tyre maker's data sheet decides");

    public string Id => "rim-width";

    public string Title => Spoken("Rim width");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => driveline.Tyres is not { } tyres ? []
            : tyres.FrontPair is { } front ? [.. Judge(tyres, Spoken("rear ")), .. Judge(front, Spoken("front "))]
            : Judge(tyres, "");

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
    {
        if (driveline.Tyres is { Wheel: null }) yield return new(Position.Tyres, Spoken("rim width"), ReadIt);
        if (driveline.Tyres?.FrontPair is { Wheel: null }) yield return new(Position.FrontTyres, Spoken("rim width"), ReadIt);
    }

    private static string ReadIt => Spoken("read it on the wheel, such as 6J, or measure between the bead seats");

    private IEnumerable<Finding> Judge(TyreSet tyres, string where)
    {
        if (tyres is not { Wheel: { } wheel, Size: { } size }) yield break;

        var band = size.RimWidth;
        IReadOnlyList<Position> joint = [Position.Tyres];
        if (wheel.RimWidth is not { } width)
        {
            yield return this.Open(
                joint, Spoken($"Whether the {where}rims suit {size.Designation}"),
                [new(Spoken("the rim width is not known"), $"read it on the wheel, such as 6J, or measure between the bead seats; {Rounded.Exact(band.Low)} to {Rounded.Exact(band.High)} in would do")], Limit);
            yield break;
        }

        var wanted = new Window(Units.Inch.ToBase(band.Low), Units.Inch.ToBase(band.High));

        // Rims come in half inches; one that is a hair off by the caliper is still the one it is sold as.
        var room = Units.Inch.ToBase(1e-6);
        yield return this.Judged(new(
            joint, width.Value, Units.Inch, wanted,
            $"The {where}rims are {Said.Number(width.Value, Units.Inch, 2)} wide; {size.Designation} sits on {wanted.InWords(Units.Inch)}, best on {Rounded.Exact(band.Measuring)} in.",
            Limit)
        {
            LimitIsVerified = false,
            ByLimits = Verdicts.Judge(width.Value, new(wanted.Low - room, wanted.High + room), limitIsVerified: false),
            Cures = [$"rims of {wanted.InWords(Units.Inch)}", $"a tyre whose data sheet lists {Said.Number(width.Value, Units.Inch, 2)}"],
        });
    }
}
