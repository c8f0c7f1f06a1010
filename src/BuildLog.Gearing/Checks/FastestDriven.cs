using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Speeds;

namespace BuildLog.Gearing.Checks;

/// <summary>The fastest the tyres will run, and how that is known.</summary>
/// <param name="Speed">m/s.</param>
/// <param name="Text">The speed alone.</param>
/// <param name="Says">To end a sentence with, and what was assumed for it: <c>it reaches 165 ± 4 km/h in gear 4.</c></param>
/// <param name="ToKnow">What to enter where it may go faster than this; null where it cannot, or is only not asked to.</param>
/// <remarks>
/// What the vehicle reaches on the level, whatever is wanted of it. Where nobody can say that, the fastest that its owner wants to cruise or to go, and that
/// it is only wanted.
/// </remarks>
internal sealed record FastestDriven(Measured Speed, string Text, Sentence Says, string? ToKnow = null)
{
    private static Unit Unit => Units.KilometrePerHour;

    /// <summary>The wish it was taken from; null where it was computed.</summary>
    public Typed? Wish { get; private init; }

    /// <summary>What gears and redline allow, beside a wish; null where that is not known.</summary>
    public FastestDriven? AtMost { get; private init; }

    /// <summary>The slowest symbol that is surely fast enough; null above the table.</summary>
    public string? Symbol => TyreSpeed.SymbolFor(TyreSpeed.Required(Unit.FromBase(Speed.Interval95.High)));

    /// <summary>Null while nothing is known and nothing wanted.</summary>
    public static FastestDriven? Of(Driveline driveline, OwnersGoals goals)
        => Reached(driveline) ?? (Wanted(goals) is { } wanted
            ? wanted with { AtMost = Geared(driveline), ToKnow = Spoken("enter the engine's torque and redline, and the vehicle's mass, body and tyres: then its top speed is known") }
            : null);

    /// <summary>By the wishes alone.</summary>
    public static FastestDriven? Wanted(OwnersGoals goals)
        => goals.Cruise.Select(goal => goal.Speed).Concat(goals.TopSpeed is { } top ? [top.Speed] : []).MaxBy(speed => speed.Value) is { } wish
            ? new(wish.ToMeasured(Spoken("road speed")), wish.InWords, $"{wish.InWords} is wanted, and what it reaches is not known.") { Wish = wish }
            : null;

    private static FastestDriven? Geared(Driveline driveline)
    {
        if (driveline.Engine?.Redline is not { } redline || GearSpeeds.Of(driveline) is not { } speeds || driveline.Step(null) is null) return null;

        var longest = speeds.Steps.MinBy(step => step.Ratio.Value)!;
        var speed = speeds.RoadSpeed(longest, redline.Value);
        return new(speed, Rounded.Value(speed, Unit), $"its redline ends it at {Said.Number(speed, Unit, 0)} in gear {longest.InWords}.");
    }

    private static FastestDriven? Reached(Driveline driveline)
    {
        if (Pull.Of(driveline) is not { } pull || TopSpeed.Of(pull) is not { } top) return null;

        var speed = Said.Number(top.Likely, Unit, 0);
        var assumed = AssumedLoad.InWords(driveline);
        var text = Rounded.Value(top.Likely, Unit);
        return top switch
        {
            { Limit: not TopSpeedLimit.Unknown } => new(top.Likely, text, $"it reaches {speed} in gear {top.Step.InWords}.{assumed}"),
            { Most: not null } => new(top.Likely, text, $"it reaches {speed}, as far as the torque curve tells.{assumed}"),
            _ => new(top.Likely, text, $"it reaches {speed} at least.{assumed}", top.ToKnow),
        };
    }
}
