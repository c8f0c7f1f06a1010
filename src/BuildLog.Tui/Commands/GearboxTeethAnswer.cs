using System.Globalization;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary>All gears of a gearbox from its teeth, held against typed ratios; or typed ratios of an automatic of two planetary sets against each other.</summary>
/// <param name="Train">From the teeth; null where none were counted.</param>
/// <param name="Typed">From the lowest gear to the top; empty where none were typed.</param>
/// <param name="Reverse">Typed, as a plain number; null where it was not.</param>
internal sealed record GearboxTeethAnswer(GearTrain? Train, IReadOnlyList<QuotedRatio> Typed, QuotedRatio? Reverse)
{
    // First, second and reverse of two planetary sets bind each other.
    private Measured? FirstOfTwoSets => Typed.Count == 3 && Reverse is not null ? SimpsonTrain.FirstBeside(Typed[1].ToMeasured(Spoken("second gear")), Reverse.ToMeasured(Spoken("reverse"))) : null;

    private bool OfTwoSets => SimpsonTrain.CanBe(Typed[0], Typed[1], Reverse!);

    private int Gears => Train?.Gears.Count ?? Typed.Count;

    public Answer Answer() => new(ToJson(), [.. ToText()]);

    private JsonObject ToJson() => new()
    {
        ["method"] = Train is null ? "ratios" : "teeth",
        ["gears"] = Json.Array(Enumerable.Range(0, Gears), k => new JsonObject
        {
            ["gear"] = Name(k),
            ["ratio"] = Train?.Gears[k].Ratio,
            ["teeth"] = Train?.Gears[k].Says,
            ["typed"] = k < Typed.Count ? Typed[k].Ratio : null,
            ["agrees"] = Train is not null && k < Typed.Count ? Typed[k].Agrees(Train.Gears[k].Ratio) : null,
        }),
        ["reverse"] = Train?.Reverse is null && Reverse is null ? null : new JsonObject
        {
            ["ratio"] = Train?.Reverse,
            ["typed"] = Reverse?.Ratio,
            ["agrees"] = Train?.Reverse is { } counted ? Reverse?.Agrees(counted) : null,
        },
        ["twoPlanetarySets"] = FirstOfTwoSets is { } first ? new JsonObject { ["first"] = first.Value, ["interval95"] = Json.Interval95(first, Units.One), ["agrees"] = OfTwoSets } : null,
    };

    private IEnumerable<string> ToText()
    {
        if (Train is not null)
        {
            yield return Spoken("From the teeth, exact:");
            for (var k = 0; k < Gears; k++)
                yield return $"  {Name(k),-8}{Rounded.Fixed(Train.Gears[k].Ratio, 3),7}  {Train.Gears[k].Says}{(k < Typed.Count ? Beside(Typed[k], Train.Gears[k].Ratio) : "")}";
            if (RatioTraps.OfConstantMesh(Train) is { } question) yield return question.InWords();
            if (Train.Reverse is { } reverse) yield return $"  {Spoken("reverse"),-8}{Rounded.Fixed(reverse, 3),7}{(Reverse is null ? "" : $" {Beside(Reverse, reverse).TrimStart(';')}")}";
        }

        if (FirstOfTwoSets is not { } first) yield break;

        yield return Spoken($"Beside a second of {Typed[1].InWords} and a reverse of {Reverse!.InWords} an automatic of two planetary sets has a first of {Rounded.WithInterval(first, Units.One)}: ")
            + (OfTwoSets ? Spoken($"the typed {Typed[0].InWords} agrees.") : Spoken($"the typed {Typed[0].InWords} does not. One of the three is mistyped, or the box is of another build: its teeth decide."));
    }

    private static string Name(int k) => (k + 1).ToString(CultureInfo.InvariantCulture);

    private static string Beside(QuotedRatio typed, double counted) => Spoken($"; the typed {typed.InWords} {(typed.Agrees(counted) ? Spoken("agrees") : Spoken("does not agree"))}");
}
