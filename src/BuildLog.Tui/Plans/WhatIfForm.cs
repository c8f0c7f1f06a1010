using BuildLog.Data;
using BuildLog.Data.Plans;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speeds;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Hunting;
using BuildLog.Tui.Options;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Plans;

/// <summary>Asks for other numbers of a driveline; at every key it says what they do to cruise, gears and findings.</summary>
internal static class WhatIfForm
{
    private const int MostFindings = 3;

    /// <summary>Every part, and what to type of it.</summary>
    internal static readonly IReadOnlyList<(Position Position, Later Hint)> Asked =
    [
        (Position.Engine, new Later("redline, torque: 5200 rpm; 1500:180 Nm; 3000:210 Nm; idle 750 rpm")),
        (Position.Transmission, new Later("all gears: 3.32 2.05 1.38 1.00 0.81; or the top one alone; then slip 3 %; clutch rating 320 Nm")),
        (Position.Overdrive, new Later("such as 0.78; none for going without, as of any part")),
        (Position.TransferCase, new Later("high 1.00; low 2.48, or none")),
        (Position.Propshaft, new Later("tube 89 mm; wall 2.1 mm; length 1.30 m; angles 3 5 3; above 0 2 0; joint 900 Nm")),
        (Position.FrontPropshaft, new Later("tube 63 mm; wall 2.1 mm; length 0.80 m; angles 3 8 3")),
        (Position.RearAxle, new Later("such as 3.36, or teeth 37/11; hub reduction 2.00; torque rating 4000 Nm")),
        (Position.FrontAxle, new Later("such as 3.36, or teeth 37/11")),
        (Position.Tyres, new Later("such as 205/65R15, or 2.05 m as it rolls; rim width 7 in")),
        (Position.FrontTyres, new Later("where they differ, such as 185/65R15; none for the same all round")),
        (Position.Speedometer, new Later("gears 8/21, or pulses 16; correction 0.917; dial 1000 per km")),
    ];

    /// <param name="bench">The vehicle as it is.</param>
    /// <param name="shop">The record, asked for parts of the shop that are tried.</param>
    /// <param name="tried">What is tried already.</param>
    /// <param name="wished">Which load and wishes are.</param>
    /// <param name="put">Takes the changes and wishes; none where nothing was typed.</param>
    /// <param name="units">The units to show.</param>
    public static Form For(VehicleOnBench bench, Shop shop, IReadOnlyList<PlannedChange> tried, TriedWishes wished, Action<IReadOnlyList<PlannedChange>, TriedWishes> put, UnitSystem units)
    {
        var rejected = RejectedPlans.Of(shop, bench);
        var understood = Says(bench, bench, units);
        return new()
        {
            Title = Spoken($"What if: {bench.Vehicle.Name} (empty: as it is)"),
            HelpPage = "Plans",
            SaveCaption = Spoken("Try"),
            Entries =
            [
                .. Asked.Where(asked => asked.Position is not (Position.FrontAxle or Position.FrontPropshaft) || bench.Driveline.FrontAxle is not null)
                    .Select(asked => Entry(
                        asked.Position.ToString(), Caption(asked.Position), asked.Hint, tried.FirstOrDefault(change => change.Position == asked.Position)?.Listed,
                        text => PlannedDriveline.Read(bench.Driveline, asked.Position, text).Refusal?.Sentence)),
                .. WishSheet.All.Select(wish => Entry(wish.ToString(), TextFit.Capital(wish.InWords()), wish.Line().Hint, wished[wish], text => wish.Refuses(wish.Line().WithSpeedIn(text, units.Speed))?.Sentence)),
            ],

            // What was understood last stays in view while a value is half typed.
            Echo = values =>
            {
                var read = Parsed.From(() => WishedIn(values, units).On(bench.With(shop, Typed(values, tried))));
                if (!read.Understood(out var whole)) return [Spoken("Not understood yet; so far:"), .. understood];

                var before = Typed(values, tried) is { Count: > 0 } changes ? rejected.Says(whole.Driveline, changes) : null;
                return understood = [.. before is null ? Array.Empty<string>() : [$"! {before.Says}"], .. Says(bench, whole, units)];
            },
            Save = values => Checks.Try(() => put(Typed(values, tried), WishedIn(values, units))),
        };
    }

    /// <summary>The engine speed at the first cruise goal, or nothing where it cannot be said.</summary>
    public static string Cruise(VehicleOnBench bench) => EngineSpeed(bench) is { } n ? Rounded.WithInterval(n, Units.RevolutionPerMinute) : "";

    /// <summary>What becomes of the cruise engine speed; where another road speed is tried, what it is there. Null where it cannot be said.</summary>
    public static string? CruiseIn(VehicleOnBench before, VehicleOnBench after, UnitSystem units)
    {
        if (Cruise(after) is not { Length: > 0 } cruise) return null;

        var (speed, was) = (after.Goals.Cruise[0].Speed, Cruise(before));
        return before.Goals.Cruise.FirstOrDefault()?.Speed.Text != speed.Text ? Spoken($"Cruise {cruise} at {units.InWords(speed)}.")
            : was.Length > 0 && was != cruise ? Spoken($"Cruise {was} becomes {cruise}.")
            : Spoken($"Cruise {cruise}.");
    }

    /// <summary>The same as a number, rev/s; null where it cannot be said.</summary>
    public static Measured? EngineSpeed(VehicleOnBench bench) => bench.Goals.Cruise is [var goal, ..] ? CruiseCheck.EngineSpeed(bench.Driveline, goal) : null;

    // What is wrong with it is said below it at every key, not only when it is left.
    private static TextEntry Entry(string id, string caption, string hint, string? typed, Func<string, string?> wrong)
    {
        string? Wrong(FormValues values) => values.IsEmpty(id) ? null : wrong(values[id]);
        return new(id, caption) { Initial = typed ?? "", Hint = hint, Check = Wrong, Echo = values => Wrong(values) is { } sentence ? $"! {sentence}" : null };
    }

    private static string Caption(Position position) => TextFit.Capital(position.InWords());

    private static TriedWishes WishedIn(FormValues values, UnitSystem units)
        => new([.. WishSheet.All.Where(wish => !values.IsEmpty(wish.ToString())).Select(wish => new PlannedWish(wish, wish.Line().WithSpeedIn(values[wish.ToString()], units.Speed)))]);

    // A part of the shop that is tried stays where nothing is typed in its place.
    private static List<PlannedChange> Typed(FormValues values, IReadOnlyList<PlannedChange> tried) =>
    [
        .. Asked.Select(asked => asked.Position).Where(position => !values.IsEmpty(position.ToString())).Select(position => new PlannedChange(position, values[position.ToString()])),
        .. tried.Where(change => change.ComponentId is not null && values.IsEmpty(change.Position.ToString())),
    ];

    private static IReadOnlyList<string> Says(VehicleOnBench before, VehicleOnBench after, UnitSystem units)
    {
        var lines = after.Goals.Cruise.Select(goal => goal.Question).OfType<string>().Select(question => $"? {question}").ToList();
        if (CruiseIn(before, after, units) is { } cruise) lines.Add(cruise);
        if (GearSpeeds.Of(after.Driveline) is { } speeds)
            lines.Add(Spoken($"Per 1000 rev/min: {string.Join(", ", speeds.Steps.Select(step => $"{step.Name} {Rounded.Value(speeds.PerThousand(step), units.Speed)}"))}"));
        lines.Add(Spoken($"Findings: {FindingsWords.Count(before.Findings).Summary()} becomes {FindingsWords.Count(after.Findings).Summary()}."));
        lines.AddRange(after.Findings.Where(finding => finding.Verdict == Verdict.Clash).Take(MostFindings).Select(finding => $"{finding.Verdict.Sign()} {finding.SaysIn(units.Shown)}"));
        return lines;
    }
}
