using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.YardCards;

/// <summary>What to count on a gearbox or an overdrive unit on the ground, and between which counts one gear of it will do.</summary>
/// <remarks>The output is turned and the input is counted: p = i w. Both ends turn alike, so the edges are those of two wheels that turn together.</remarks>
/// <param name="Wanted">What the ratio of the gear has to be.</param>
public sealed record GearboxCard(WindowOfPart Wanted)
{
    /// <summary>Turns of the output; the gear's last digit shows by then.</summary>
    public const int OutputTurns = 10;

    /// <summary>Where ten do not settle it.</summary>
    public const int MoreOutputTurns = 20;

    private static readonly CountPrecision How = new();

    /// <exception cref="RefusedException">Two wishes exclude each other; the sentence says which, and by how much.</exception>
    public static GearboxCard Of(WindowOfPart wanted)
        => wanted.Contradiction is { } says ? throw new RefusedException("window", $"No gearbox can do: {says}", "") : new(wanted);

    /// <summary>Which counts of the input mean yes and which no.</summary>
    public CountEdges Edges(int outputTurns = OutputTurns) => CountEdges.Of(Wanted.Window, Wanted.SureWindow, outputTurns, Wheels.Together, How);
}
