using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

internal sealed class OverdriveEntries : PartEntries
{
    private static readonly TraitField<OverdriveComponent> Output = new(Trait.Output, new Later("Output"), new Later("flange or spline, such as flange 4 × 80 mm"), o => o.Output, (o, w) => o.Output = w);

    public override Component New() => new OverdriveComponent();

    protected override string NameHint => Spoken("such as Sorrel overdrive unit");

    protected override IEnumerable<Entry> SpecEntries(Component part)
        =>
        [
            new TextEntry("ratio", Spoken("Ratio"))
            {
                Initial = ((OverdriveComponent)part).OverdriveRatio?.Text ?? "",
                Hint = Spoken("engaged, such as 0.78, or 25 % as it is sold"),
                Check = Forms.Checks.IfTyped("ratio", OverdriveUnit.Read),
            },
            new TextEntry("teeth", Spoken("Teeth, if counted"))
            {
                Initial = ((OverdriveComponent)part).Teeth is { } teeth ? FormattableString.Invariant($"{teeth.Ring}/{teeth.Sun}") : "",
                Hint = Spoken("planetary set, ring/sun, such as 78/22"),
                Check = Forms.Checks.IfTyped("teeth", ReadTeeth),
                Echo = values => ReadTeeth(values["teeth"]).Understood(out var typed)
                    ? Spoken($"ratio {Rounded.Fixed(typed.Overdriving, 3)}, exact{(Disagrees(values["ratio"], typed) ? Spoken($"; is it really {values["ratio"]}?") : "")}")
                    : null,
            },
            Output.Entry((OverdriveComponent)part),
        ];

    protected override void ApplySpec(FormValues values, Component part, Telling told)
    {
        var unit = (OverdriveComponent)part;
        unit.OverdriveRatio = told.Of(unit.OverdriveRatio, values["ratio"], text => Noted.Overdrive(text, told));
        unit.Teeth = values.IsEmpty("teeth") ? null : ReadTeeth(values["teeth"]).OrRefuse();
        Output.Apply(values, unit);
    }

    protected override Source? SourceOf(Component part) => ((OverdriveComponent)part).OverdriveRatio?.Source;

    private static Parsed<Planetary> ReadTeeth(string text)
        => Planetary.Read(text).Then(set => Parsed.From(() =>
        {
            _ = OverdriveUnit.Of(set);
            return set;
        })).In(text);

    private static bool Disagrees(string ratio, Planetary teeth) => OverdriveUnit.Read(ratio).Understood(out var quoted) && !quoted.Agrees(teeth.Overdriving);
}
