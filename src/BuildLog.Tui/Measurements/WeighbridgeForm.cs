using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Measurements;

/// <summary>Asks for three weighings: front, rear and all of it; the third checks the other two.</summary>
public static class WeighbridgeForm
{
    private const string Step = "step";
    private static string NothingYet => Spoken("Type what the display showed: of an axle, or of all of it. Example: 700 kg");

    private static IReadOnlyList<(OnThePlate On, string Caption, string Hint)> Asked =>
    [
        (OnThePlate.Front, Spoken("Front axle"), Spoken("such as 700 kg")), (OnThePlate.Rear, Spoken("Rear axle"), Spoken("such as 750 kg")), (OnThePlate.Whole, Spoken("All of it"), Spoken("such as 1450 kg")),
    ];

    /// <param name="vehicle">The vehicle, laden as heavily as it will be.</param>
    /// <param name="today">The day it is.</param>
    /// <param name="save">Stores the session with the edit applied.</param>
    /// <param name="known">The session that is put right.</param>
    /// <param name="units">The units to show; null for metric ones.</param>
    public static Form For(Vehicle vehicle, DateOnly today, Action<Action<WeighbridgeSession>> save, WeighbridgeSession? known = null, UnitSystem? units = null) => new()
    {
        Title = SessionEntries.Title(Spoken("Weighbridge"), vehicle.Name, known),
        HelpPage = "Weighbridge",
        Cautions = known is null ? Cautions.AtTheWheel : [],
        SetUp = known is null ? SetUps.Weighbridge : [],
        SaveCaption = Spoken("Keep"),
        Entries =
        [
            .. Asked.Select(asked => new TextEntry(Id(asked.On), asked.Caption)
            {
                Initial = Typed(known, asked.On),
                Hint = asked.Hint,
                Check = values => Asked.All(each => values.IsEmpty(Id(each.On))) ? NothingYet : Forms.Checks.IfTyped(Id(asked.On), text => Read(asked.On, text))(values),
                Echo = OtherUnits.Of(Id(asked.On), text => Read(asked.On, text)),
            }),
            new TextEntry(Step, Spoken("Plate reads to"))
            {
                Initial = known?.Step ?? "20 kg",
                Hint = Spoken("the step of its display"),
                Check = Forms.Checks.Needed(Step, WeighbridgeSession.ReadStep),
                Echo = OtherUnits.Of(Step, WeighbridgeSession.ReadStep),
            },
            .. SessionEntries.For(today, known),
        ],
        Echo = values => Weighed(values, vehicle).Understood(out var weighing) ? Says(weighing, units ?? UnitSystem.Metric) : [],
        Save = values => Weighed(values, vehicle).Understood(out var weighing) && weighing.CarriesAll is { } axle
            ? SaveOutcome.Refuse(Id(axle), AllOnOne(axle))
            : Forms.Checks.Try(() => save(session => SessionEntries.Apply(values, Filled(values, session), today))),
    };

    /// <summary>How the masses lie, and whether the whole confirms the two.</summary>
    public static IReadOnlyList<string> Says(Weighing weighing, UnitSystem units)
    {
        string Whole(double mass) => Rounded.WithUnit(Rounded.Fixed(units.Mass.FromBase(mass), 0), units.Mass);

        if (weighing.CarriesAll is { } axle) return [AllOnOne(axle)];
        if (weighing is not { Front: { } front, Rear: { } rear, Sum: { } sum }) return weighing is { Front: { } only, Whole: { } all } && FrontShare.Doubt(only.Value, all.Value) is { } unusual ? [unusual] : [];
        string split = Spoken($"Front {Rounded.WithInterval(front, units.Mass)}, rear {Rounded.WithInterval(rear, units.Mass)}: {Whole(sum.Value)}, {Rounded.Fixed(rear.Value / sum.Value * 100, 0)} % of it behind.");
        string[] lies = FrontShare.Doubt(front.Value, sum.Value) is { } doubt ? [split, doubt] : [split];
        if (weighing.Gap is not { } gap) return lies;
        return
        [
            .. lies,
            weighing.Agrees
                ? Spoken($"All of it differs by {Whole(gap)}, as the display and a level road allow.")
                : Spoken($"All of it differs by {Whole(gap)}: brakes were on, or plate and road are not level. Weigh again."),
        ];
    }

    private static string AllOnOne(OnThePlate axle)
        => Spoken($"The {axle.InWords()} would carry all of it: one of the two is misread, or all of it stood on the plate twice. Example: front 700 kg, rear 750 kg, all of it 1450 kg");

    private static Parsed<Weighing> Weighed(FormValues values, Vehicle vehicle) => Parsed.From(() => Filled(values, new(vehicle)).Result());

    // What is not typed yet is not weighed yet: the lines below the form speak as soon as both axles stand there.
    private static WeighbridgeSession Filled(FormValues values, WeighbridgeSession session)
    {
        session.Readings = [.. Asked.Where(asked => !values.IsEmpty(Id(asked.On))).Select(asked => $"{Id(asked.On)} {values[Id(asked.On)]}")];
        session.Step = values[Step];
        return session;
    }

    private static string Typed(WeighbridgeSession? known, OnThePlate on)
        => known?.Readings.FirstOrDefault(text => text.StartsWith(Id(on), StringComparison.OrdinalIgnoreCase))?[Id(on).Length..].Trim() ?? "";

    private static Parsed<Typed> Read(OnThePlate on, string text) => WeighReading.Read($"{Id(on)} {text}").Then<Typed>(reading => reading.Mass);

    private static string Id(OnThePlate on) => on switch { OnThePlate.Front => "front", OnThePlate.Rear => "rear", _ => "whole" };
}
