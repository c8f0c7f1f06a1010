using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

/// <summary>A propshaft of one piece, or of two with a centre bearing.</summary>
internal sealed class PropshaftEntries : PartEntries
{
    private static IReadOnlyList<SpecField<PropshaftComponent>> Numbers =>
    [
        new(Spec.JointRating, Spoken("Joint rating"), Spoken("for long, from the maker's sheet, such as 900 Nm"), p => p.JointRating, (p, n) => p.JointRating = n),
        new(Spec.SlipStroke, Spoken("Slip stroke"), Spoken("fully in to fully out, such as 90 mm"), p => p.SlipStroke, (p, n) => p.SlipStroke = n),
        new(Spec.SlipOut, Spoken("Slip stands out"), Spoken("at ride height, such as 35 mm"), p => p.SlipOut, (p, n) => p.SlipOut = n)
        {
            Against = values => Spec.SlipStroke.Line().Read(values[nameof(Spec.SlipStroke)]).Understood(out var stroke) && Spec.SlipOut.Line().Read(values[nameof(Spec.SlipOut)]).Understood(out var standsOut)
                ? PropshaftComponent.PulledApart(stroke.Value, stroke.Text, standsOut.Value, standsOut.Text)?.Sentence
                : null,
        },
        new(Spec.OutputSide, Spoken("Output, side"), Spoken("gearbox output, front end high is +, such as 3.5 deg"), p => p.OutputSide, (p, n) => p.OutputSide = n),
        new(Spec.OutputPlan, Spoken("Output, plan"), Spoken("from above, front end right is +"), p => p.OutputPlan, (p, n) => p.OutputPlan = n),
        new(Spec.PinionSide, Spoken("Pinion, side"), Spoken("such as 3 deg"), p => p.PinionSide, (p, n) => p.PinionSide = n),
        new(Spec.PinionPlan, Spoken("Pinion, plan"), Spoken("from above"), p => p.PinionPlan, (p, n) => p.PinionPlan = n),
    ];

    private static IReadOnlyList<TraitField<PropshaftComponent>> Ends =>
    [
        new(Trait.FrontEnd, Spoken("Gearbox end"), Spoken("flange or slip spline, such as flange 4 × 80 mm"), p => p.FrontEnd, (p, w) => p.FrontEnd = w),
        new(Trait.RearEnd, Spoken("Axle end"), Spoken("such as flange 4 × 80 mm"), p => p.RearEnd, (p, w) => p.RearEnd = w),
    ];

    private static readonly IReadOnlyList<(string Id, string Caption)> Places = [("one", "Shaft"), ("two", "Rear shaft")];

    public override Component New() => PropshaftComponent.Unmeasured();

    protected override string NameHint => Spoken("such as Brackenridge 76 mm tube");

    protected override IEnumerable<Entry> SpecEntries(Component part)
    {
        var shaft = (PropshaftComponent)part;
        return
        [
            new ChoiceEntry("pieces", Spoken("Pieces"), [new("1", Spoken("one")), new("2", Spoken("two, with a centre bearing"))]) { Initial = shaft.Pieces.Count == 2 ? "2" : "1" },
            .. Places.SelectMany((place, k) => PieceEntries(place.Id, place.Caption, k < shaft.Pieces.Count ? shaft.Pieces[k] : new StatedPiece())),
            .. Numbers.Select(field => field.Entry(shaft)),
            .. Ends.Select(field => field.Entry(shaft)),
        ];
    }

    protected override void ApplySpec(FormValues values, Component part, Telling told)
    {
        var shaft = (PropshaftComponent)part;
        var pieces = shaft.Pieces;
        shaft.Pieces = [.. Places.Take(values["pieces"] == "2" ? 2 : 1).Select((place, k) => Piece(values, place.Id, k < pieces.Count ? pieces[k] : new StatedPiece(), told))];
        foreach (var field in Numbers) field.Apply(values, shaft, told);
        foreach (var field in Ends) field.Apply(values, shaft);
    }

    protected override Source? SourceOf(Component part) => ((PropshaftComponent)part).Pieces.Select(piece => piece.Length?.Source).FirstOrDefault();

    private static IEnumerable<Entry> PieceEntries(string id, string caption, StatedPiece piece)
    {
        Func<FormValues, bool>? shown = id == "two" ? values => values["pieces"] == "2" : null;
        return
        [
            Number($"{id}-outer", Spoken($"{caption}, tube"), Spoken("outer diameter, such as 76 mm"), piece.Outer, SpecSheet.ShaftOuter),
            Number($"{id}-wall", Spoken("  wall"), Spoken("such as 2.1 mm"), piece.Wall, SpecSheet.ShaftWall, values => TooThick(values[$"{id}-outer"], values[$"{id}-wall"])),
            Number($"{id}-length", Spoken("  length"), Spoken("joint centre to joint centre, such as 1.30 m"), piece.Length, SpecSheet.ShaftLength),
            Number($"{id}-side", Spoken("  side angle"), Spoken("front end high is +, such as 4 deg"), piece.Side, SpecSheet.ShaftSide),
            Number($"{id}-plan", Spoken("  plan angle"), Spoken("front end right is +"), piece.Plan, SpecSheet.ShaftPlan),
            new ChoiceEntry($"{id}-yokes", Spoken("  yokes"), [new("", Spoken("not said")), new(nameof(Yokes.InLine), Spoken("in one plane")), new(nameof(Yokes.QuarterTurn), Spoken("a quarter turn apart"))])
            {
                Initial = piece.Yokes?.ToString() ?? "",
                ShownWhen = shown,
            },
        ];

        TextEntry Number(string entry, string words, string hint, Noted? known, SpecLine line, Func<FormValues, string?>? against = null) => new(entry, words)
        {
            Initial = known?.Text ?? "",
            Hint = hint,
            Check = Forms.Checks.IfTyped(entry, line.Read, against),
            Echo = OtherUnits.Of(entry, line.Read),
            ShownWhen = shown,
        };
    }

    private static string? TooThick(string outer, string wall)
        => SpecSheet.ShaftOuter.Read(outer).Understood(out var tube) && SpecSheet.ShaftWall.Read(wall).Understood(out var thick) ? Tube.TooThick(tube.Value, thick.Value)?.Sentence : null;

    private static StatedPiece Piece(FormValues values, string id, StatedPiece known, Telling told) => new(
        told.Of(known.Outer, values[$"{id}-outer"], text => Noted.Of(SpecSheet.ShaftOuter, text, told)),
        told.Of(known.Wall, values[$"{id}-wall"], text => Noted.Of(SpecSheet.ShaftWall, text, told)),
        told.Of(known.Length, values[$"{id}-length"], text => Noted.Of(SpecSheet.ShaftLength, text, told)),
        Chosen<Yokes>(values[$"{id}-yokes"]),
        told.Of(known.Side, values[$"{id}-side"], text => Noted.Of(SpecSheet.ShaftSide, text, told)),
        told.Of(known.Plan, values[$"{id}-plan"], text => Noted.Of(SpecSheet.ShaftPlan, text, told)));
}
