using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace BuildLog.Sheet.Tests.Golden;

/// <summary>A page seen from far away: how dark each patch of the paper is, from 0 to f, a line of patches a line of text.</summary>
internal sealed record LookOfThePage(IReadOnlyList<string> Lines)
{
    private const int Patch = 3;                           // points of the picture, each an eighth of an inch
    private const int Area = 4;                            // patches: half a column of text, three lines high

    public override string ToString() => string.Join('\n', Lines);

    /// <summary>The pages of a file, drawn by poppler.</summary>
    public static IReadOnlyList<LookOfThePage> Of(string poppler, string file)
    {
        var folder = Directory.CreateTempSubdirectory("build-sheet-look-").FullName;
        try
        {
            using var drawing = Process.Start(new ProcessStartInfo(poppler, ["-r", "9", "-gray", file, Path.Combine(folder, "page")]))!;
            drawing.WaitForExit();
            return [.. Directory.GetFiles(folder, "*.pgm").Order(StringComparer.Ordinal).Select(page => OfPicture(File.ReadAllBytes(page)))];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>As <see cref="ToString"/> wrote them, an empty line between two.</summary>
    public static IReadOnlyList<LookOfThePage> Read(string text) => [.. text.TrimEnd('\n').Split("\n\n").Select(page => new LookOfThePage(page.Split('\n')))];

    /// <summary>How far two pages are apart: on average, and in the area where they differ the most. Infinite where they are not of one size.</summary>
    public (double Average, double Worst) ApartFrom(LookOfThePage other)
    {
        if (Lines.Count != other.Lines.Count || Lines.Zip(other.Lines).Any(pair => pair.First.Length != pair.Second.Length)) return (double.PositiveInfinity, double.PositiveInfinity);

        var apart = Lines.Zip(other.Lines, (here, there) => here.Zip(there, (a, b) => (double)Math.Abs(Darkness(a) - Darkness(b))).ToArray()).ToArray();
        var areas =
            from y in Enumerable.Range(0, Math.Max(1, apart.Length - Area + 1))
            from x in Enumerable.Range(0, Math.Max(1, apart[0].Length - Area + 1))
            select apart.Skip(y).Take(Area).SelectMany(line => line.Skip(x).Take(Area)).Average();
        return (apart.SelectMany(line => line).Average(), areas.Max());
    }

    /// <summary>A grey picture as poppler writes it: "P5", width, height, 255, then a byte a point.</summary>
    private static LookOfThePage OfPicture(byte[] picture)
    {
        var head = Encoding.ASCII.GetString(picture, 0, 20).Split(['\n', ' ']);
        var (width, height) = (int.Parse(head[1], CultureInfo.InvariantCulture), int.Parse(head[2], CultureInfo.InvariantCulture));
        var start = picture.Length - width * height;
        return new([.. Enumerable.Range(0, height / Patch).Select(y => string.Concat(Enumerable.Range(0, width / Patch).Select(x => Sign(x * Patch, y * Patch))))]);

        string Sign(int x, int y)
        {
            var sum = 0;
            for (var i = 0; i < Patch * Patch; i++) sum += picture[start + (y + i / Patch) * width + x + i % Patch];
            return (15 - sum * 15 / (255 * Patch * Patch)).ToString("x", CultureInfo.InvariantCulture);
        }
    }

    private static int Darkness(char patch) => int.Parse([patch], NumberStyles.HexNumber, CultureInfo.InvariantCulture);
}
