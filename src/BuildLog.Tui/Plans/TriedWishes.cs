using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Plans;

/// <summary>Another load and other wishes to try on the bench, as typed; what is empty stays as it is. They are no parts, so no plan keeps them.</summary>
internal sealed record TriedWishes(string Mass = "", string DragArea = "", string Cruise = "", string TopSpeed = "", string HillStart = "", string TyreDiameter = "")
{
    public static TriedWishes None { get; } = new();

    private const string At = " at ";

    public bool AreNone => this == None;

    /// <summary><c>mass 1600 kg, cruise 110 km/h at 2400 rpm</c>.</summary>
    public string InWords => string.Join(", ", ((IEnumerable<(string What, string Typed)>)
        [("mass", Mass), ("drag area", DragArea), ("cruise", Cruise), ("top speed", TopSpeed), ("hill start", HillStart), ("tyre diameter at most", TyreDiameter)])
        .Where(each => each.Typed.Length > 0).Select(each => $"{each.What} {each.Typed}"));

    /// <summary>A cruise goal in one line: <c>110 km/h at 2400 rpm</c>.</summary>
    public static Parsed<CruiseGoal> ReadCruise(string text)
        => text.Split(At, StringSplitOptions.TrimEntries) is [var speed, var turns]
            ? CruiseGoal.Read(speed, turns).In(text)
            : new Refusal("cruise", $"{Shown.Quoted(text)} is no cruise: a speed, the word at, and an engine speed.", "110 km/h at 2400 rpm");

    /// <summary>The vehicle with them, judged again.</summary>
    /// <exception cref="RefusedException">A text means nothing.</exception>
    public VehicleOnBench On(VehicleOnBench bench)
    {
        if (AreNone) return bench;

        var (load, goals) = (bench.Driveline.Load ?? new VehicleLoad(), bench.Goals);
        if (Mass.Length > 0) load = load with { Mass = Told(VehicleLoad.ReadMass(Mass).OrRefuse(), "mass") };
        if (DragArea.Length > 0) load = load with { DragArea = Told(VehicleLoad.ReadDragArea(DragArea).OrRefuse(), "drag area") };
        if (Cruise.Length > 0) goals = goals with { Cruise = [ReadCruise(Cruise).OrRefuse(), .. goals.Cruise.Skip(1)] };
        if (TopSpeed.Length > 0) goals = goals with { TopSpeed = TopSpeedGoal.Read(TopSpeed).OrRefuse() };
        if (HillStart.Length > 0) goals = goals with { HillStart = HillStartGoal.Read(HillStart).OrRefuse() };
        if (TyreDiameter.Length > 0) goals = goals with { TyreDiameter = LengthLimit.ReadTyreDiameter(TyreDiameter).OrRefuse() };
        var driveline = bench.Driveline with { Load = load };
        return bench with { Fitted = bench.Fitted with { Driveline = driveline }, Goals = goals, Findings = AllChecks.Look(driveline, goals) };
    }

    private static Known Told(Typed typed, string what) => new(typed.ToMeasured(what), Source.OwnersWord, typed.Text);
}
