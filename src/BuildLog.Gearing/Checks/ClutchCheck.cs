using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The clutch, or the flexplate of a converter, passes on what the engine gives.</summary>
/// <remarks>
/// <code>rating / T_peak ≥ 1.2 fits;   below 1 it slips</code>
/// <para>
/// Peak torque at the flywheel. Below one is physics and a clash, unless the rating is only somebody's word; the fifth above one, for wear and heat, is common
/// practice from memory and warns. Says nothing until the rating was entered.
/// </para>
/// </remarks>
internal sealed class ClutchCheck : ICheck, ILookedAt
{
    internal const double Reserve = 1.2;

    private static readonly TwoLimits Limits = new(Window.AtLeast(Reserve), Window.AtLeast(1));

    public string Id => "clutch";

    public string Title => Spoken("Clutch or flexplate torque");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline is not { Engine: { } engine, Transmission: { Front.ClutchRating: { } rating } box }) yield break;

        Position[] between = [Position.Engine, Position.Transmission];
        var part = box.Converter is null ? Spoken("clutch") : Spoken("flexplate");
        if (engine.PeakTorque is not { } torque)
        {
            yield return this.Open(between, Spoken($"Whether the {part} holds"), Missing.PeakTorque(driveline), Units.One, Limits.Good, Source(part, rating));
            yield break;
        }

        var spare = rating.Value / torque;
        var judged = Limits.Judge(spare, limitIsVerified: rating.Source < Measurements.Source.OwnersWord);
        yield return this.Judged(new(
            between, spare, Units.One, Limits.Good,
            $"The engine gives {Said.Number(torque, Units.NewtonMetre, 0)}, the {part} passes on {Said.Number(rating.Value, Units.NewtonMetre, 0)}; {Rounded.Exact(Reserve)} times the engine's torque is wanted.",
            judged.Verdict == Verdict.Clash ? Source(part, rating) : Spoken("a fifth above the engine's torque, common practice"))
        {
            ByLimits = judged,
            Reaches = Limits.Straddled(spare),
            Cures = [$"a {part} rated for {Said.RatedOrMore(torque, Reserve)}"],
        });
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline is { Engine.PeakTorque: not null, Transmission: { Front.ClutchRating: null } box } ? [Unlooked.Rating(Position.Transmission, Spoken($"{(box.Converter is null ? Spoken("clutch") : Spoken("flexplate"))} rating"))] : [];

    private static string Source(string part, Known rating) => Spoken($"{part}'s torque rating, {rating.Source.InWords()}");
}
