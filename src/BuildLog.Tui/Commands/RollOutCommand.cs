using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog rollout</c>: rolling circumference from marks on the floor.</summary>
internal sealed class RollOutCommand : Command
{
    private readonly Option<string[]> roll = new("--roll") { Description = Spoken("One mark: wheel turns, a colon, the distance with its unit. May be repeated."), HelpName = "TURNS:DISTANCE" };
    private readonly Option<string?> loaded = new("--loaded") { Description = Spoken("yes: the vehicle stood on the tyre; no: a loose wheel was rolled."), HelpName = "yes|no" };
    private readonly Option<string?> tape = new("--tape") { Description = Spoken("The tape is good to this (2 mm)."), HelpName = "LENGTH" };
    private readonly Option<string?> align = new("--align") { Description = Spoken("How far off the wheel's mark may have been, in turns (0.01)."), HelpName = "TURNS" };
    private readonly Option<string?> construction = new("--construction") { Description = Spoken("radial (if not said) or bias."), HelpName = "radial|bias" };
    private readonly Option<string?> pressure = new("--pressure") { Description = Spoken("Tyre pressure; recorded only."), HelpName = "PRESSURE" };
    private readonly RecordOptions record = RecordOptions.ForTyres();

    public RollOutCommand(Edge edge) : base("rollout", Spoken("Rolling circumference from marks on the floor."))
    {
        Options.Add(roll);
        Options.Add(loaded);
        Options.Add(tape);
        Options.Add(align);
        Options.Add(construction);
        Options.Add(pressure);
        record.AddTo(this);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var texts = parse.GetValue(roll) ?? [];
        if (texts.Length == 0) throw Reading.Wrong(roll.Name, new Refusal("missing", Spoken("No roll was given: wheel turns, a colon, the distance."), "3:6125mm"));

        var how = new RollOutPrecision(Loaded(parse), TyreWords.Construction(parse, construction));
        how = how with
        {
            Tape = parse.Read(tape, text => QuantityText.Read(text, Kind.Length).Showing("2 mm"))?.Value ?? how.Tape,
            Align = parse.ReadNumber(align, how.Align),
        };
        _ = parse.Read(pressure, text => QuantityText.Read(text, Kind.Pressure));
        var readings = texts.Select(text => Reading.Of(roll.Name, text, RollReading.Read)).ToList();
        var result = Reading.Blaming(() => RollOut.Of(readings, how), roll, ("tape", tape), ("align", align));

        var kept = record.Save<WheelSetComponent>(edge, parse, (wheels, vehicle) => new RollOutSession(wheels, vehicle)
        {
            Loaded = how.Loaded,
            Construction = how.Construction,
            Readings = texts,
            Tape = parse.GetValue(tape) ?? "2 mm",
            Align = parse.GetValue(align) ?? Rounded.Typed(how.Align),
            Pressure = parse.GetValue(pressure) ?? "",
        });
        return kept.In(new(ToJson(result), [.. ToText(result, edge.Common.UnitsOf(parse))]));
    }

    private bool Loaded(ParseResult parse) => parse.GetValue(loaded) switch
    {
        "yes" => true,
        "no" => false,
        null => throw Reading.Wrong(loaded.Name, new Refusal("missing", Spoken("Say whether the vehicle stood on the tyre: yes or no. A loose wheel covers some per cent more ground."), "yes")),
        var other => throw Reading.Wrong(loaded.Name, new Refusal("loaded", Spoken($"'{other}' is not yes or no."), "yes")),
    };

    private static JsonObject ToJson(RollOut result) => new()
    {
        ["circumferenceM"] = result.Measured.Value,
        ["standardUncertaintyM"] = result.Measured.StandardUncertainty,
        ["degreesOfFreedom"] = Json.DegreesOfFreedom(result.Measured),
        ["interval95M"] = Json.Interval95(result.Measured, Units.Metre),
        ["loaded"] = result.How.Loaded,
        ["loadedFactor"] = result.How.Loaded ? null : LoadedFactor.For(result.How.Construction).Value,
        ["rollingCircumferenceM"] = result.RollingCircumference.Value,
        ["rollingStandardUncertaintyM"] = result.RollingCircumference.StandardUncertainty,
        ["rollingInterval95M"] = Json.Interval95(result.RollingCircumference, Units.Metre),
        ["freeDiameterM"] = result.FreeDiameter?.Value,
    };

    private static IEnumerable<string> ToText(RollOut result, UnitSystem units)
    {
        yield return Spoken($"Rolled {Rounded.WithInterval(result.Measured, units.Length)} a turn (95 %).");
        foreach (var line in RollOutWords.Doubts(result)) yield return line;
        if (result.FreeDiameter is { } diameter)
        {
            yield return Spoken($"That is a free diameter of {Rounded.Value(diameter, units.Length)}.");
            yield return Spoken($"The wheel was rolled loose; under the vehicle it covers {LoadedFactor.For(result.How.Construction).Value} of that:");
        }

        yield return Spoken($"Rolling circumference {Rounded.WithInterval(result.RollingCircumference, units.Length)} (95 %).");
    }
}
