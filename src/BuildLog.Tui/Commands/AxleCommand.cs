using System.CommandLine;
using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog axle</c>: an axle's ratio from counted turns or teeth, and which ratio that may be.</summary>
internal sealed class AxleCommand : Command
{
    private readonly Option<string[]> turns = new("--turns")
    {
        Description = Spoken("One count, wheel turns first: 10:20.5; or both wheels: 10,10:41. May be repeated."),
        HelpName = "WHEEL:PROPSHAFT",
    };

    private readonly Option<string?> wheels = new("--wheels")
    {
        Description = Spoken("one-held (open differential, the other wheel blocked) or together (both wheels turn alike)."),
        HelpName = "one-held|together",
    };

    private readonly Option<string?> readTo = new("--read-to") { Description = Spoken("Smallest fraction of a propshaft turn that was read (0.25)."), HelpName = "TURNS" };
    private readonly Option<string?> align = new("--align") { Description = Spoken("How far off the wheel's mark may have been, in turns (0.02)."), HelpName = "TURNS" };
    private readonly Option<string?> listed = new("--listed") { Description = Spoken("Ratios known for that donor, parted by commas; by blanks where they have decimal commas."), HelpName = "RATIO,RATIO" };
    private readonly Option<string?> tag = new("--tag") { Description = Spoken("The ratio on the tag, to be compared."), HelpName = "RATIO" };
    private readonly Option<string?> hub = new("--hub") { Description = Spoken("Hub reduction (1); a count contains it, teeth do not."), HelpName = "RATIO" };
    private readonly Option<string?> teeth = new("--teeth") { Description = Spoken("Teeth counted instead of turns."), HelpName = "RING/PINION" };
    private readonly Option<string?> twoSpeed = new("--two-speed") { Description = Spoken("A two-speed axle's low over high: 1.39, both printed ratios 9.04/6.50, or its teeth \"planetary 46/18\"."), HelpName = "STEP" };
    private readonly Option<string[]> lowTurns = new("--low-turns") { Description = Spoken("A count with a two-speed axle in low, written as --turns. May be repeated."), HelpName = "WHEEL:PROPSHAFT" };
    private readonly RecordOptions record = RecordOptions.ForAxle();

    public AxleCommand(Edge edge) : base("axle", Spoken("Axle ratio from counted turns or teeth, with the ratios it may be."))
    {
        Options.Add(turns);
        Options.Add(wheels);
        Options.Add(readTo);
        Options.Add(align);
        Options.Add(listed);
        Options.Add(tag);
        Options.Add(hub);
        Options.Add(teeth);
        Options.Add(twoSpeed);
        Options.Add(lowTurns);
        record.AddTo(this);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var counts = parse.GetValue(turns) ?? [];
        if (parse.GetValue(teeth) is { } pair)
        {
            if (InLow(parse).Length > 0) throw Reading.Wrong(lowTurns.Name, new Refusal("both", Spoken("The teeth of ring gear and pinion make high: give low with --two-speed."), ""));
            if (counts.Length > 0)
                throw Reading.Wrong(teeth.Name, new Refusal("both", Spoken("Give the teeth or the turns, not both: teeth are exact."), "41/10"));
            if (record.IsAsked(parse))
                throw Reading.Wrong(teeth.Name, new Refusal("not-kept", Spoken("The record keeps teeth on the axle's form: only counted turns are kept with --record."), ""));
            return FromTeeth(parse, Reading.Of(teeth.Name, pair, Teeth.Read));
        }

        if (counts.Length == 0)
            throw Reading.Wrong(turns.Name, new Refusal("missing", Spoken("No count was given: wheel turns, a colon, propshaft turns; or the teeth with --teeth."), "10:20.5"));
        return FromTurns(edge, parse, counts);
    }

    private Answer FromTeeth(ParseResult parse, Teeth pair)
    {
        var reduction = Hub(parse);
        var total = Reading.Blaming(teeth.Name, () => RatioRange.Axle.Checked(pair.Ratio * reduction));
        var listing = RatioCandidates.For(pair.ToMeasured(), Listed(parse));
        var candidate = new RatioCandidate(pair.Ratio, pair, listing.Ranked.Any(known => known.IsListed), 1);
        return new AxleAnswer(total, pair.ToMeasured(), "teeth", [candidate], 0, Tag(parse), null) { Low = Stepped(parse, total) }.Answer();
    }

    private Answer FromTurns(Edge edge, ParseResult parse, string[] counts)
    {
        var how = new CountPrecision();
        how = new(parse.ReadNumber(readTo, how.ReadTo), parse.ReadNumber(align, how.Align));
        var which = WheelsOf(parse, counts);
        var readings = counts.Select(text => Reading.Of(turns.Name, text, typed => TypedCount.OfAxle(typed, which))).ToList();
        var count = Reading.Blaming(() => TurnCount.Of(readings, how), turns, ("read-to", readTo), ("align", align));
        var diff = count.Ratio / Hub(parse);
        var candidates = RatioCandidates.For(diff, Listed(parse));

        var answer = new AxleAnswer(count.Ratio, diff, "turns", candidates.Ranked, candidates.NotListedProbability, Tag(parse), count) { Low = LowCounted(parse, count, which, how) ?? Stepped(parse, count.Ratio) }.Answer();
        var kept = record.Save<AxleComponent>(edge, parse, (axle, vehicle) => new TurnCountSession(axle, vehicle)
        {
            Wheels = which,
            Readings = counts,
            ReadTo = parse.GetValue(readTo) ?? Usual(how.ReadTo),
            Align = parse.GetValue(align) ?? Usual(how.Align),
            Hub = parse.GetValue(hub) ?? "",
        });
        return kept.In(answer);
    }

    private TwoSpeedAxle? Stepped(ParseResult parse, Measured high)
        => parse.Read(twoSpeed, TwoSpeedAxle.ReadStep) is { } step ? new(high, step.ToMeasured(Spoken("two-speed axle's step"))) : null;

    private TwoSpeedAxle? LowCounted(ParseResult parse, TurnCount high, Wheels which, CountPrecision how)
    {
        if (InLow(parse) is not { Length: > 0 } counts) return null;
        if (parse.GetValue(twoSpeed) is not null) throw Reading.Wrong(twoSpeed.Name, new Refusal("both", Spoken("Give the step or the turns in low, not both."), ""));
        if (record.IsAsked(parse)) throw Reading.Wrong(
            lowTurns.Name,
            new Refusal("not-kept", Spoken("The record keeps the step on the axle's form, under Two-speed, and counts in high: leave --low-turns out here."), ""));

        var readings = counts.Select(text => Reading.Of(lowTurns.Name, text, typed => TypedCount.OfAxle(typed, which))).ToList();
        var low = Reading.Blaming(() => TurnCount.Of(readings, how, name: Spoken("turn count in low")), lowTurns);
        return low.Ratio.Value > high.Ratio.Value
            ? TwoSpeedAxle.Counted(high.Ratio, low.Ratio)
            : throw Reading.Wrong(
                lowTurns.Name,
                new Refusal("low", Spoken($"Low is the higher ratio, and {Rounded.Value(low.Ratio, Units.One)} is not above {Rounded.Value(high.Ratio, Units.One)}: were the two exchanged?"), ""));
    }

    private string[] InLow(ParseResult parse) => parse.GetValue(lowTurns) ?? [];

    // Forgetting which wheels turned is the classic factor of two, so there is no default.
    private Wheels WheelsOf(ParseResult parse, string[] counts)
    {
        var both = counts.Count(text => text.Split(':')[0].Contains(',', StringComparison.Ordinal));
        var given = parse.GetValue(wheels);
        if (both > 0 && both < counts.Length)
            throw Reading.Wrong(turns.Name, new Refusal("mixed", Spoken("Some counts name one wheel and some both: write them all the same way."), "10,10:41"));
        if (both > 0)
        {
            return given is null ? Wheels.Each : throw Reading.Wrong(wheels.Name, new Refusal(
                "not-needed", Spoken("The counts name both wheels' turns, so --wheels has nothing to add: leave it out."), ""));
        }

        return given switch
        {
            "one-held" => Wheels.OneHeld,
            "together" => Wheels.Together,
            null => throw Reading.Wrong(wheels.Name, new Refusal("missing", Spoken("Say which wheels turned: one-held or together. The ratio differs by a factor of two."), "one-held")),
            _ => throw Reading.Wrong(wheels.Name, new Refusal("wheels", Spoken($"'{given}' is not one-held or together."), "one-held")),
        };
    }

    private static string Usual(double value) => Rounded.Typed(value);

    private double Hub(ParseResult parse) => parse.Read(hub, text => RatioRange.Hub.Read(text))?.Value ?? 1;

    private QuotedRatio? Tag(ParseResult parse) => parse.Read(tag, text => QuotedRatio.Read(text, RatioRange.Axle));

    private List<QuotedRatio> Listed(ParseResult parse) => ListedRatios.Of(parse, listed, RatioRange.Axle);
}
