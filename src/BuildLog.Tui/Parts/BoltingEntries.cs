using System.Globalization;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

/// <summary>What wheels are bolted by, asked alike of an axle's hub and of a wheel.</summary>
internal static class BoltingEntries
{
    private static IReadOnlyList<SpecField<BoltedComponent>> Numbers =>
    [
        new(Spec.PitchCircle, Spoken("Bolt circle"), Spoken("such as 114.3 mm"), b => b.PitchCircle, (b, n) => b.PitchCircle = n),
        new(Spec.Bore, Spoken("Centre bore"), Spoken("or the hub's spigot, such as 66.1 mm"), b => b.Bore, (b, n) => b.Bore = n),
    ];

    public static IEnumerable<Entry> Entries(BoltedComponent part) =>
    [
        new TextEntry("studs", Spoken("Studs")) { Initial = part.Studs?.ToString(CultureInfo.InvariantCulture) ?? "", Hint = Spoken("how many, such as 5"), Check = Forms.Checks.IfTyped("studs", ReadStuds) },
        .. Numbers.Select(field => field.Entry(part)),
        new TextEntry("thread", Spoken("Thread")) { Initial = part.Thread ?? "", Hint = Spoken("as on the nut, such as M12×1.5") },
        new ChoiceEntry("seat", Spoken("Nuts seat"), [new("", Spoken("not said")), new(nameof(Seat.Cone), Spoken("on a cone")), new(nameof(Seat.Ball), Spoken("on a ball")), new(nameof(Seat.Flat), Spoken("flat"))])
        {
            Initial = part.Seat?.ToString() ?? "",
        },
    ];

    public static void Apply(FormValues values, BoltedComponent part, Telling told)
    {
        part.Studs = values.IsEmpty("studs") ? null : ReadStuds(values["studs"]).OrRefuse();
        foreach (var field in Numbers) field.Apply(values, part, told);
        part.Thread = values.IsEmpty("thread") ? null : values["thread"];
        part.Seat = Enum.TryParse<Seat>(values["seat"], out var seat) ? seat : null;
    }

    private static Parsed<int> ReadStuds(string text)
        => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var studs) && studs is >= 3 and <= 10
            ? studs
            : new Refusal("studs", Spoken($"{Shown.Quoted(text)} is no number of studs: 3 to 10."), "5");
}
