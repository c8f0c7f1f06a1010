using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Propshafts;

/// <summary>A member of a shaft line whose angle can be read.</summary>
public enum Member
{
    /// <summary>The shaft out of the gearbox, overdrive or transfer case.</summary>
    Output,

    /// <summary>The propshaft itself.</summary>
    Shaft,

    /// <summary>The pinion shaft of the axle.</summary>
    Pinion,
}

/// <summary>From where a member was looked at.</summary>
public enum Seen
{
    /// <summary>From the side, positive where the front end is the higher one.</summary>
    Side,

    /// <summary>From above, positive where the front end is further to the right.</summary>
    Above,
}

/// <summary>One angle read off a shaft line of one piece.</summary>
/// <param name="Of">Which member.</param>
/// <param name="From">From where.</param>
/// <param name="Angle">Radians, with a typed ± if there was one.</param>
/// <param name="Text">The reading as typed.</param>
public sealed record AngleReading(Member Of, Seen From, Typed Angle, string Text)
{
    private const string Right = "shaft side 5 deg";
    private const double Steepest = Math.PI / 4;

    /// <summary>Reads <c>output side 3.5 deg</c>, <c>pinion above -1 deg</c>.</summary>
    public static Parsed<AngleReading> Read(string text)
    {
        if (text.Trim().Split((char[]?)null, 3, StringSplitOptions.RemoveEmptyEntries) is not [var member, var view, var angle]
            || !Word.Of<Member>(member, out var of) || !Word.Of<Seen>(view, out var from))
            return new Refusal("angle", Spoken($"{Shown.Quoted(text)} is no angle of a shaft line: write output, shaft or pinion, then side or above, then the angle."), Right);

        return QuantityText.Read(angle, Kind.Angle, Units.Degree).Then<AngleReading>(typed => Math.Abs(typed.Value) <= Steepest
            ? new AngleReading(of, from, typed, text.Trim())
            : new Refusal("out-of-range", Spoken($"{Shown.Quoted(text)}: no member of a shaft line lies steeper than 45 degrees."), Right));
    }

    /// <summary>How a reading begins: <c>output side</c>.</summary>
    public static string Beginning(Member member, Seen from)
        => $"{member switch { Member.Output => "output", Member.Shaft => "shaft", _ => "pinion" }} {(from == Seen.Side ? "side" : "above")}";

    /// <summary>For whoever reads it: <c>output side 3.5°</c>.</summary>
    public string InWords => (Of, From) switch
    {
        (Member.Output, Seen.Side) => Spoken($"output side {Angle.InWords}"),
        (Member.Output, _) => Spoken($"output above {Angle.InWords}"),
        (Member.Shaft, Seen.Side) => Spoken($"shaft side {Angle.InWords}"),
        (Member.Shaft, _) => Spoken($"shaft above {Angle.InWords}"),
        (_, Seen.Side) => Spoken($"pinion side {Angle.InWords}"),
        _ => Spoken($"pinion above {Angle.InWords}"),
    };

    /// <summary>The reading as typed.</summary>
    public override string ToString() => Text;
}
