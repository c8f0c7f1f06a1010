using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Checks;

/// <summary>The tyres are made for the speeds that will be driven.</summary>
/// <remarks>
/// <code>v > limit(symbol) clashes;   limit(symbol) &lt; required(v) is a watch;   of ZR and (Y): v ≤ 240 or 300 km/h fits, above it is open</code>
/// <para>v what it reaches; where that is not known the highest of the cruise goals and the top speed wanted, see <see cref="FastestDriven"/>. Rule, margin and sources see <see cref="TyreSpeed"/>.
/// A symbol whose speed is only from memory warns, see <see cref="SpeedSymbol.IsRead"/>.</para>
/// </remarks>
internal sealed class TyreSpeedCheck : ICheck
{
    private readonly Func<Driveline, OwnersGoals, FastestDriven?> fastestOf;

    public TyreSpeedCheck() : this(FastestDriven.Of)
    {
    }

    private TyreSpeedCheck(Func<Driveline, OwnersGoals, FastestDriven?> fastestOf) => this.fastestOf = fastestOf;

    /// <summary>By the wishes alone: all that can be said of tyres whose gearbox and axle are not chosen yet.</summary>
    public static TyreSpeedCheck ByWishes { get; } = new((_, goals) => FastestDriven.Wanted(goals));

    private static string Limit => Spoken("speed symbol at least the top speed, Regulation (EU) 3/2014; the margin, one country's rule");

    public string Id => "tyre-speed";

    public string Title => Spoken("Tyre speed symbol");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Tyres is not { Size: { } rear } tyres || fastestOf(driveline, goals) is not { } fastest) return [];

        // The slower of two pairs counts; one without a symbol is asked for.
        TyreSize[] sizes = tyres.FrontPair?.Size is { } front ? [rear, front] : [rear];
        var slowest = sizes.MinBy(size => (size.SpeedLimitKmh ?? size.SpeedAboveKmh ?? 0, size.SpeedAboveKmh is not null))!;

        // A wish is what it reaches at least; what the gears allow is the most.
        return [fastest.AtMost is { } most && Judge(slowest, most) is { Verdict: Verdict.Fits } surely ? surely : Judge(slowest, fastest)];
    }

    private Finding Judge(TyreSize size, FastestDriven fastest)
    {
        IReadOnlyList<Position> joint = [Position.Tyres];
        if (size.SpeedAboveKmh is { } above) return MadeForMore(joint, above, fastest);
        if (size is not { SpeedSymbol: { } symbol, SpeedLimitKmh: { } limit })
        {
            return this.Open(
                joint, Spoken($"Whether the tyres are made for {fastest.Text}"),
                fastest.ToKnow is { } toKnow
                    ? [new(Spoken("the speed symbol is not known"), Spoken("read the letter behind the load index on the side wall")), new(Spoken("what it reaches is not known"), toKnow)]
                    : [new(Spoken("the speed symbol is not known"), $"read the letter behind the load index on the side wall; {Needed(fastest)} would do")],
                Limit);
        }

        var kmh = Units.KilometrePerHour;
        var isRead = SpeedSymbol.IsRead(symbol);
        var limits = new TwoLimits(Window.AtMost(kmh.ToBase(Slowest(limit))), Window.AtMost(kmh.ToBase(limit)));
        return this.Judged(new(
            joint, fastest.Speed, kmh, limits.Good,
            $"The tyres' symbol {symbol} is good to {Said.Number(kmh.ToBase(limit), kmh, 0)}, with the usual margin to {Said.Number(limits.Good.High, kmh, 0)}; {fastest.Says}",
            isRead ? Limit : Spoken($"{Limit}; the speed of {symbol} from memory"))
        {
            LimitIsVerified = isRead,
            ByLimits = limits.Judge(fastest.Speed, isRead),
            Reaches = limits.Straddled(fastest.Speed),
            Cures = [$"tyres of speed symbol {Needed(fastest)}", .. fastest.Wish is null ? Array.Empty<Sentence>() : [$"a top speed of {Said.OrLess(limits.Good.High, kmh, 0)}"]],
        }).AtLeast(fastest.ToKnow);
    }

    // ZR, VR and symbols in brackets are a least speed, of which no margin is asked: how much more it is, only the maker knows.
    private Finding MadeForMore(IReadOnlyList<Position> joint, int above, FastestDriven fastest)
    {
        var kmh = Units.KilometrePerHour;
        var sure = Window.AtMost(kmh.ToBase(above));
        if (sure.Contains(fastest.Speed.Interval95))
            return this.Judged(new(joint, fastest.Speed, kmh, sure, $"The tyres are made for more than {Said.Number(sure.High, kmh, 0)}; {fastest.Says}", Limit)).AtLeast(fastest.ToKnow);

        Missing[] missing =
        [
            new(Spoken($"the tyres' marking says only more than {Rounded.Fixed(above, 0)} km/h"), fastest is { ToKnow: null, Symbol: { } symbol }
                ? Spoken($"ask the tyre maker what speed they are made for; {symbol} or faster would do")
                : Spoken("ask the tyre maker what speed they are made for")),
            .. fastest.ToKnow is { } toKnow ? [new(Spoken("what it reaches is not known"), toKnow)] : Array.Empty<Missing>(),
        ];
        return this.Open(joint, Spoken($"Whether the tyres are made for {fastest.Text}"), missing, Limit);
    }

    private static string Needed(FastestDriven fastest) => fastest.Symbol is { } symbol ? Spoken($"{symbol} or faster") : "(Y)";

    // The vehicle speed whose rule asks for exactly this limit; the rule has its step at 150 km/h.
    private static double Slowest(int limit)
    {
        var slow = (limit - 3.5) / 1.03;
        return Math.Max(0, slow <= 150 ? slow : Math.Max(150, (limit - 6.5) / 1.01));
    }
}
