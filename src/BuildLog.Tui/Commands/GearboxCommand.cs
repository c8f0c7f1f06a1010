using System.CommandLine;
using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Commands;

/// <summary><c>buildlog gearbox</c>: a gear's ratio from counted turns, and which of the known ratios that may be; or all gears from their teeth, against typed ratios.</summary>
internal sealed class GearboxCommand : Command
{
    private readonly Option<string[]> turns = new("--turns")
    {
        Description = Spoken("One count, output turns first: 10:30.1. May be repeated."),
        HelpName = "OUTPUT:INPUT",
    };

    private readonly Option<string?> readTo = new("--read-to") { Description = Spoken("Smallest fraction of an input turn that was read (0.25)."), HelpName = "TURNS" };
    private readonly Option<string?> align = new("--align") { Description = Spoken("How far off the output's mark may have been, in turns (0.02)."), HelpName = "TURNS" };
    private readonly Option<string?> listed = new("--listed") { Description = Spoken("Ratios known for that gearbox, parted by commas; by blanks where they have decimal commas."), HelpName = "RATIO,RATIO" };
    private readonly Option<string?> tag = new("--tag") { Description = Spoken("The ratio that is quoted for the gear, to be compared."), HelpName = "RATIO" };

    private readonly Option<string?> teeth = new("--teeth")
    {
        Description = Spoken("All gears from their teeth: constant mesh, then each gear's pair (\"29/19 31/14 25/18 1\"), or two planetary sets, ring/sun (\"planetary 75/30 75/33\")."),
        HelpName = "TEETH",
    };

    private readonly Option<string?> ratios = new("--ratios") { Description = Spoken("All forward ratios as typed, first to top, parted by commas; held against the teeth, or with --reverse against each other."), HelpName = "RATIO,RATIO" };
    private readonly Option<string?> reverse = new("--reverse") { Description = Spoken("The typed ratio of reverse, as a plain number."), HelpName = "RATIO" };

    private readonly Option<string?> gear = new("--for") { Description = Spoken("Which gear was counted, as the knob names it, with --record; of an overdrive engaged (if not said) or disengaged."), HelpName = "GEAR" };
    private readonly RecordOptions record = RecordOptions.ForGearbox();

    public GearboxCommand(Edge edge) : base("gearbox", Spoken("A gear's ratio from counted turns, or all gears from their teeth."))
    {
        Options.Add(turns);
        Options.Add(readTo);
        Options.Add(align);
        Options.Add(listed);
        Options.Add(tag);
        Options.Add(teeth);
        Options.Add(ratios);
        Options.Add(reverse);
        Options.Add(gear);
        record.AddTo(this);
        edge.Answers(this, parse => Answer(edge, parse));
    }

    private Answer Answer(Edge edge, ParseResult parse)
    {
        var texts = parse.GetValue(turns) ?? [];
        if (new[] { teeth, ratios, reverse }.FirstOrDefault(option => parse.GetValue(option) is not null) is { } whole) return OfAllGears(parse, texts, whole);
        if (texts.Length == 0)
            throw Reading.Wrong(turns.Name, new Refusal("missing", Spoken("No count was given: output turns, a colon, input turns; or the teeth with --teeth."), CountedEnds.Gearbox.Example));

        var usual = new CountPrecision();
        var how = new CountPrecision(parse.ReadNumber(readTo, usual.ReadTo), parse.ReadNumber(align, usual.Align));
        var readings = texts.Select(text => Reading.Of(turns.Name, text, TypedCount.OfGear)).ToList();
        var count = Reading.Blaming(() => TurnCount.OfGear(readings, how), turns, ("read-to", readTo), ("align", align));
        var known = Listed(parse);
        var candidates = RatioCandidates.ForGear(count.Ratio, known);
        var quoted = parse.Read(tag, text => QuotedRatio.Read(text, RatioRange.Gear));
        var answer = new Answer(CountWords.ToJson(count.Ratio, count, candidates.Ranked, candidates.NotListedProbability, quoted, quoted?.Agrees(count.Ratio)), [.. ToText(count, candidates, quoted, known)]);
        return Keep(edge, parse, texts, how).In(answer);
    }

    private Answer OfAllGears(ParseResult parse, string[] counts, Option<string?> whole)
    {
        if (counts.Length > 0 || record.IsAsked(parse))
            throw Reading.Wrong(whole.Name, new Refusal("both", Spoken("Teeth and typed ratios are of all gears, a count is of one: ask for them apart. The record keeps teeth on the gearbox's form."), ""));

        var train = parse.Read(teeth, GearTrain.Read);
        List<QuotedRatio> typed = [.. ListedRatios.Parted(parse, ratios).Select(one => Reading.Of(ratios.Name, one, each => QuotedRatio.Read(each, RatioRange.Gear)))];
        FirstToTop(typed);
        var back = parse.Read(reverse, text => QuotedRatio.Read(text, RatioRange.Gear));
        if (train is { Reverse: null } && back is not null)
            throw Reading.Wrong(reverse.Name, new Refusal("not-needed", Spoken("These teeth say nothing of reverse, so there is nothing to hold its ratio against: leave it out."), ""));
        if (train is not null && typed.Count > 0 && typed.Count != train.Gears.Count)
            throw Reading.Wrong(
                ratios.Name,
                new Refusal("ratios", Spoken($"The teeth are of {train.Gears.Count} gears, the ratios of {typed.Count}: write every forward gear."), string.Join(',', train.Gears.Select(each => Rounded.Typed(each.Ratio, 2)))));
        if (train is null && (typed.Count != 3 || back is null))
            throw Reading.Wrong(
                typed.Count == 3 ? reverse.Name : ratios.Name,
                new Refusal("missing", Spoken("Without teeth only an automatic of two planetary sets can be checked: three forward ratios and reverse."), typed.Count == 3 ? "2.20" : "2.45,1.45,1.00"));
        return new GearboxTeethAnswer(train, typed, back).Answer();
    }

    private void FirstToTop(List<QuotedRatio> typed)
    {
        for (var k = 1; k < typed.Count; k++)
        {
            if (typed[k].Ratio > typed[k - 1].Ratio)
                throw Reading.Wrong(
                    ratios.Name,
                    new Refusal("ratios", Spoken($"Gears stand from the lowest to the top, but {typed[k].Text} comes after {typed[k - 1].Text}: write first gear first."), string.Join(',', typed.OrderByDescending(one => one.Ratio).Select(one => Rounded.Typed(one.Ratio)))));
        }
    }

    private Kept Keep(Edge edge, ParseResult parse, string[] readings, CountPrecision how)
    {
        if (!record.IsAsked(parse) && parse.GetValue(gear) is not null)
            throw Reading.Wrong(gear.Name, new Refusal("not-kept", Spoken("Which gear it was is only kept with --record: name the vehicle, or leave this out."), ""));
        if (record.IsAsked(parse) && record.Where(parse) == Position.Overdrive)
            return record.Save<OverdriveComponent>(edge, parse, (unit, vehicle) => Filled(new(unit, IsEngaged(parse), vehicle)));
        if (record.IsAsked(parse) && string.IsNullOrWhiteSpace(parse.GetValue(gear)))
            throw Reading.Wrong(gear.Name, new Refusal("missing", Spoken("Say which gear was counted, as the knob names it."), "3"));

        return record.Save<TransmissionComponent>(edge, parse, (box, vehicle) => Filled(new(box, GearOf(box, parse.GetValue(gear)!), vehicle)));

        GearCountSession Filled(GearCountSession session)
        {
            session.Readings = readings;
            (session.ReadTo, session.Align) = (parse.GetValue(readTo) ?? Rounded.Typed(how.ReadTo), parse.GetValue(align) ?? Rounded.Typed(how.Align));
            return session;
        }
    }

    private bool IsEngaged(ParseResult parse) => parse.GetValue(gear)?.Trim() switch
    {
        null or OverdriveComponent.Engaged => true,
        OverdriveComponent.NotEngaged => false,
        var other => throw Reading.Wrong(gear.Name, new Refusal("gear", Spoken($"'{other}' is nothing that an overdrive unit is counted as: engaged or disengaged."), OverdriveComponent.Engaged)),
    };

    // A gearbox whose gears nobody has written down has whatever gears are counted.
    private string GearOf(TransmissionComponent box, string name)
        => box.GearNames.Count == 0 || box.GearNames.Contains(name.Trim(), StringComparer.OrdinalIgnoreCase)
            ? name
            : throw Reading.Wrong(gear.Name, new Refusal("gear", Spoken($"{box.Name} has no gear '{name}': it has {string.Join(", ", box.GearNames)}."), box.GearNames[0]));

    private List<double> Listed(ParseResult parse) => ListedRatios.Of(parse, listed, RatioRange.Gear).ConvertAll(quoted => quoted.Ratio);

    private static IEnumerable<string> ToText(TurnCount count, RatioCandidates candidates, QuotedRatio? quoted, List<double> known)
    {
        yield return Spoken($"Gear ratio {Rounded.WithInterval(count.Ratio, Units.One)} (95 %), from {CountWords.Counts(count.Readings.Count)}.");
        foreach (var line in TurnCountWords.Doubts(count)) yield return line;
        foreach (var line in GearCountWords.Questions(count, known)) yield return line;
        if (candidates.Ranked.Count > 0)
        {
            foreach (var line in CountWords.Candidates(candidates.Ranked, candidates.NotListedProbability)) yield return line;
        }

        if (quoted is not null) yield return Spoken($"The quoted {quoted.InWords} {(quoted.Agrees(count.Ratio) ? Spoken("agrees with") : Spoken("does not agree with"))} what was counted.");
        if (quoted is not null && !quoted.Agrees(count.Ratio) && quoted.Agrees(1 / count.Ratio)) yield return Spoken("Were the turns written the other way round? Then count and quoted ratio agree.");
        foreach (var line in TurnCountWords.Settling(count, candidates.Ranked)) yield return line;
    }
}
