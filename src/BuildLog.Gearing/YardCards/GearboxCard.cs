using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.YardCards;

/// <summary>What to count on a gearbox or an overdrive unit on the ground, and between which counts each wanted gear of it will do.</summary>
/// <remarks>The output is turned and the input is counted: p = i w. Both ends turn alike, so the edges are those of two wheels that turn together.</remarks>
/// <param name="Gears">What the ratio of each gear that matters has to be.</param>
public sealed record GearboxCard(IReadOnlyList<WindowOfPart> Gears)
{
    /// <summary>Output turns to count first.</summary>
    public const int OutputTurns = 10;

    /// <summary>Where ten do not settle it.</summary>
    public const int MoreOutputTurns = 20;

    /// <summary>How far anybody counts by hand, the shortest first.</summary>
    public static readonly IReadOnlyList<int> Counts = [OutputTurns, MoreOutputTurns, 30, 40, 50, 60, 80, 100];

    private static readonly CountPrecision How = new();

    /// <param name="gears">One window for each gear.</param>
    /// <param name="what">Gearbox, or overdrive.</param>
    /// <exception cref="RefusedException">Two wishes of one gear exclude each other; the sentence says which, and by how much.</exception>
    public static GearboxCard Of(IReadOnlyList<WindowOfPart> gears, string? what = null)
        => gears.Select(gear => gear.Contradiction).FirstOrDefault(says => says is not null) is { } says
            ? throw new RefusedException("window", Spoken($"No {what ?? Spoken("gearbox")} can do: {says}"), "")
            : new(gears);

    /// <summary>Which counts of the input mean yes and which no.</summary>
    public static CountEdges Edges(WindowOfPart gear, int outputTurns = OutputTurns) => CountEdges.Of(gear, outputTurns, Wheels.Together, How);
}
