using BuildLog.Data.Goals;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Goals;

/// <summary>Asks for one limit that the owner sets: at least so much, or at most.</summary>
public static class LimitForm
{
    /// <param name="goal">A new limit, or one to be changed.</param>
    /// <param name="save">Stores it with the edit applied; refusals stay in the form.</param>
    /// <param name="units">The units to show; null for metric ones.</param>
    public static Form For(LimitGoalEntry goal, Action<Action<LimitGoalEntry>> save, UnitSystem? units = null)
    {
        var (says, example, refusal) = Asked(goal.Limited);
        var shown = units ?? UnitSystem.Metric;
        string Meant(FormValues values) => goal.Limited == Limited.TopSpeed ? shown.WithUnit(values["limit"]) : values["limit"];
        return new()
        {
            Title = Spoken($"Limit: {goal.Limited.InWords()}"),
            HelpPage = "Goal",
            Entries = [new TextEntry("limit", says) { Initial = goal.Limit, Hint = Spoken($"such as {example}"), Check = values => refusal(Meant(values))?.Sentence, Echo = OtherUnits.Of("limit", text => Quantity(goal.Limited, text, shown)) }],
            Save = values => Forms.Checks.Try(() => save(edited => edited.Limit = Meant(values))),
        };
    }

    // What has a unit is said in the other system; ratios and gradients are the same everywhere.
    private static Parsed<Typed> Quantity(Limited limited, string text, UnitSystem units) => limited switch
    {
        Limited.TopSpeed => CruiseGoal.ReadSpeed(text, units.Speed),
        Limited.TyreDiameter or Limited.TyreWidth or Limited.Track => QuantityText.ReadPlain(text, Kind.Length),
        _ => QuantityText.ReadPlain(text, Kind.Number),
    };

    private static (string Says, string Example, Func<string, Refusal?> Refusal) Asked(Limited limited) => limited switch
    {
        Limited.HillStart => (Spoken("At least"), "25 %", text => HillStartGoal.Read(text).Refusal),
        Limited.TopSpeed => (Spoken("At least"), "150 km/h", text => TopSpeedGoal.Read(text).Refusal),
        Limited.OverallLow => (Spoken("At least"), "40", text => OverallLowGoal.Read(text).Refusal),
        Limited.TyreDiameter => (Spoken("At most"), "790 mm", text => LengthLimit.ReadTyreDiameter(text).Refusal),
        Limited.TyreWidth => (Spoken("At most"), "225 mm", text => LengthLimit.ReadTyreWidth(text).Refusal),
        Limited.Track => (Spoken("At most"), "1450 mm", text => LengthLimit.ReadTrack(text).Refusal),
        _ => throw new ArgumentOutOfRangeException(nameof(limited), limited, "No such limit."),
    };
}
