using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres are no taller than the owner's limit: the arch, or the rule of the country.</summary>
/// <remarks>The design diameter, which tyres of one marking leave by up to some per cent: u = 1 %, see <see cref="TyreSize"/>.</remarks>
internal sealed class TyreDiameterCheck : ICheck
{
    public string Id => "tyre-diameter";

    public string Title => Spoken("Tyre diameter");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => goals.TyreDiameter is { } limit && driveline.Tyres is { } tyres
            ? new[] { tyres, tyres.FrontPair }.OfType<TyreSet>().Select(set => Judge(set, limit))
            : [];

    private Finding Judge(TyreSet set, LengthLimit limit)
    {
        IReadOnlyList<Position> joint = [Position.Tyres];
        if (set.Size is not { } size)
        {
            return this.Open(
                joint, Spoken($"Whether the tyres ({set.Name}) stay below {limit.Most.Text}"),
                [new(Spoken("their size is not known"), Spoken("read the tyre's marking, or measure from the ground to the top"))], Spoken("owner's limit"));
        }

        var diameter = size.FreeCircumferenceAsLabelled * (1 / Math.PI);
        var wanted = Window.AtMost(limit.Most.Value);
        return this.Judged(new(
            joint, diameter, Units.Millimetre, wanted,
            $"{size.Designation} stands {Said.Number(diameter, Units.Millimetre, 0)} high; wanted {limit.Most.Text} or less.",
            Spoken("owner's limit"))
        {
            Cures = [$"a tyre of {Said.OrLess(limit.Most.Value, Units.Millimetre, 0)} overall"],
        });
    }
}
