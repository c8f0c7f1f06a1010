using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Goals;

/// <summary>An engine speed that the owner wants at a road speed.</summary>
/// <param name="Speed">Road speed as typed; base unit m/s.</param>
/// <param name="EngineSpeed">Engine speed as typed; base unit rev/s.</param>
/// <param name="Wanted">Engine speeds that will do, rev/s.</param>
/// <param name="Gear">The gear by name; null for the top one.</param>
/// <exception cref="RefusedException">A speed outside its range, or a window that nothing is in.</exception>
public sealed record CruiseGoal(Typed Speed, Typed EngineSpeed, Window Wanted, string? Gear)
{
    /// <summary>What to type for a tolerance that has no lower limit.</summary>
    public const string AtMost = "at most";

    /// <summary>What is allowed when nothing is said.</summary>
    public const string UsualTolerance = "5 %";

    private const string Tolerances = "5 %, 150 rpm, -100/+200 rpm";

    internal const double FastestRoadSpeed = 500 / 3.6;
    private const double SlowestRoad = 20 / 3.6;
    private const double FastestRoad = 250 / 3.6;
    private const double FastestEngine = 20_000 / 60.0;

    // Slower than any starter motor turns it: "2.300" is meant as a thousand.
    private const double SlowestEngine = 50 / 60.0;
    private const double SlowestIdle = 450 / 60.0;
    private const double FastestCruise = 7000 / 60.0;

    // Of the engine speed, from end to end.
    private const double NarrowestWindow = 0.02;

    /// <summary>v, the road speed as typed, m/s: above 0, at most 500 km/h, anything else is refused.</summary>
    public Typed Speed { get; init; } = Cruising(Speed).OrRefuse();

    /// <summary>n, the engine speed as typed, rev/s: from 50 to 20 000 rev/min, anything else is refused.</summary>
    public Typed EngineSpeed { get; init; } = Turning(EngineSpeed).OrRefuse();

    /// <summary>Engine speeds that will do, rev/s.</summary>
    public Window Wanted { get; init; } = Wanted.IsEmpty
        ? throw new RefusedException("tolerance", Spoken("No engine speed is wanted: the lower limit has to be at most the upper one."), Tolerances)
        : Wanted;

    /// <summary>Asks whether it is meant, where no road engine idles so slowly or cruises so fast, or no road car cruises so, or the tolerance is below 1 %; null for nothing to ask. Common practice, no source.</summary>
    public string? Question
        => EngineSpeed.Value < SlowestIdle ? Spoken($"Is {Turns} meant? Hardly an engine idles so slowly.")
            : EngineSpeed.Value > FastestCruise ? Spoken($"Is {Turns} meant? Hardly an engine cruises so fast.")
            : Speed.Value is < SlowestRoad or > FastestRoad ? Spoken($"Is {Speed.InWords} meant? Few cruise so {(Speed.Value < SlowestRoad ? Spoken("slowly") : Spoken("fast"))}.")
            : QuestionOf(Wanted, EngineSpeed);

    /// <summary>The question of the tolerance alone; null where it is 1 % or more.</summary>
    /// <param name="wanted">Engine speeds that will do, rev/s.</param>
    /// <param name="engineSpeed">The one that is wanted.</param>
    public static string? QuestionOf(Window wanted, Typed engineSpeed)
    {
        if (wanted.High - wanted.Low >= NarrowestWindow * engineSpeed.Value) return null;

        // Whoever types a bare 9 may have meant either.
        var rpm = Units.RevolutionPerMinute;
        var size = Math.Round(rpm.FromBase(wanted.High - wanted.Low) / 2, 1);
        var meant = size >= 1 ? Spoken($"{Rounded.Exact(size)} % or {Rounded.WithUnit(Rounded.Exact(10 * size), rpm)}") : UsualTolerance;
        return Spoken($"Is ± {Rounded.WithUnit(Rounded.Exact(size), rpm)} meant? Hardly a rev counter is read so closely; else write {meant}.");
    }

    private string Turns => Rounded.WithUnit(Rounded.Exact(Units.RevolutionPerMinute.FromBase(EngineSpeed.Value)), Units.RevolutionPerMinute);

    /// <param name="speed">Such as <c>110 km/h</c>.</param>
    /// <param name="engineSpeed">Such as <c>2400 rpm</c>; a bare number is rev/min.</param>
    /// <param name="tolerance"><c>5 %</c>, <c>150 rpm</c>, <c>-100/+200 rpm</c> or <c>at most</c>; empty for 5 %.</param>
    /// <param name="gear">Empty for the top gear.</param>
    public static Parsed<CruiseGoal> Read(string speed, string engineSpeed, string tolerance = "", string gear = "")
        => ReadSpeed(speed).Then(v =>
            ReadEngineSpeed(engineSpeed).Then(n =>
                Tolerated(tolerance.Trim(), n.Value).Then<CruiseGoal>(wanted =>
                    new CruiseGoal(v, n, wanted, gear.Trim().Length == 0 ? null : gear.Trim()))));

    /// <summary>Reads all of it in one line: <c>110 km/h at 2400 rpm ± 150 rpm in 4</c>, or <c>110 km/h at most 2400 rpm</c>.</summary>
    /// <param name="text">What was typed; tolerance and gear may be left out.</param>
    /// <param name="instead">The goal that it takes the place of: what is left out stays as it is there, a tolerance as the same share.</param>
    public static Parsed<CruiseGoal> ReadLine(string text, CruiseGoal? instead = null)
    {
        var (line, gear) = GoalLine.InGear(text);
        if (GoalLine.At(line) is not { } at)
            return new Refusal("cruise", Spoken($"{Shown.Quoted(text)} is no cruise: a speed, the word at, and an engine speed."), "110 km/h at 2400 rpm");

        var (turns, tolerance) = WithTolerance(at.Behind);
        return Read(at.Before, turns, tolerance, gear).In(text).Then<CruiseGoal>(goal => goal with
        {
            Wanted = tolerance.Length == 0 && instead is not null ? instead.Wanted.Times(goal.EngineSpeed.Value / instead.EngineSpeed.Value) : goal.Wanted,
            Gear = goal.Gear ?? instead?.Gear,
        });
    }

    /// <summary>The line of <see cref="ReadLine"/>, a bare road speed in it with its unit; any other text as it is.</summary>
    public static string WithSpeedIn(string text, Unit usual) => GoalLine.Reworded(text, speed => QuantityText.WithUnit(speed, Kind.Speed, usual), turns => turns);

    // "at most 2400 rpm" was parted behind its "at".
    private static (string Turns, string Tolerance) WithTolerance(string text)
    {
        const string Most = "most ";
        if (text.StartsWith(Most, StringComparison.OrdinalIgnoreCase)) return (text[Most.Length..].Trim(), AtMost);

        var from = ((string[])["±", "+/-", " -"]).Select(sign => text.IndexOf(sign, StringComparison.Ordinal)).Where(place => place > 0).DefaultIfEmpty(text.Length).Min();
        return (text[..from].Trim(), text[from..].Trim());
    }

    /// <summary>Reads a road speed with its unit: more than 0, at most 500 km/h.</summary>
    public static Parsed<Typed> ReadSpeed(string text) => QuantityText.Read(text, Kind.Speed).Then(Cruising);

    /// <summary>The same where a bare number has a unit: the one that is chosen on a screen.</summary>
    public static Parsed<Typed> ReadSpeed(string text, Unit unitIfNone) => QuantityText.Read(text, Kind.Speed, unitIfNone).Then(Cruising);

    /// <summary>Reads an engine speed, a bare number as rev/min: from 50 to 20 000.</summary>
    public static Parsed<Typed> ReadEngineSpeed(string text) => QuantityText.ReadPlain(text, Kind.Rotation, Units.RevolutionPerMinute).Then(Turning);

    /// <summary>Reads a tolerance about an engine speed; the window is in rev/s.</summary>
    public static Parsed<Window> ReadTolerance(string text, Typed engineSpeed) => Tolerated(text.Trim(), engineSpeed.Value);

    private static Parsed<Typed> Cruising(Typed typed) => typed.Value is > 0 and <= FastestRoadSpeed
        ? typed
        : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} is no road speed to cruise at: more than 0, at most 500 km/h."), "110 km/h");

    private static Parsed<Typed> Turning(Typed typed) => typed.Value is >= SlowestEngine and <= FastestEngine
        ? typed
        : new Refusal("out-of-range", Spoken($"{Shown.Quoted(typed.Text)} is no engine speed: at least 50, at most 20 000 rev/min."), "2400 rev/min");

    private static Parsed<Window> Tolerated(string text, double n)
    {
        if (string.Equals(text, AtMost, StringComparison.OrdinalIgnoreCase)) return Window.AtMost(n);

        var typed = text.Length == 0 ? UsualTolerance : text;
        if (typed.StartsWith("+/-", StringComparison.Ordinal)) typed = typed[3..];

        // "-100/+200 rpm": the unit stands once, at the end; the stroke in "rev/min" is not the one that parts the sides.
        var plus = typed.IndexOf('+', StringComparison.Ordinal);
        if (plus > 0 && typed.StartsWith('-') && typed[..plus].TrimEnd() is [.. var down, '/'])
        {
            var up = typed[plus..];
            return Size(up[1..], n, text).Then(above =>
                Size(down[1..] + Unit(down, up), n, text).Then<Window>(below => Checked(n - below, n + above, n, text)));
        }

        return Size(typed.TrimStart('±', ' '), n, text).Then<Window>(size => Checked(n - size, n + size, n, text));
    }

    private static Parsed<double> Size(string text, double n, string whole)
    {
        var share = text.TrimEnd().EndsWith('%');
        var size = share ? QuantityText.ReadPlain(text, Kind.Share) : QuantityText.ReadPlain(text, Kind.Rotation, Units.RevolutionPerMinute);
        return size.Refusal is { } refusal
            ? refusal.In(whole) with { Example = Tolerances }
            : size.Then<double>(typed => share ? typed.Value * n : typed.Value);
    }

    private static string Unit(string down, string up)
        => down.Any(char.IsAsciiLetter) || down.Contains('%', StringComparison.Ordinal) ? "" : new string([.. up.SkipWhile(c => !char.IsAsciiLetter(c) && c != '%')]);

    private static Parsed<Window> Checked(double low, double high, double n, string text)
        => low > 0 && low <= n && high >= n ? new Window(low, high) : Refuse(text);

    private static Refusal Refuse(string text)
        => new("tolerance", Spoken($"{Shown.Quoted(text)} is no tolerance: write a share, a number of rev/min, both sides, or '{AtMost}'."), Tolerances);
}
