using BuildLog.Data.Components;
using BuildLog.Data.Days;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Sessions;

/// <summary>A measurement session: what was read, exactly as typed. Its result is computed from the readings each time.</summary>
public abstract class Session : Dated
{
    /// <summary>Who helped; empty if nobody did.</summary>
    public string Helper { get; set; } = "";

    public string Conditions { get; set; } = "";

    public string Notes { get; set; } = "";

    /// <summary>The part that was measured; null where it was the vehicle itself.</summary>
    public long? ComponentId { get; internal set; }

    /// <summary>The vehicle it was on; null on the bench.</summary>
    public long? VehicleId { get; internal set; }

    /// <summary>Loaded with the session.</summary>
    public Component? Component { get; internal set; }

    /// <summary>Loaded with the session.</summary>
    public Vehicle? Vehicle { get; internal set; }

    /// <summary>In the order they were taken, as typed.</summary>
    public IReadOnlyList<string> Readings
    {
        get => [.. Rows.OrderBy(row => row.Ordinal).Select(row => row.Text)];
        set
        {
            Rows.Clear();
            Rows.AddRange(value.Select((text, k) => new ReadingRow { Ordinal = k + 1, Text = text }));
        }
    }

    /// <summary>The readings for whoever reads them; see <see cref="AsWritten"/>.</summary>
    public IReadOnlyList<string> ReadingsInWords => [.. Readings.Select(InWords)];

    /// <summary>The method in the trade's words.</summary>
    public abstract Later Method { get; }

    /// <summary>What was measured, by its name.</summary>
    public string Subject => Component?.Name ?? Vehicle?.Name ?? "";

    internal List<ReadingRow> Rows { get; } = [];

    internal override Later KindInWords => Method;

    public override string ToString() => Spoken($"of {Day.InWords}");

    /// <summary>One reading for whoever reads it: with its unit, where one was taken for granted.</summary>
    private protected virtual string InWords(string reading) => AsWritten.Numbers(reading);

    /// <summary>This method measures such a part; null asks whether it measures the vehicle.</summary>
    internal abstract bool Measures(Component? component);

    /// <summary>The numbers of a spec sheet that it is evidence for.</summary>
    internal virtual IEnumerable<NumberFound> Finds() => [];

    /// <summary>Without its part it measured nothing; one of a vehicle alone, nothing without that.</summary>
    internal override bool HangsOn(string reference) => reference == nameof(ComponentId) || ComponentId is null;

    private protected string Says => Spoken($"{Method} of {Day.InWords}");

    private protected NumberFound Found(Spec spec, Measured number) => new(spec.InWords(), spec.Line().Unit, new(number, Source.Measured, Says));

    private protected static void CheckRange(Spec spec, Measured number)
    {
        var (low, high) = (spec.Line().Low, spec.Line().High);
        if (!(number.Value >= low && number.Value <= high))
            throw new RefusedException(
                "out-of-range",
                Spoken($"The readings make a {spec.InWords()} of {Rounded.Value(number, spec.Line().Unit)}, and it lies between {Rounded.Value(low, spec.Line().Unit)} and {Rounded.Value(high, spec.Line().Unit)}."),
                "");
    }
}

/// <summary>A number that a session found.</summary>
/// <param name="Number">What it is called, as on a spec sheet.</param>
internal sealed record NumberFound(string Number, Unit Unit, Known Known);

/// <summary>A reading as it is stored.</summary>
internal sealed class ReadingRow
{
    public long Id { get; set; }

    public long SessionId { get; set; }

    public int Ordinal { get; set; }

    public string Text { get; set; } = "";
}
