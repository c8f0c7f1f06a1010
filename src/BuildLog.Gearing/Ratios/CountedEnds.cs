namespace BuildLog.Gearing.Ratios;

/// <summary>The two ends whose turns a count compares, as its sentences call them.</summary>
/// <param name="Driven">The end that is turned whole turns, named first in a count.</param>
/// <param name="Driving">The end whose turns are read to a fraction.</param>
/// <param name="Example">A count written right.</param>
public sealed record CountedEnds(Later Driven, Later Driving, string Example)
{
    /// <summary>Wheel turns first, then the propshaft's.</summary>
    public static readonly CountedEnds Axle = new(new Later("wheel"), new Later("propshaft"), "10:20.5");

    /// <summary>Output turns first, then the input's.</summary>
    public static readonly CountedEnds Gearbox = new(new Later("output"), new Later("input"), "10:30.1");

    /// <summary><c>half a propshaft turn</c>, <c>half an input turn</c>.</summary>
    internal static string Half(string end) => Spoken($"half {(end[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? Spoken("an") : Spoken("a"))} {end} turn");
}
