using System.Globalization;

namespace BuildLog.Gearing.Drivelines;

/// <summary>The gears of a gearbox that nobody told or counted: it has them, and what hangs on them cannot be said.</summary>
/// <param name="Names">As the knob names them; empty where nobody knows how many there are.</param>
/// <param name="First">The lowest gear is one of them.</param>
/// <param name="Top">The top gear is one of them.</param>
public sealed record UntoldGears(IReadOnlyList<string> Names, bool First, bool Top)
{
    /// <summary>The top gear is told without a name.</summary>
    public bool IsTopNameless { get; init; }

    /// <summary>Those that the gears' own numbers leave out: 2, 3 and 4 between 1 and 5; null where they leave out none.</summary>
    /// <remarks>A gear by a word, such as a crawler, may stand in place of the lowest of them.</remarks>
    /// <param name="gears">Those that are known.</param>
    public static UntoldGears? Between(IReadOnlyList<Gear> gears)
    {
        var told = new HashSet<int>();
        var (lowest, highest, areAllNumbered) = (int.MaxValue, 0, true);
        foreach (var gear in gears)
        {
            if (Number(gear.Name) is { } number)
            {
                told.Add(number);
                (lowest, highest) = (Math.Min(lowest, number), Math.Max(highest, number));
            }
            else
            {
                areAllNumbered = false;
            }
        }

        var left = new List<string>();
        for (var number = areAllNumbered ? 1 : lowest; number < highest; number++)
        {
            if (!told.Contains(number)) left.Add(number.ToString(CultureInfo.InvariantCulture));
        }

        return left.Count == 0 ? null : new(left, areAllNumbered && lowest > 1, false);
    }

    /// <summary><c>gears 2, 3 and 4</c>.</summary>
    public string InWords
    {
        get
        {
            string[] all = [.. Names, .. Top ? (string[])[Spoken("top")] : []];
            return Names.Count == 0 ? Spoken("the other gears") : all is [var only] ? Spoken($"gear {only}") : Spoken($"gears {string.Join(", ", all.SkipLast(1))} and {all[^1]}");
        }
    }

    /// <summary>What cannot be said without them lacks this: <c>gears 2, 3 and 4 of the gearbox are not told</c>.</summary>
    public string Says => Names.Count == 1 && !Top ? Spoken($"{InWords} of the gearbox is not told") : Spoken($"{InWords} of the gearbox are not told");

    /// <summary>The cheapest way to them.</summary>
    public string Cure => Names.Count == 1 && !Top ? Spoken($"count {InWords}: ten output turns") : Spoken($"count {InWords}: ten output turns in each");

    /// <summary>Its name says which it is, counted from the lowest.</summary>
    internal static bool IsNumbered(Gear gear) => Number(gear.Name) is not null;

    // A gear of more digits than that is none.
    private static int? Number(string name) => name.Length <= 2 && int.TryParse(name, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
