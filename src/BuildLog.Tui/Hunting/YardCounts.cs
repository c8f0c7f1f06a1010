using BuildLog.Data.Components;
using BuildLog.Data.Hunting;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;

namespace BuildLog.Tui.Hunting;

/// <summary>Asks for what was counted in the yard on a part of which several things can be counted: the gears of a gearbox, an overdrive unit engaged and not.</summary>
/// <remarks>The first of them decides; the others are typed where they were counted. Each becomes a session of its own.</remarks>
internal static class YardCounts
{
    private const string First = "turns";
    private const string Others = "others";

    /// <param name="wanted">The gearbox that is hunted.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="keep">Takes what was found.</param>
    public static Form OfGearbox(WantedPart wanted, DateOnly today, Action<CountedInYard> keep) => For(
        wanted, today,
        [
            Counted(Spoken("Top gear")),
            new TextEntry("gear", Spoken("Called")) { Hint = Spoken("the top gear, as the knob names it, such as 5"), Check = Checks.Filled("gear", Spoken("What is the top gear called on this box: 5? If nobody can tell, top.")) },
            new LinesEntry(Others, Spoken("Other gears"), 3) { Hint = Spoken("the gear, then output:input, one a line: 1 10:33.25; first gear at least"), Check = values => NoRatio(values, Each(values)) },
        ],
        values => Turns(values, First, values["gear"].Trim()).Then(first => Each(values).Then<List<Reading>>(others => first.Concat(others).ToList())),
        (readings, values) => YardCount.Found(wanted, new TransmissionComponent(), [.. Gears(readings).Select(gear => (Func<TransmissionComponent, Session>)(box => Filled(new(box, gear.Key), gear, values, today)))]),
        keep);

    /// <param name="wanted">The overdrive unit that is hunted.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="keep">Takes what was found.</param>
    public static Form OfOverdrive(WantedPart wanted, DateOnly today, Action<CountedInYard> keep) => For(
        wanted, today,
        [
            Counted(Spoken("Engaged")),
            new LinesEntry(Others, Spoken("Not engaged"), 2) { Hint = Spoken("output:input, if counted; both ends should turn alike"), Check = values => NoRatio(values, NotEngaged(values)) },
        ],
        values => Turns(values, First, OverdriveComponent.Engaged).Then(first => NotEngaged(values).Then<List<Reading>>(others => first.Concat(others).ToList())),
        (readings, values) => YardCount.Found(wanted, new OverdriveComponent(), [.. Gears(readings).Select(gear => (Func<OverdriveComponent, Session>)(unit => Filled(new(unit, gear.Key == OverdriveComponent.Engaged), gear, values, today)))]),
        keep);

    private static Form For(
        WantedPart wanted, DateOnly today, IReadOnlyList<Entry> counts, Func<FormValues, Parsed<List<Reading>>> read, Func<List<Reading>, FormValues, CountedInYard> find, Action<CountedInYard> keep) => new()
        {
            Title = Spoken($"Counted in the yard: {wanted.Title}"),
            HelpPage = "GearCount",
            SaveCaption = Spoken("Keep"),
            Entries = [.. counts, .. SessionEntries.Precision(CountedEnds.Gearbox), .. SessionEntries.For(today)],
            Echo = values => read(values).Understood(out var readings) && SessionEntries.PrecisionOf(values, CountedEnds.Gearbox).Understood(out var how) ? [.. Gears(readings).SelectMany(gear => Says(gear, how))] : [],
            Save = values => Checks.Try(() =>
            {
                var readings = read(values).OrRefuse();
                var found = find(readings, values);
                if (wanted.Kind == WantedKind.Transmission) CheckOrder(ToldGears.Read(found.Claimed).OrRefuse().Told, readings[0].Gear);
                keep(found);
            }),
        };

    // What was counted as the top gear is the longest of them.
    private static void CheckOrder(IReadOnlyList<ToldGear> told, string top)
    {
        if (told is [.., { Name.Length: > 0 } longest] && !longest.IsCalled(top))
            throw new RefusedException("gears", Spoken($"Gear {longest.Name} was counted longer than the top gear, {top}: {longest.Text}. Output turns come first."), "1 10:33.25");
    }

    private static LinesEntry Counted(string caption) => new(First, caption, 3) { Hint = Spoken("one a line, output:input, such as 10:30.1"), Check = values => NoRatio(values, Turns(values, First, "")) };

    private static Parsed<List<Reading>> Turns(FormValues values, string id, string gear)
        => SessionEntries.Lines(values, id, TurnReading.ReadGear, "10:30.1").Then<List<Reading>>(_ => values.Lines(id).Select(text => new Reading(gear, text)).ToList());

    private static Parsed<List<Reading>> NotEngaged(FormValues values)
        => values.Lines(Others).Count == 0 ? new List<Reading>() : Turns(values, Others, OverdriveComponent.NotEngaged);

    private static string? NoRatio(FormValues values, Parsed<List<Reading>> parsed)
        => parsed.Understood(out var readings)
            ? Gears(readings).Select(gear => SessionEntries.NoRatio(values, CountedEnds.Gearbox, how => Count(gear, how))).FirstOrDefault(refused => refused is not null)
            : parsed.Refusal!.Sentence;

    private static Parsed<List<Reading>> Each(FormValues values)
        => values.Lines(Others).Count == 0 ? new List<Reading>() : SessionEntries.Lines(values, Others, OfAGear, "1 10:33.25");

    // The last blank parts the gear from its turns.
    private static Parsed<Reading> OfAGear(string line)
    {
        var at = line.Trim().LastIndexOf(' ');
        if (at < 1) return new Refusal("gear", Spoken($"{Shown.Quoted(line.Trim())} does not say which gear it is: the gear, a blank, output turns, a colon, input turns."), "1 10:33.25");

        var (gear, turns) = (line.Trim()[..at].Trim(), line.Trim()[(at + 1)..]);
        return TurnReading.ReadGear(turns).Then<Reading>(_ => new Reading(gear, turns));
    }

    private static IEnumerable<IGrouping<string, Reading>> Gears(IEnumerable<Reading> readings) => readings.GroupBy(reading => reading.Gear, StringComparer.OrdinalIgnoreCase);

    private static IEnumerable<string> Says(IGrouping<string, Reading> gear, CountPrecision how)
    {
        if (!Count(gear, how).Understood(out var count)) yield break;

        foreach (var (line, k) in GearCountWords.Live(count).Select((line, k) => (line, k))) yield return k == 0 ? $"{CountedGear.InWords(gear.Key)}: {line}" : line;
        if (gear.Key == OverdriveComponent.NotEngaged && !count.Ratio.AgreesWith(1)) yield return Spoken("! Not engaged both ends should turn alike: it slips, or it was engaged.");
    }

    private static Parsed<TurnCount> Count(IEnumerable<Reading> gear, CountPrecision how)
        => Parsed.From(() => TurnCount.OfGear([.. gear.Select(reading => TurnReading.ReadGear(reading.Turns).OrRefuse())], how));

    private static GearCountSession Filled(GearCountSession session, IEnumerable<Reading> readings, FormValues values, DateOnly today)
    {
        session.Readings = [.. readings.Select(reading => reading.Turns)];
        (session.ReadTo, session.Align) = (values["readTo"], values["align"]);
        SessionEntries.Apply(values, session, today);
        return session;
    }

    private sealed record Reading(string Gear, string Turns);
}
