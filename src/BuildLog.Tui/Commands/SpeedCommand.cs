using System.CommandLine;
using System.Text.Json.Nodes;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Speeds;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog speed</c>: leave out one of speed, engine speed, gear, axle ratio and tyre; it is solved for.</summary>
internal sealed class SpeedCommand : Command
{
    private const double Largest = 4.5;

    private readonly Option<string?> rpm = new("--rpm") { Description = Spoken("Engine speed; a bare number is rev/min."), HelpName = "SPEED" };
    private readonly Option<string?> speed = new("--speed") { Description = Spoken("Road speed with its unit."), HelpName = "SPEED" };
    private readonly Option<string?> gear = new("--gear") { Description = Spoken("Gear ratio; 1 for direct."), HelpName = "RATIO" };
    private readonly Option<string?> axle = new("--axle") { Description = Spoken("Axle ratio without a hub reduction."), HelpName = "RATIO" };
    private readonly Option<string?> circumference = new("--circumference") { Description = Spoken("Rolling circumference, taken as it is."), HelpName = "LENGTH" };
    private readonly Option<string?> diameter = new("--diameter") { Description = Spoken("Free diameter; times pi and the loaded factor."), HelpName = "LENGTH" };
    private readonly Option<string?> tyre = new("--tyre") { Description = Spoken("Tyre size as marked; its free circumference times the loaded factor."), HelpName = "SIZE" };
    private readonly Option<string?> loadedFactor = new("--loaded-factor") { Description = Spoken("Instead of the usual 0.971 (radial) or 0.952 (bias); 1 for plain pi times diameter."), HelpName = "FACTOR" };
    private readonly Option<string?> construction = new("--construction") { Description = Spoken("radial (if not said) or bias, for --diameter."), HelpName = "radial|bias" };
    private readonly Option<string?> overdrive = new("--overdrive") { Description = Spoken("Overdrive unit's ratio (1)."), HelpName = "RATIO" };
    private readonly Option<string?> transfer = new("--transfer") { Description = Spoken("Transfer case ratio (1)."), HelpName = "RATIO" };
    private readonly Option<string?> hub = new("--hub") { Description = Spoken("Hub reduction (1)."), HelpName = "RATIO" };
    private readonly Option<string?> slip = new("--slip") { Description = Spoken("Converter slip (0)."), HelpName = "SHARE" };

    public SpeedCommand(Edge edge) : base("speed", Spoken("Solve for the one you leave out: speed, engine speed, gear, axle ratio or tyre."))
    {
        foreach (var option in (Option<string?>[])[rpm, speed, gear, axle, circumference, diameter, tyre, loadedFactor, construction, overdrive, transfer, hub, slip])
            Options.Add(option);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var asked = new SpeedRelation
        {
            RoadSpeed = parse.Read(speed, CruiseGoal.ReadSpeed)?.ToMeasured(Spoken("road speed")),
            EngineSpeed = parse.Read(rpm, CruiseGoal.ReadEngineSpeed)?.ToMeasured(Spoken("engine speed")),
            Gear = Ratio(parse, gear, RatioRange.Gear),
            Axle = Ratio(parse, axle, RatioRange.Axle),
            Circumference = Circumference(parse),
            Overdrive = Ratio(parse, overdrive, RatioRange.Overdrive) ?? 1,
            Transfer = Ratio(parse, transfer, RatioRange.Transfer) ?? 1,
            Hub = Ratio(parse, hub, RatioRange.Hub) ?? 1,
            Slip = parse.Read(slip, Slip)?.ToMeasured(Spoken("converter slip")) ?? 0,
        };

        var missing = asked.Missing;
        if (missing.Count != 1) throw new WrongInputException(LeaveOneOut(missing), null);
        return Answer(asked.Solved(), missing[0], edge.Common.UnitsOf(parse));
    }

    private static Answer Answer(SpeedRelation solved, Unknown unknown, UnitSystem units)
    {
        var (name, value, unit) = unknown switch
        {
            Unknown.RoadSpeed => (Spoken("speed"), solved.RoadSpeed!, Units.KilometrePerHour),
            Unknown.EngineSpeed => (Spoken("rpm"), solved.EngineSpeed!, Units.RevolutionPerMinute),
            Unknown.Gear => (Spoken("gear"), solved.Gear!, Units.One),
            Unknown.Axle => (Spoken("axle"), solved.Axle!, Units.One),
            _ => (Spoken("tyre"), solved.Circumference!, Units.Metre),
        };
        var json = new JsonObject
        {
            ["solvedFor"] = name,
            ["speedKmh"] = solved.RoadSpeed!.Value * 3.6,
            ["speedMph"] = Units.MilePerHour.FromBase(solved.RoadSpeed.Value),
            ["engineRpm"] = solved.EngineSpeed!.Value * 60,
            ["gearRatio"] = solved.Gear!.Value,
            ["axleRatio"] = solved.Axle!.Value,
            ["circumferenceM"] = solved.Circumference!.Value,
            ["overallRatio"] = solved.OverallRatio.Value,
            ["wheelRpm"] = solved.WheelSpeed.Value * 60,
            ["unit"] = unit == Units.One ? "1" : unit.Symbol,
            ["standardUncertainty"] = unit.FromBase(value.StandardUncertainty),
            ["interval95"] = Json.Interval95(value, unit),
        };
        return new(json, [.. ToText(solved, unknown, units)]);
    }

    private static IEnumerable<string> ToText(SpeedRelation solved, Unknown unknown, UnitSystem units)
    {
        yield return unknown switch
        {
            Unknown.RoadSpeed => Spoken($"Road speed {Solved(solved.RoadSpeed!, units.Speed)}"),
            Unknown.EngineSpeed => Spoken($"Engine speed {Solved(solved.EngineSpeed!, Units.RevolutionPerMinute)}"),
            Unknown.Gear => Spoken($"Gear ratio {Solved(solved.Gear!, Units.One)}"),
            Unknown.Axle => Spoken($"Axle ratio {Solved(solved.Axle!, Units.One)}"),
            _ => Spoken($"Rolling circumference {Solved(solved.Circumference!, units.Length)}"),
        };
        if (Unheard(solved, unknown) is { } unheard) yield return unheard;
        yield return Spoken($"  at {Plain(solved.RoadSpeed!, units.Speed, 1)}, {Plain(solved.EngineSpeed!, Units.RevolutionPerMinute, 0)}, "
            + $"gear {Plain(solved.Gear!, Units.One, 3)}, axle {Plain(solved.Axle!, Units.One, 3)}, {Plain(solved.Circumference!, units.Length, units == UnitSystem.Metric ? 3 : 1)} a turn");
        yield return Spoken($"  overall {Plain(solved.OverallRatio, Units.One, 3)}, wheels {Plain(solved.WheelSpeed, Units.RevolutionPerMinute, 0)}");
    }

    // It follows from what was given, but nobody can buy it: then one of those is mistyped, or asks too much.
    private static string? Unheard(SpeedRelation solved, Unknown unknown)
    {
        var (what, value, low, high, unit) = unknown switch
        {
            Unknown.Gear => (Spoken("gear ratio"), solved.Gear!.Value, RatioRange.Gear.Low, RatioRange.Gear.High, ""),
            Unknown.Axle => (Spoken("axle ratio"), solved.Axle!.Value, RatioRange.Axle.Low, RatioRange.Axle.High, ""),
            Unknown.Circumference => (Spoken("tyre"), solved.Circumference!.Value, RollReading.Smallest, Largest, " m"),
            Unknown.EngineSpeed => (Spoken("engine speed"), solved.EngineSpeed!.Value * 60, 0, 20_000, " rev/min"),
            _ => (Spoken("road speed"), solved.RoadSpeed!.Value * 3.6, 0, 500, " km/h"),
        };
        return value >= low && value <= high ? null : Spoken($"  There is no such {what}: {low} to {high}{unit}. Look at what was given.");
    }

    // Exact inputs give an exact result; two places of it are plenty for a person.
    private static string Solved(Measured value, Unit unit)
        => value.IsExact ? $"{Plain(value, unit, unit.Kind == Kind.Rotation ? 0 : unit == Units.Metre || unit == Units.One ? 3 : 2)}" : $"{Rounded.WithInterval(value, unit)} (95 %)";

    private static string Plain(Measured value, Unit unit, int places)
        => Rounded.WithUnit(
            value.IsExact
                ? Rounded.Fixed(unit.FromBase(value.Value), places)
                : Rounded.Fixed(unit.FromBase(value.Value), Math.Min(places, Rounded.Places(unit.FromBase(value.Expanded95)))),
            unit);

    private static Measured? Ratio(ParseResult parse, Option<string?> option, RatioRange range)
        => parse.Read(option, range.Read)?.ToMeasured(Spoken($"{range.Part} ratio"));

    private static Parsed<Typed> Slip(string text)
        => QuantityText.Read(text, Kind.Share).Then<Typed>(typed => typed.Value is >= 0 and < 0.5
            ? typed
            : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} is no converter slip: 0 to 50 %."), "3%"));

    private Measured? Circumference(ParseResult parse)
    {
        var given = new[] { circumference, diameter, tyre }.Where(option => parse.GetValue(option) is not null).ToList();
        if (given.Count > 1)
            throw new WrongInputException(new Refusal("tyre-twice", Spoken($"Give the tyre once: {given[0].Name} or {given[1].Name}."), "--circumference 2.04m"), given[1].Name);

        if (parse.GetValue(construction) is not null && parse.GetValue(diameter) is null)
            throw Reading.Wrong(construction.Name, new Refusal("not-needed", Spoken("The construction goes with --diameter: a circumference is taken as it is, and a size names its own."), ""));

        var factor = parse.Read(loadedFactor, LoadedFactorOf)?.ToMeasured(Spoken("loaded factor"));
        if (parse.Read(circumference, Tyre(1, "2.04m", Spoken("diameter"))) is { } rolling)
        {
            return factor is null ? rolling.ToMeasured(Spoken("rolling circumference")) : throw new WrongInputException(
                new Refusal("not-needed", Spoken("A circumference is taken as it is; a loaded factor goes with --diameter or --tyre."), "--diameter \"27 in\" --loaded-factor 1"), loadedFactor.Name);
        }

        if (parse.Read(diameter, Tyre(Math.PI, "27 in", Spoken("circumference"))) is { } free)
            return free.ToMeasured(Spoken("tyre diameter")) * Math.PI * (factor ?? LoadedFactor.For(TyreWords.Construction(parse, construction)));

        return parse.Read(tyre, TyreSizeText.Read) is { } size
            ? factor is null ? size.RollingCircumference : size.FreeCircumferenceAsLabelled * factor
            : null;
    }

    // The tyres of road trucks cover up to some four metres. What can only be the other measure is asked about.
    private static Func<string, Parsed<Typed>> Tyre(double over, string example, string other) => text => QuantityText.Read(text, Kind.Length).Then<Typed>(typed =>
    {
        var (low, high) = (Math.Round(RollReading.Smallest / over, 2), Math.Round(Largest / over, 2));
        var turnedRound = typed.Value * Math.PI / over is >= RollReading.Smallest and <= Largest;
        return typed.Value >= low && typed.Value <= high
            ? typed
            : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} fits no road tyre: {low} to {high} m.{(turnedRound ? Spoken($" Is it the {other}?") : "")}"), example);
    });

    private static Parsed<Typed> LoadedFactorOf(string text) => QuantityText.Read(text, Kind.Number).Then<Typed>(typed => typed.Value is >= 0.8 and <= 1.1
        ? typed
        : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} is no loaded factor: 0.8 to 1.1."), "0.971"));

    private static Refusal LeaveOneOut(IReadOnlyList<Unknown> missing)
    {
        const string right = "buildlog speed --rpm 2300 --gear 1 --axle 4.10 --circumference 2.04m";
        return missing.Count == 0
            ? new("nothing-left-out", Spoken("All five are given: leave out the one to be solved for."), right)
            : new("too-many-left-out", Spoken($"Leave out exactly one; missing are {string.Join(", ", missing.Select(OptionOf))}."), right);
    }

    private static string OptionOf(Unknown unknown) => unknown switch
    {
        Unknown.RoadSpeed => "--speed",
        Unknown.EngineSpeed => "--rpm",
        Unknown.Gear => "--gear",
        Unknown.Axle => "--axle",
        _ => Spoken("the tyre (--circumference, --diameter or --tyre)"),
    };
}
