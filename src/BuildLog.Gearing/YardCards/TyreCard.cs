using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.YardCards;

/// <summary>Which tyres will do, by their marking, and by rolling a loose wheel out in the yard.</summary>
/// <remarks>
/// <code>a loose wheel covers C/k a turn;   edges ± t √(u(k)² + (tape/(turns C))²) around the window's</code>
/// <para>C rolling circumference under load; k the loaded factor, see <see cref="LoadedFactor"/>. The tape is read to 2 mm either way.</para>
/// </remarks>
/// <param name="Wanted">What the rolling circumference has to be.</param>
/// <param name="Sizes">Sizes for the fitted wheels that would do, the smallest first.</param>
/// <param name="Construction">Of the tyres looked for.</param>
public sealed record TyreCard(WindowOfPart Wanted, IReadOnlyList<string> Sizes, Construction Construction)
{
    /// <summary>What a yard has room for.</summary>
    public const int Turns = 3;

    private const double Tape = 0.002;
    private const int MostSizes = 12;

    /// <param name="wanted">The window of the rolling circumference.</param>
    /// <param name="fitted">The set in its place now; null for none.</param>
    /// <exception cref="RefusedException">Two wishes exclude each other; the sentence says which, and by how much.</exception>
    public static TyreCard Of(WindowOfPart wanted, TyreSet? fitted)
    {
        if (wanted.Contradiction is { } says) throw new RefusedException("window", $"No tyres can do: {says}", "");

        var sizes = fitted is null ? [] : ListedParts.Tyres(fitted);
        return new(
            wanted,
            [.. sizes.Where(size => wanted.Window.Contains(size.Part!.RollingCircumference!.Value.Value))
                .OrderBy(size => Math.Abs(Middle(wanted.Window) - size.Part!.RollingCircumference!.Value.Value)).Take(MostSizes)
                .OrderBy(size => size.Part!.RollingCircumference!.Value.Value).Select(size => size.Name)],
            fitted?.Size?.Construction ?? Construction.Radial);
    }

    /// <summary>Which distances of a loose wheel mean yes and which no, metres.</summary>
    public CountEdges Loose(int turns = Turns)
    {
        var k = LoadedFactor.For(Construction);
        double Distance(double circumference, int side)
        {
            var tape = Tape / Math.Sqrt(3) / (turns * circumference);
            var share = StudentT.Normal975 * Math.Sqrt((k.RelativeUncertainty * k.RelativeUncertainty) + (tape * tape));
            return double.IsFinite(circumference) && circumference > 0 ? turns * circumference / k.Value * (1 + (side * share)) : circumference;
        }

        var possible = new Window(Distance(Wanted.Window.Low, -1), Distance(Wanted.Window.High, +1));
        Window? yes = Wanted.SureWindow is { } sure ? new Window(Distance(sure.Low, +1), Distance(sure.High, -1)) : null;
        return new(yes is { IsEmpty: true } ? null : yes, possible);
    }

    private static double Middle(Window window) => double.IsFinite(window.Low) && double.IsFinite(window.High) ? (window.Low + window.High) / 2 : double.IsFinite(window.Low) ? window.Low : window.High;
}
