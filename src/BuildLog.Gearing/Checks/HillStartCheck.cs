using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Checks;

/// <summary>It pulls away on the owner's hill.</summary>
/// <remarks>
/// Limit: the owner's goal. Formula: <see cref="HillStart"/>; the truck trade's rule is told beside it, see <see cref="Startability"/>. Says nothing without
/// such a goal.
/// </remarks>
internal sealed class HillStartCheck : ICheck
{
    public string Id => "hill-start";

    public string Title => Spoken("Hill start");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (goals.HillStart is not { } goal) yield break;

        yield return HillStart.Of(driveline) is { } start
            ? Judge(driveline, start, goal)
            : this.Open(
                Between(driveline), Spoken("The steepest hill it starts on"),
                [.. Missing.ForPull(driveline), .. Missing.LowRange(driveline), .. Missing.DrivenShare(driveline)],
                Units.PercentUnit, goal.Wanted, Finding.OwnersGoal);
    }

    private Finding Judge(Driveline driveline, HillStart start, HillStartGoal goal)
    {
        var ends = start.EndedByGrip ? Spoken("the driven wheels spin first") : Spoken("the engine gives up first");
        return this.Judged(new(
            Between(driveline), start.Gradient, Units.PercentUnit, goal.Wanted,
            $"In gear {start.Step.Name} it starts on a hill of {Said.Number(start.Gradient, Units.PercentUnit)}, where {ends}; wanted {goal.Wanted.InWords(Units.PercentUnit)}.{ByRule(start.Pull)}{AssumedLoad.AtStart(driveline, start.EndedByGrip)}",
            Finding.OwnersGoal)
        {
            Cures = [Cure(driveline, start, goal.Gradient.Value)],
        });
    }

    private static Sentence ByRule(Pull pull)
    {
        if (Startability.Of(pull) is not { } gradient) return "";

        var rounded = Math.Round(gradient, 2);
        return Said.As($" The truck trade's rule, which knows no grip, gives {Said.Number(rounded, Units.PercentUnit, 0)} at {Said.Alone(pull.Driveline.Load!.Mass!.Value, Units.Kilogram)} as driven: {Startability.EnoughFor(rounded)}. The trade asks it of the gross mass, trailer and all.");
    }

    private static string Cure(Driveline driveline, HillStart start, double gradient)
    {
        var pull = start.Pull;
        if (start.EndedByGrip)
        {
            var asked = pull.Resistance.RollingResistance + gradient;
            var grip = driveline.Load!.Grip.Value;
            var share = (asked / grip) - (HillStart.Shift(driveline) * gradient);
            return share.Interval95.High > 1
                ? (asked / grip).Interval95.High > 1 ? Spoken($"all wheels driven, on ground and tyres with a grip of {Rounded.Fixed(Math.Ceiling((asked.Value / grip.Interval95.Low * grip.Value * 100) - 1e-9) / 100, 2)} or more") : Spoken("all wheels driven")
                : Spoken($"{Rounded.WithUnit(Rounded.Fixed(Math.Ceiling(share.Interval95.High * 100 - 1e-9), 0), Units.PercentUnit)} or more of the mass on driven wheels");
        }

        var times = pull.Resistance.At(0, gradient) / start.Force;
        return Spoken($"an overall low ratio of {Said.OrMore(LowRange.OverallRatio(driveline)!.Value * times.Interval95.High, Units.One, 1)}");
    }

    private static Position[] Between(Driveline driveline) => [Position.Engine, Position.Transmission, driveline.DrivingPosition, Position.Tyres];
}
