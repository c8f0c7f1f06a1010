using BuildLog.Data.Fitments;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Fitments;

/// <summary>Asks what was really so of a fitment: where, from when to when, at which odometer readings and why.</summary>
public static class FitmentForm
{
    public static Form For(Fitment fitment, DateOnly today, Action<Action<FitmentFacts>> save) => new()
    {
        Title = Spoken($"Correct: {fitment.Component.Name}"),
        HelpPage = "History",
        Entries =
        [
            new ChoiceEntry("position", Spoken("Fitted as"), [.. fitment.Component.Positions.Select(position => new ChoiceOption(position.ToString(), position.InWords()))]) { Initial = fitment.Position.ToString() },
            DayEntry.Past("from", Spoken("Fitted on"), today, fitment.FromDay.InWords, Spoken("such as 3 May 2026 or, as far as known, spring 2024")) with { AnswersFor = FitForm.RefusedOfDay },
            OdometerEntry.Of("odometer", Spoken("Odometer"), fitment.Vehicle.OdometerUnit, fitment.FromOdometer),
            new TextEntry("reason", Spoken("Why")) { Initial = fitment.Reason },
            DayEntry.Past("to", Spoken("Off on"), today, "", Spoken("empty while it is fitted")) with { Initial = fitment.ToDay is { } to ? to.InWords : "" },
            OdometerEntry.Of("odometerOff", Spoken("Odometer then"), fitment.Vehicle.OdometerUnit, fitment.ToOdometer),
            new TextEntry("reasonOff", Spoken("Why off")) { Initial = fitment.ReasonOff },
        ],
        Save = values => Checks.Try(() => save(facts =>
        {
            facts.Position = Enum.Parse<Position>(values["position"]);
            (facts.FromDay, facts.Odometer, facts.Reason) = (DayEntry.In(values, "from", today), values["odometer"], values["reason"]);
            (facts.ToDay, facts.OdometerOff, facts.ReasonOff) = (values.IsEmpty("to") ? null : DayEntry.In(values, "to", today), values["odometerOff"], values["reasonOff"]);
        })),
    };
}
