using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog tyre SIZE</c>: what a tyre's marking says, and its dimensions.</summary>
internal sealed class TyreCommand : Command
{
    private readonly Argument<string> size = new("SIZE") { Description = Spoken("As marked, such as \"205/65R15 94H\".") };
    private readonly Option<string?> worn = new("--worn") { Description = Spoken("Tread worn off."), HelpName = "DEPTH" };

    public TyreCommand(Edge edge) : base("tyre", Spoken("What a size designation says, and the dimensions that follow."))
    {
        Arguments.Add(size);
        Options.Add(worn);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var tyre = TyreSizeText.Read(parse.GetRequiredValue(size)).OrRefuse();
        if (parse.Read(worn, text => QuantityText.Read(text, Kind.Length).Showing("4 mm")) is { } depth)
            tyre = Reading.Of(worn.Name, depth.Text, _ => tyre.WornBy(depth));
        return new(ToJson(tyre), [.. ToText(tyre, edge.Common.UnitsOf(parse))]);
    }

    private static JsonObject ToJson(TyreSize tyre) => new()
    {
        ["designation"] = tyre.Designation,
        ["notation"] = tyre.Notation,
        ["sectionWidthM"] = tyre.SectionWidth,
        ["aspectRatio"] = tyre.AspectRatio,
        ["construction"] = tyre.Construction == Construction.Radial ? "radial" : "bias",
        ["rimDiameterM"] = tyre.RimDiameter,
        ["overallDiameterM"] = tyre.OverallDiameter,
        ["freeCircumferenceM"] = tyre.FreeCircumference,
        ["rollingCircumferenceM"] = tyre.RollingCircumference.Value,
        ["rollingStandardUncertaintyM"] = tyre.RollingCircumference.StandardUncertainty,
        ["revolutionsPerKm"] = 1000 / tyre.RollingCircumference.Value,
        ["loadIndex"] = tyre.LoadIndex,
        ["loadCapacityKg"] = tyre.LoadCapacityKg,
        ["loadIndexDual"] = tyre.LoadIndexDual,
        ["loadCapacityDualKg"] = tyre.LoadCapacityDualKg,
        ["speedSymbol"] = tyre.SpeedSymbol,
        ["speedLimitKmh"] = tyre.SpeedLimitKmh,
        ["speedAboveKmh"] = tyre.SpeedAboveKmh,
        ["rimWidthIn"] = new JsonObject { ["low"] = tyre.RimWidth.Low, ["high"] = tyre.RimWidth.High },
        ["dimensionsFrom"] = tyre.Dimensions.From.InWords(),
        ["dimensionsSource"] = tyre.Dimensions.Source,
    };

    private static string Notation(TyreSize tyre) => tyre.Notation switch
    {
        "metric" => Spoken("metric"),
        "numeric" => Spoken("numeric"),
        "alpha-numeric" => Spoken("alpha-numeric"),
        "flotation" => Spoken("flotation"),
        var other => other,
    };

    private static Unit Distance(UnitSystem units) => units.Speed == Units.MilePerHour ? Units.Mile : Units.Kilometre;

    private static IEnumerable<string> ToText(TyreSize tyre, UnitSystem units)
    {
        var metres = Units.Metre == units.Length ? 3 : 1;
        yield return Spoken($"{tyre.Designation}: {Notation(tyre)}, {(tyre.Construction == Construction.Radial ? Spoken("radial") : Spoken("bias"))}, {(tyre.Worn > 0 ? Spoken("worn") : Spoken("design"))} diameter {Length(tyre.OverallDiameter)}.");
        yield return Spoken($"Dimensions by {tyre.Dimensions.From.InWords()}: {tyre.Dimensions.Source}.");
        yield return Spoken($"Rolling circumference {Rounded.WithInterval(tyre.RollingCircumference, units.Length)} (95 %), from the label only; a roll-out knows better.");
        yield return Spoken($"About {Distance(units).Factor / tyre.RollingCircumference.Value:0} turns per {(Distance(units) == Units.Mile ? Spoken("mile") : Spoken("kilometre"))}.");
        if (tyre.LoadIndex is { } index)
            yield return Spoken($"Load index {index}: {Mass(tyre.LoadCapacityKg)} a tyre{(tyre.LoadIndexDual is { } dual ? Spoken($"; {dual}: {Mass(tyre.LoadCapacityDualKg)} in dual fitment") : "")}.");
        if (tyre.SpeedAboveKmh is { } above)
            yield return Spoken($"Made for more than {Speed(above)}: how much more, the tyre maker says.");
        else if (tyre.SpeedSymbol is { } symbol)
            yield return Spoken($"Speed symbol {symbol}: up to {Speed(tyre.SpeedLimitKmh)}.");
        yield return Spoken($"Rim width about {tyre.RimWidth.Low:0.#} to {tyre.RimWidth.High:0.#} in (from memory; the tyre maker's data sheet decides).");

        string Mass(double? kilograms) => Rounded.WithUnit(Rounded.Fixed(units.Mass.FromBase(kilograms ?? 0), 0), units.Mass);

        string Speed(double? kmh) => Rounded.WithUnit(Rounded.Fixed(units.Speed.FromBase(Units.KilometrePerHour.ToBase(kmh ?? 0)), 0), units.Speed);

        string Length(double value) => $"{Rounded.Fixed(units.Length.FromBase(value), metres)} {units.Length}";
    }
}
