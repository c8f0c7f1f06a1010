using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Speedometers;

namespace BuildLog.Gearing.Options;

/// <summary>What sets a speedometer right beside other parts: another driven gear, or where it has none another correction.</summary>
/// <remarks>
/// Nobody swaps an axle for his speedometer: a gear on the cable costs little beside any part that is searched. So a way out whose speedometer would not fit is
/// judged with the gear that makes it fit, which counts as a part changed and whose price nobody has named.
/// </remarks>
/// <param name="Drive">What feeds the speedometer then.</param>
public sealed record DialChange(SpeedometerDrive Drive)
{
    private static readonly SpeedometerCheck Check = new();

    /// <summary>Teeth of the driven gear; null where a correction is changed.</summary>
    public int? DrivenTeeth => Drive.DrivenTeeth;

    /// <summary>Enough is known of a speedometer to set it right.</summary>
    internal static bool IsPossible(Driveline driveline) => driveline.Speedometer is { Wanted: not null, Drive: not null };

    /// <summary>The change that makes it fit, the truest first; where none does for certain, the one that likeliest does.</summary>
    /// <returns>Null where it fits as it is, or cannot be said, or where nothing that is made makes it better.</returns>
    internal static DialChange? For(Driveline driveline)
    {
        if (!IsPossible(driveline) || Look(driveline) is not { Verdict: Verdict.Clash or Verdict.Watch } now) return null;

        List<(DialChange Change, Finding Then)> better = [];
        foreach (var change in Tried(driveline.Speedometer!.Drive!, now).Select(drive => new DialChange(drive)))
        {
            if (Look(change.On(driveline)) is not { } then || then.Verdict <= now.Verdict) continue;
            if (then.Verdict == Verdict.Fits) return change;
            better.Add((change, then));
        }

        return better.Count == 0 ? null : better.MaxBy(each => Robustness.Of([each.Then])).Change;
    }

    /// <summary>The driveline with it.</summary>
    internal Driveline On(Driveline driveline) => driveline with { Speedometer = driveline.Speedometer! with { Drive = Drive } };

    private static Finding? Look(Driveline driveline) => Check.Look(driveline, OwnersGoals.None).FirstOrDefault();

    private static IEnumerable<SpeedometerDrive> Tried(SpeedometerDrive drive, Finding now)
    {
        if (drive is { DriveTeeth: { } on, DrivenTeeth: { } teeth })
        {
            return DrivenGear.Within(DrivenGear.Exactly(teeth, new(now.Value!)), SpeedometerCheck.Lawful).Where(gear => gear.IsMade && gear.Teeth != teeth)
                .Select(gear => SpeedometerDrive.Gears(on, gear.Teeth, drive.Pickup, drive.Correction.Value));
        }

        // The least that does, to two places: it reads truest.
        return now.Windows.Where(window => window.Position == Position.Speedometer).Select(window => window.SureWindow ?? window.Window)
            .Select(window => (Factor: Math.Ceiling((window.Low * 100) - 1e-9) / 100, window.High)).Where(each => each.Factor <= each.High)
            .Select(each => SpeedometerDrive.Pulses(drive.PerTurn / drive.Correction, drive.Pickup, each.Factor));
    }
}
