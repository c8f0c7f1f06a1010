using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Plans;

/// <summary>Another gearbox, or another converter before it: <c>3.32 2.05 1.38 1.00; slip 3 %; stall 2100 rpm</c>.</summary>
internal static class TriedGearbox
{
    private const string Slip = "slip";
    private const string Stall = "stall";

    public static Parsed<Transmission> Read(string text, string name, Transmission? fitted)
    {
        var parted = NamedNumbers.Parted(text);
        var ofConverter = parted.Where(number => NamedNumbers.Behind(Slip, number) is not null || NamedNumbers.Behind(Stall, number) is not null).ToList();
        if (ofConverter.Count == 0) return ToldPart.Gearbox(text, name, fitted);

        var gears = string.Join(NamedNumbers.Between, parted.Except(ofConverter));
        Parsed<Transmission> box = gears.Length > 0 ? ToldPart.Gearbox(gears, name, fitted)
            : fitted is not null ? fitted with { Name = name }
            : new Refusal("gears", Spoken("No gearbox is fitted: write its gears before slip and stall."), "3.32 2.05 1.38 1.00; slip 3 %");
        return box.Then(whole => NamedNumbers.Read(string.Join(NamedNumbers.Between, ofConverter), Spoken("the converter"), [Slip, Stall], "slip 3 %; stall 2100 rpm")
            .Then(numbers => With(whole, numbers)));
    }

    private static Parsed<Transmission> With(Transmission box, IReadOnlyDictionary<string, string> numbers)
    {
        var converter = box.Converter ?? new Converter(LocksUp: false);
        return Parsed.From(() =>
        {
            if (numbers.TryGetValue(Slip, out var slip)) converter = converter with { Slip = Told(QuantityText.Read(slip, Kind.Share).OrRefuse()) };
            if (numbers.TryGetValue(Stall, out var stall)) converter = converter with { StallSpeed = Spec.StallSpeed.Line().Told(stall) };
            return box with { Converter = converter };
        });
    }

    private static Known Told(Typed slip) => new(slip.ToItsLastDigit(Spoken("converter slip")), Source.OwnersWord, slip.InWords);
}
