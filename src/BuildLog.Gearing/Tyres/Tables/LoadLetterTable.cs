namespace BuildLog.Gearing.Tyres.Tables;

/// <summary>The metric size that replaced each load letter of the alpha-numeric sizes.</summary>
/// <remarks>From memory of the conversions in use since the late 1970s, which differ by one size between makers: hence the spread.</remarks>
internal static class LoadLetterTable
{
    public static string Source => Spoken("conversion of load letters to metric sizes, from memory");
    public const double Spread = 0.02;

    private static readonly Dictionary<(char Letter, double Series), MetricEquivalent> Rows = Make();

    public static bool HasSeries(double series) => Rows.Keys.Any(key => key.Series == series);

    public static MetricEquivalent? Find(char letter, double series) => Rows.GetValueOrDefault((letter, series));

    public static string Letters(double series) => string.Join(", ", Rows.Keys.Where(key => key.Series == series).Select(key => key.Letter));

    private static Dictionary<(char, double), MetricEquivalent> Make()
    {
        var rows = new Dictionary<(char, double), MetricEquivalent>();
        Add(78, 0.75, ("B", 175), ("C", 185), ("D", 185), ("E", 195), ("F", 205), ("G", 215), ("H", 225), ("J", 225), ("L", 235));
        Add(70, 0.70, ("C", 185), ("D", 195), ("E", 205), ("F", 215), ("G", 225), ("H", 235), ("J", 245), ("L", 255));
        Add(60, 0.60, ("D", 215), ("E", 225), ("F", 235), ("G", 245), ("H", 255), ("J", 265), ("L", 275));
        Add(50, 0.50, ("E", 245), ("F", 255), ("G", 265), ("H", 275), ("J", 285), ("L", 295), ("N", 315));
        return rows;

        void Add(double series, double aspect, params (string Letter, double Width)[] sizes)
        {
            foreach (var (letter, width) in sizes) rows[(letter[0], series)] = new(width, aspect);
        }
    }
}

/// <param name="Width">Section width, millimetres.</param>
/// <param name="Aspect">Section height over section width.</param>
internal sealed record MetricEquivalent(double Width, double Aspect);
