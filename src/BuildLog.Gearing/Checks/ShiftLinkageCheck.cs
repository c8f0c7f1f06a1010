using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Checks;

/// <summary>The driver can reach the gears: the gearbox has its lever or linkage.</summary>
/// <remarks>A swapped gearbox often comes without. There or not: geometry. Says nothing until somebody has looked.</remarks>
internal sealed class ShiftLinkageCheck : ICheck, ILookedAt
{
    private static string Limit => Spoken("geometry");

    public string Id => "shift-linkage";

    public string Title => Spoken("Shift linkage");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Transmission?.ShiftLinkage is not { } linkage) yield break;

        yield return linkage == Presence.Fitted
            ? this.Plain([Position.Transmission], Verdict.Fits, Because.Inside, Spoken("The gearbox has its shift linkage."), Limit)
            : this.Plain(
                [Position.Transmission], Verdict.Clash, Because.Outside, Spoken("The gearbox has no shift linkage, so nobody can change gear."), Limit,
                Spoken("the gearbox's own lever or linkage, from its donor"), Spoken("a linkage made to reach the driver"));
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline.Transmission is { ShiftLinkage: null } ? [new(Position.Transmission, Spoken("shift linkage"), Spoken("look whether lever and rods came with it"))] : [];
}
