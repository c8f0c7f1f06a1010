using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>A number that is not known, and the cheapest way to get it.</summary>
internal sealed record Missing(string What, Sentence Cure)
{
    /// <summary>The cheapest ways, where a check that stays silent names them too.</summary>
    public static string EnterPeaks => Spoken("enter peak torque and peak power with their engine speeds, from a data sheet");

    public static string WeighIt => Spoken("weigh the vehicle as it is driven, or enter the mass from its papers");

    public static string WeighItsAxles => Spoken("weigh the axles one by one");

    public static string ChooseBody => Spoken("choose the kind of body");

    public static string ChooseTyres => Spoken("choose the kind of tyre");

    public static string ReadDial => Spoken("read the small number on its dial: cable turns a mile or a kilometre");

    public static IEnumerable<Missing> Torque(Driveline driveline)
    {
        if (driveline.Engine is null) yield return new(Spoken("no engine is fitted"), Spoken("fit an engine"));
        else if (driveline.Engine.Torque is null)
            yield return new(driveline.Engine is { ToldTorque: null, ToldPower: null } ? Spoken("the engine's torque is not known") : Spoken("of the engine's torque only a peak is known"), EnterPeaks);
    }

    /// <summary>What the strength of a part asks of the engine.</summary>
    public static IEnumerable<Missing> PeakTorque(Driveline driveline)
        => driveline.Engine is { PeakTorque: null } ? [new(Spoken("the engine's peak torque is not known"), Spoken("enter the engine's peak torque, from a data sheet"))]
            : driveline.Engine is null ? Torque(driveline) : [];

    public static IEnumerable<Missing> Gears(Driveline driveline)
    {
        if (driveline.Transmission is null) yield return new(Spoken("no gearbox is fitted"), Spoken("fit a gearbox"));
        else if (driveline.Transmission.Gears.Count == 0) yield return new(Spoken("the gearbox has no ratios"), Spoken("enter the gear ratios"));
    }

    public static IEnumerable<Missing> HighRange(Driveline driveline)
    {
        if (driveline.TransferCase is { High: null }) yield return new(Spoken("the transfer case's high ratio is not known"), Spoken("enter the transfer case's high ratio"));
    }

    /// <summary>The gear of this name, or the top one for null, where it may be one of those that nobody told.</summary>
    public static IEnumerable<Missing> UntoldGear(Driveline driveline, string? name)
        => driveline.Transmission?.Untold is { } untold && (name is null ? untold.Top : driveline.Step(name) is null) ? [Told(untold)] : [];

    /// <summary>The lowest gear, where nobody told it.</summary>
    public static IEnumerable<Missing> UntoldFirst(Driveline driveline) => driveline.Transmission?.Untold is { First: true } untold ? [Told(untold)] : [];

    /// <summary>Gears that nobody told.</summary>
    public static Missing Told(UntoldGears untold) => new(untold.Says, untold.Cure);

    public static IEnumerable<Missing> LowRange(Driveline driveline)
    {
        foreach (var missing in UntoldFirst(driveline)) yield return missing;
        if (driveline.TransferCase is { Low: null }) yield return new(Spoken("the transfer case's low ratio is not known"), Spoken("count ten output turns of the transfer case in low"));
    }

    public static IEnumerable<Missing> Axle(Driveline driveline)
    {
        var axle = driveline.DrivingPosition.InWords();
        if (driveline.DrivingAxle is null) yield return new(Spoken($"no {axle} is fitted"), $"fit the {axle}");
        else foreach (var missing in Ratio(driveline, driveline.DrivingPosition)) yield return missing;
    }

    /// <summary>An axle's ratio, whether one is fitted there or not.</summary>
    public static IEnumerable<Missing> Ratio(Driveline driveline, Position axle)
    {
        if (driveline.AxleAt(axle)?.Ratio is null) yield return new(Spoken($"the {axle.InWords()} ratio is not known"), Spoken("count the axle's turns: ten wheel turns, one wheel held"));
    }

    /// <summary>Only the front wheels have tyres.</summary>
    public static Missing RearTyres => new(Spoken("only front tyres are fitted"), Spoken("fit the rear tyres, or fit this set as tyres if all wheels have it"));

    private static Missing FrontTyres => new(Spoken("the front tyres' circumference is not known"), Spoken("roll the front tyres out, or enter their size"));

    private static Missing Circumference => new(Spoken("the tyres' circumference is not known"), Spoken("roll the tyres out, or enter their size"));

    public static IEnumerable<Missing> Tyres(Driveline driveline)
    {
        if (driveline is { Tyres: null, LoneFrontTyres: not null }) yield return RearTyres;
        else if (driveline.Tyres is null) yield return new(Spoken("no tyres are fitted"), Spoken("fit tyres"));
        else if (driveline.DrivingTyres!.RollingCircumference is null) yield return Circumference;
    }

    /// <summary>What the torque at which an axle's tyres slip lacks.</summary>
    public static IEnumerable<Missing> ForWheelSlip(Driveline driveline, Position axle)
    {
        if (MassOnAxle.Of(driveline, axle) is null) yield return new(Spoken("the load on the driven wheels is not known"), WeighItsAxles);
        if (driveline.Tyres is null) foreach (var missing in Tyres(driveline)) yield return missing;
        else if (driveline.Tyres.On(axle).RollingCircumference is null) yield return axle == Position.FrontAxle && driveline.Tyres.FrontPair is not null ? FrontTyres : Circumference;
    }

    public static IEnumerable<Missing> Mass(Driveline driveline)
    {
        if (driveline.Load?.Mass is null) yield return new(Spoken("the mass is not known"), WeighIt);
    }

    public static IEnumerable<Missing> DrivenShare(Driveline driveline)
    {
        if (DrivenWheels.ShareInLowRange(driveline) is null) yield return new(Spoken("the load on the driven wheels is not known"), WeighItsAxles);
    }

    public static IEnumerable<Missing> Resistance(Driveline driveline)
    {
        foreach (var mass in Mass(driveline)) yield return mass;
        if (driveline.Load?.DragArea is null) yield return new(Spoken("the drag area is not known"), ChooseBody);
        if (driveline.Load?.RollingResistance is null) yield return new(Spoken("the rolling resistance is not known"), ChooseTyres);
    }

    private static IEnumerable<Missing> TorqueToTheRedline(Driveline driveline)
    {
        if (driveline.Engine is not { BeginsAboveRedline: true, Redline: { } redline, Torque: { } torque }) yield break;

        var rpm = Units.RevolutionPerMinute;
        yield return new(
            Spoken($"the torque curve begins at {Rounded.Value(torque.From, rpm)}, not below the redline of {Rounded.Value(redline.Value, rpm)}"),
            Spoken("correct the redline, or enter the engine's torque below it"));
    }

    /// <summary>All that pulling on the road needs.</summary>
    public static IEnumerable<Missing> ForPull(Driveline driveline)
        => [.. Torque(driveline), .. TorqueToTheRedline(driveline), .. Gears(driveline), .. HighRange(driveline), .. Axle(driveline), .. Tyres(driveline), .. Resistance(driveline)];
}
