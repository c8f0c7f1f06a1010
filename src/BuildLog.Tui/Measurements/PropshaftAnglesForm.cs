using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks how the members of a shaft line lie, and says the joints' angles while it is typed.</summary>
public static class PropshaftAnglesForm
{
    private sealed record Member(string Id, string Caption, string Hint, SpecLine Side, SpecLine Plan);

    private static readonly IReadOnlyList<Member> Members =
    [
        new("output", "Output", "such as 3.5 deg", Spec.OutputSide.Line(), Spec.OutputPlan.Line()),
        new("shaft", "Shaft", "along the tube, such as 5 deg", SpecSheet.ShaftSide, SpecSheet.ShaftPlan),
        new("pinion", "Pinion", "such as 3 deg", Spec.PinionSide.Line(), Spec.PinionPlan.Line()),
    ];

    /// <param name="shaft">A shaft of one piece.</param>
    /// <param name="save">Stores it with the edit applied.</param>
    public static Form For(PropshaftComponent shaft, Action<Action<PropshaftComponent>> save) => new()
    {
        Title = $"Shaft angles: {shaft.Name}",
        HelpPage = "PropshaftAngles",
        Cautions = Cautions.UnderTheFloor,
        SetUp = SetUps.PropshaftAngles,
        SaveCaption = "Keep",
        Entries =
        [
            .. Members.SelectMany(member => new[]
            {
                new TextEntry(Side(member), $"{member.Caption}, side") { Hint = $"{member.Hint}; front end high is +", Check = Forms.Checks.Needed(Side(member), member.Side.Read) },
                new TextEntry(Plan(member), "  from above") { Hint = "front end right is +; empty where it lies along the vehicle", Check = Forms.Checks.IfTyped(Plan(member), member.Plan.Read) },
            }),
        ],
        Echo = Says,
        Save = values => Forms.Checks.Try(() => save(edited => Apply(values, edited))),
    };

    private static IReadOnlyList<string> Says(FormValues values)
    {
        var line = Members.Select(member => new Inclination(KnownAs(values, Side(member), member.Side), KnownAs(values, Plan(member), member.Plan))).ToList();
        if (JointAngle.Of(line) is not [var front, var rear]) return [];

        var (atFront, atRear) = (front.Compound, rear.Compound);
        return
        [
            $"Front joint {Rounded.WithInterval(atFront, Units.Degree)}, rear joint {Rounded.WithInterval(atRear, Units.Degree)}.",
            $"They differ by {Rounded.WithInterval(atFront - atRear, Units.Degree)}; alike and with yokes in one plane they cancel.",
        ];
    }

    private static Known? KnownAs(FormValues values, string id, SpecLine line)
        => line.Read(values[id]).Understood(out var typed) ? new Known(typed.ToMeasured(line.Words), Source.Measured) : null;

    private static void Apply(FormValues values, PropshaftComponent shaft)
    {
        var (output, tube, pinion) = (Members[0], Members[1], Members[2]);
        (shaft.OutputSide, shaft.OutputPlan) = (NotedAs(values, Side(output), output.Side), NotedAs(values, Plan(output), output.Plan));
        (shaft.PinionSide, shaft.PinionPlan) = (NotedAs(values, Side(pinion), pinion.Side), NotedAs(values, Plan(pinion), pinion.Plan));
        var piece = shaft.Pieces.Count > 0 ? shaft.Pieces[0] : new StatedPiece();
        shaft.Pieces = [piece with { Side = NotedAs(values, Side(tube), tube.Side), Plan = NotedAs(values, Plan(tube), tube.Plan) }];
    }

    private static Noted? NotedAs(FormValues values, string id, SpecLine line) => values.IsEmpty(id) ? null : Noted.Of(line, values[id], Source.Measured);

    private static string Side(Member member) => $"{member.Id}-side";

    private static string Plan(Member member) => $"{member.Id}-plan";
}
