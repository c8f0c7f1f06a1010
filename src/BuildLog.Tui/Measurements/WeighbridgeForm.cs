using BuildLog.Data;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for three weighings: front, rear and all of it; the third checks the other two.</summary>
public static class WeighbridgeForm
{
    private const string Front = "front";
    private const string Rear = "rear";
    private const string Whole = "whole";
    private const string Step = "step";

    public static Form For(Vehicle vehicle, Action<Action<Vehicle>> save) => new()
    {
        Title = $"Weighbridge: {vehicle.Name}",
        HelpPage = "Weighbridge",
        Cautions = Cautions.AtTheWheel,
        SetUp = SetUps.Weighbridge,
        SaveCaption = "Keep",
        Entries =
        [
            Mass(Front, "Front axle", Spec.FrontAxleMass, "such as 700 kg"),
            Mass(Rear, "Rear axle", Spec.RearAxleMass, "such as 750 kg"),
            Mass(Whole, "All of it", Spec.Mass, "such as 1450 kg"),
            new TextEntry(Step, "Plate reads to") { Initial = "20 kg", Hint = "the step of its display", Check = Forms.Checks.Needed(Step, ReadStep), Echo = OtherUnits.Of(Step, ReadStep) },
        ],
        Echo = Says,
        Save = values => Forms.Checks.Try(() =>
        {
            var (front, rear, whole) = (NotedAs(Spec.FrontAxleMass, values, Front), NotedAs(Spec.RearAxleMass, values, Rear), NotedAs(Spec.Mass, values, Whole));
            save(edited => (edited.FrontAxleMass, edited.RearAxleMass, edited.Mass) = (front, rear, whole));
        }),
    };

    private static TextEntry Mass(string id, string caption, Spec spec, string hint)
        => new(id, caption) { Hint = hint, Check = Forms.Checks.Needed(id, spec.Line().Read), Echo = OtherUnits.Of(id, spec.Line().Read) };

    private static IReadOnlyList<string> Says(FormValues values)
    {
        if (!Read(values, Front, Spec.FrontAxleMass, out var front) || !Read(values, Rear, Spec.RearAxleMass, out var rear)) return [];
        var sum = front.Value + rear.Value;
        List<string> lines = [$"Front and rear make {Rounded.Fixed(sum, 0)} kg; {Rounded.Fixed(rear.Value / sum * 100, 0)} % of it on the rear axle."];
        if (!Read(values, Whole, Spec.Mass, out var whole) || !ReadStep(values[Step]).Understood(out var step)) return lines;

        // Three displays, each off by half a step; twice that is for the slope between road and plate.
        var gap = Math.Abs(whole.Value - sum);
        lines.Add(gap <= 3 * step.Value
            ? $"All of it differs by {Rounded.Fixed(gap, 0)} kg, as the display and a level road allow."
            : $"All of it differs by {Rounded.Fixed(gap, 0)} kg: brakes were on, or plate and road are not level. Weigh again.");
        return lines;
    }

    private static bool Read(FormValues values, string id, Spec spec, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Typed? typed) => spec.Line().Read(values[id]).Understood(out typed);

    private static Parsed<Typed> ReadStep(string text) => QuantityText.ReadPlain(text, Kind.Mass, Units.Kilogram);

    // A display's step is rectangular, half of it to each side; written as the 95 % half-width that a typed ± means.
    private static Noted NotedAs(Spec spec, FormValues values, string id)
    {
        var typed = spec.Line().Read(values[id]).OrRefuse();
        if (typed.StandardUncertainty > 0) return Noted.Of(spec, typed.Text, Source.Measured);
        var evidence = new Evidence(spec.InWords(), _ => "weigh on a finer plate");
        var weighed = Measured.From(typed.Value, Input.Rectangular(spec.InWords(), ReadStep(values[Step]).OrRefuse().Value / 2, evidence));
        return Noted.Of(spec, Rounded.WithInterval(weighed, typed.Unit), Source.Measured);
    }
}
