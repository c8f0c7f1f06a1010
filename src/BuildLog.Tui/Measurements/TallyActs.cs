using System.Globalization;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Measurements;

/// <summary>Counting from the first caution to the kept session, or typed in when it has been counted already.</summary>
/// <remarks>Every turn is kept as it is counted; a tally that is left, or cut off by a crash, is offered again.</remarks>
internal sealed class TallyActs(Scratchpad pad)
{
    private const string Count = "count";
    private const string GoOn = "go on";
    private const string Typed = "typed";
    private const string Turns = "turns";
    private const string Wheels = "wheels";

    /// <returns>Whether a session was kept.</returns>
    public bool CountAxle(IWorkbenchView view, string axle, DateOnly today, Action<Action<TurnCountSession>> save)
        => Run(view, new Counting<AxleTally>
        {
            Title = Spoken($"Count turns: {axle}"),
            GoOn = texts => new AxleTally(axle, Enum.TryParse<Wheels>(texts.GetValueOrDefault(Wheels), out var wheels) ? wheels : default) { Written = texts.GetValueOrDefault(Turns, "") },
            Begin = () =>
            {
                AxleTally? begun = null;
                return view.Fill(TallyForms.SetUp(axle, wheels => begun = new(axle, wheels))) ? begun : null;
            },
            Facts = tally => new() { [Wheels] = tally.Wheels.ToString() },
            Finish = tally => LastPart(view, tally) is { } end && view.Fill(TurnCountForm.For(axle, today, save, new(tally.Wheels, tally.Reading(end.Fraction, end.OtherFraction), end.ReadTo))),
            Typed = () => view.Fill(TurnCountForm.For(axle, today, save)),
        });

    /// <returns>Whether a session was kept.</returns>
    public bool CountGear(IWorkbenchView view, string box, string gear, DateOnly today, Action<Action<GearCountSession>> save)
        => Run(view, new Counting<GearTally>
        {
            Title = Spoken($"Count {CountedGear.InWords(gear)}: {box}"),
            GoOn = texts => new GearTally(box, gear) { Written = texts.GetValueOrDefault(Turns, "") },
            Begin = () => view.Fill(TallyForms.Ready($"{box}, {CountedGear.InWords(gear)}", "GearCount", Cautions.GearCount, SetUps.GearCount)) ? new GearTally(box, gear) : null,
            Finish = tally => LastPart(view, tally) is { } end && view.Fill(GearCountForm.For(box, gear, today, save, new(default, tally.Reading(end.Fraction, end.OtherFraction), end.ReadTo))),
            Typed = () => view.Fill(GearCountForm.For(box, gear, today, save)),
        });

    /// <returns>Whether a session was kept.</returns>
    public bool RollOut(IWorkbenchView view, Data.Components.WheelSetComponent wheels, DateOnly today, UnitSystem units, Action<Action<RollOutSession>> save)
        => Run(view, new Counting<RollTally>
        {
            Title = Spoken($"Roll out: {wheels.Name}"),
            GoOn = texts => new RollTally(wheels.Name) { Written = texts.GetValueOrDefault(Turns, "") },
            Begin = () => view.Fill(TallyForms.Ready(wheels.Name, "RollOut", Cautions.RollOut, SetUps.RollOut)) ? new RollTally(wheels.Name) : null,
            Finish = tally => view.Fill(RollOutForm.For(wheels, today, units, save, tally.Reading)),
            Typed = () => view.Fill(RollOutForm.For(wheels, today, units, save)),
        });

    private bool Run<T>(IWorkbenchView view, Counting<T> counting)
        where T : TallyModel
    {
        var draft = Spoken($"{counting.Title}, tally");
        var tally = pad.Draft(draft) is { } texts ? counting.GoOn(texts) : null;
        switch (view.Choose(counting.Title, Ways(tally)))
        {
            case Typed: return counting.Typed();
            case Count: tally = counting.Begin(); break;
            case GoOn: break;
            default: return false;
        }

        if (tally is null) return false;
        tally.Changed += (_, _) => Keep();
        if (!view.Tally(tally) || !counting.Finish(tally))
        {
            if (tally.Written.Length > 0) view.Say(Spoken($"Kept as far as it was counted, {SoFar(tally)}: the same key goes on with it."));
            return false;
        }

        pad.DropDraft(draft);
        return true;

        // With every turn taken back there is nothing to go on with.
        void Keep()
        {
            if (tally.Written.Length == 0) pad.DropDraft(draft);
            else pad.KeepDraft(draft, new Dictionary<string, string>(counting.Facts(tally)) { [Turns] = tally.Written });
        }
    }

    private static List<ChoiceOption> Ways(TallyModel? tally) =>
    [
        .. tally is null ? Enumerable.Empty<ChoiceOption>() : [new(GoOn, Spoken($"go on with the count under way, {SoFar(tally)}"))],
        new(Count, Spoken("count now, a key for each turn")),
        new(Typed, Spoken("type a count I have already")),
    ];

    private static string SoFar(TallyModel tally) => tally.Driving is null
        ? Spoken($"{tally.DrivenTurns} turns")
        : string.Create(CultureInfo.InvariantCulture, $"{tally.DrivenTurns}:{tally.DrivingTurns}");

    private static LastPart? LastPart(IWorkbenchView view, RatioTally tally)
    {
        LastPart? end = null;
        return view.Fill(TallyForms.Fraction(tally, read => end = read)) ? end : null;
    }

    // How one kind of count is begun, resumed and finished.
    private sealed record Counting<T>
        where T : TallyModel
    {
        public required string Title { get; init; }

        public required Func<IReadOnlyDictionary<string, string>, T> GoOn { get; init; }

        public required Func<T?> Begin { get; init; }

        /// <summary>What must be known besides the turns to go on another day.</summary>
        public Func<T, Dictionary<string, string>> Facts { get; init; } = _ => [];

        public required Func<T, bool> Finish { get; init; }

        public required Func<bool> Typed { get; init; }
    }
}

/// <summary>The quick end's last part of a turn, and to which step it was read.</summary>
/// <param name="OtherFraction">The second wheel's, where each is counted.</param>
public sealed record LastPart(double Fraction, string ReadTo, double OtherFraction = 0);

/// <summary>A count as the tally leaves it, ready for the form.</summary>
public sealed record FinishedTally(Wheels Wheels, string Reading, string ReadTo)
{
    /// <summary>How far off a wheel's mark may be, in turns; null for the usual. A wheel that is not stopped on its mark is read, to half a step at best.</summary>
    public string? Align => Wheels == Wheels.Each && QuantityText.ReadNumber(ReadTo).Understood(out var step) ? Rounded.Typed(step / 2) : null;
}
