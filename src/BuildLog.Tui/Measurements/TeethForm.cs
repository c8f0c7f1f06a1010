using BuildLog.Data.Components;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for an axle's teeth, counted twice: two counts that agree make the ratio exact.</summary>
public static class TeethForm
{
    public static Form For(AxleComponent axle, Action<Action<AxleComponent>> save) => new()
    {
        Title = $"Count teeth: {axle.Name}",
        HelpPage = "Teeth",
        Cautions = Cautions.UnderTheFloor,
        SetUp = SetUps.Teeth,
        SaveCaption = "Keep",
        Entries =
        [
            new TextEntry("first", "First count") { Hint = "ring/pinion, such as 41/10", Check = Forms.Checks.Needed("first", Teeth.Read) },
            new TextEntry("second", "Second count") { Hint = "counted again from another tooth", Check = Second },
        ],
        Echo = values => Teeth.Read(values["first"]).Understood(out var teeth) ? [Says(axle, teeth)] : [],
        Save = values => Forms.Checks.Try(() => save(edited => edited.Teeth = Teeth.Read(values["first"]).OrRefuse())),
    };

    private static string? Second(FormValues values)
    {
        var second = Teeth.Read(values["second"]);
        if (!second.Understood(out var again)) return second.Refusal!.Sentence;
        return Teeth.Read(values["first"]).Understood(out var first) && first != again ? $"The counts differ, {first} and {again}: count until two agree." : null;
    }

    private static string Says(AxleComponent axle, Teeth teeth)
    {
        var ratio = $"Ratio {Rounded.Fixed(teeth.Ratio, 3)}, exact.";
        return axle.StatedRatio is { } stated && QuotedRatio.Read(stated.Text, RatioRange.Axle).Understood(out var quoted) && !quoted.Agrees(teeth.Ratio)
            ? $"{ratio} It was stated as {stated.Text}: the teeth decide."
            : ratio;
    }
}
