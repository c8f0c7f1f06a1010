using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Sessions;

/// <summary>A measurement session: what was read, exactly as typed. Its result is computed from the readings each time.</summary>
public abstract class Session : Entered
{
    public DateOnly Date { get; set; }

    /// <summary>Who helped; empty if nobody did.</summary>
    public string Helper { get; set; } = "";

    public string Conditions { get; set; } = "";

    public string Notes { get; set; } = "";

    /// <summary>The part that was measured.</summary>
    public long ComponentId { get; internal set; }

    /// <summary>The vehicle it was on; null on the bench.</summary>
    public long? VehicleId { get; internal set; }

    /// <summary>Loaded with the session.</summary>
    public Component Component { get; internal set; } = null!;

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

    /// <summary>The method in the trade's words.</summary>
    public abstract string Method { get; }

    internal List<ReadingRow> Rows { get; } = [];

    internal override string KindInWords => Method;

    public override string ToString() => $"of {Date.InWords()}";

    /// <summary>This method measures such a part.</summary>
    internal abstract bool Measures(Component component);
}

/// <summary>A reading as it is stored.</summary>
internal sealed class ReadingRow
{
    public long Id { get; set; }

    public long SessionId { get; set; }

    public int Ordinal { get; set; }

    public string Text { get; set; } = "";
}
