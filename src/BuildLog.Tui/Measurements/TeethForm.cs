using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for an axle's teeth, counted twice: two counts that agree make the ratio exact.</summary>
public static class TeethForm
{
    /// <param name="axle">The axle, open.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="known">The session that is put right.</param>
    public static Form For(AxleComponent axle, DateOnly today, Action<Action<TeethSession>> save, TeethSession? known = null) => new()
    {
        Title = SessionEntries.Title(Spoken("Count teeth"), axle.Name, known),
        HelpPage = "Teeth",
        Cautions = known is null ? Cautions.UnderTheFloor : [],
        SetUp = known is null ? SetUps.Teeth : [],
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            new TextEntry("first", Spoken("First count")) { Initial = known?.Readings[0] ?? "", Hint = Spoken("ring/pinion, such as 41/10"), Check = Forms.Checks.Needed("first", Teeth.Read) },
            new TextEntry("second", Spoken("Second count")) { Initial = known?.Readings[1] ?? "", Hint = Spoken("counted again from another tooth"), Check = Second },
            .. SessionEntries.For(today, known),
        ],
        Echo = values => Teeth.Read(values["first"]).Understood(out var teeth) ? [Says(axle, teeth)] : [],
        Save = values => Forms.Checks.Try(() => save(session =>
        {
            // What was counted a third time and more stays.
            session.Readings = [values["first"], values["second"], .. session.Readings.Skip(2)];
            SessionEntries.Apply(values, session, today);
        })),
    };

    /// <summary>The ratio, and what it does to the stated one.</summary>
    public static string Says(AxleComponent axle, Teeth teeth)
    {
        var ratio = Spoken($"Ratio {Rounded.Fixed(teeth.Ratio, 3)}, exact.");
        return axle.StatedRatio is { } stated && QuotedRatio.Read(stated.Text, RatioRange.Axle).Understood(out var quoted) && !quoted.Agrees(teeth.Ratio)
            ? Spoken($"{ratio} It was stated as {stated.InWords}: the teeth decide.")
            : ratio;
    }

    private static string? Second(FormValues values)
    {
        var second = Teeth.Read(values["second"]);
        if (!second.Understood(out var again)) return second.Refusal!.Sentence;
        return Teeth.Read(values["first"]).Understood(out var first) ? Parsed.From(() => TeethCounts.Agreed([first, again])).Refusal?.Message : null;
    }
}
