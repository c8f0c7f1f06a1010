using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres are no wider than the owner's limit.</summary>
/// <remarks>
/// Formula, spread and source see <see cref="SectionOnRim"/>. On a rim of unknown width the marked width is taken.
/// </remarks>
internal sealed class TyreWidthCheck : ICheck
{
    public string Id => "tyre-width";

    public string Title => Spoken("Tyre width");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => goals.TyreWidth is { } limit && driveline.Tyres is { } tyres
            ? new[] { tyres, tyres.FrontPair }.OfType<TyreSet>().Select(set => Judge(set, limit))
            : [];

    private Finding Judge(TyreSet set, LengthLimit limit)
    {
        IReadOnlyList<Position> joint = [Position.Tyres];
        if (set.Size is not { } size)
        {
            return this.Open(
                joint, Spoken($"Whether the tyres ({set.Name}) stay within {limit.Most.InWords}"),
                [new(Spoken("their size is not known"), Spoken("read the tyre's marking, or measure across the side walls"))], Spoken("owner's limit"));
        }

        var width = set.Wheel?.RimWidth is { } rim ? SectionOnRim.Of(size, rim.Value) : SectionOnRim.Marked(size);
        var wanted = Window.AtMost(limit.Most.Value);
        return this.Judged(new(
            joint, width, Units.Millimetre, wanted,
            $"{size.Designation} is {Said.Number(width, Units.Millimetre, 0)} wide{(set.Wheel?.RimWidth is null ? "" : Spoken(" on its rim"))}; wanted {limit.Most.InWords} or less.",
            Spoken("owner's limit"))
        {
            Cures = [$"a tyre of {Said.OrLess(limit.Most.Value, Units.Millimetre, 0)} section"],
        });
    }
}
