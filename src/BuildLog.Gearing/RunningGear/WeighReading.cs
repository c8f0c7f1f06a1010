using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.RunningGear;

/// <summary>What stood on the plate.</summary>
public enum OnThePlate
{
    /// <summary>The front axle.</summary>
    Front,

    /// <summary>The rear axle.</summary>
    Rear,

    /// <summary>All of the vehicle.</summary>
    Whole,
}

/// <summary>One display of a weighbridge.</summary>
/// <param name="On">What stood on the plate.</param>
/// <param name="Mass">Kilograms, with a typed ± if there was one.</param>
/// <param name="Text">The reading as typed.</param>
public sealed record WeighReading(OnThePlate On, Typed Mass, string Text)
{
    private const string Right = "front 700 kg";

    /// <summary>Reads <c>front 700 kg</c>, <c>rear 750 kg</c>, <c>whole 1450 kg</c>.</summary>
    public static Parsed<WeighReading> Read(string text)
    {
        if (text.Trim().Split((char[]?)null, 2, StringSplitOptions.RemoveEmptyEntries) is not [var word, var mass] || !Word.Of<OnThePlate>(word, out var on))
            return new Refusal("weighing", Spoken($"{Shown.Quoted(text)} is no weighing: write front, rear or whole, then what the display shows."), Right);

        return (on == OnThePlate.Whole ? VehicleLoad.ReadMass(mass) : ReadAxle(mass)).Then<WeighReading>(typed => new WeighReading(on, typed, text.Trim()));
    }

    /// <summary>For whoever reads it: <c>front 700 kg</c>.</summary>
    public string InWords => On switch
    {
        OnThePlate.Front => Spoken($"front {Mass.InWords}"),
        OnThePlate.Rear => Spoken($"rear {Mass.InWords}"),
        _ => Spoken($"whole {Mass.InWords}"),
    };

    /// <summary>The reading as typed.</summary>
    public override string ToString() => Text;

    private static Parsed<Typed> ReadAxle(string text)
        => QuantityText.Read(text, Kind.Mass).Then<Typed>(typed => typed.Value is >= 20 and <= 40_000
            ? typed
            : new Refusal("out-of-range", Spoken($"{Shown.Quoted(text)} cannot be the mass on an axle: it lies between 20 and 40000 kg."), "700 kg"));
}
