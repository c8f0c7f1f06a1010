using System.Diagnostics;
using System.Globalization;
using System.Text;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Tests.Photos;
using BuildLog.Sheet.Tests.Reading;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Golden;

/// <summary>The pages seen from far away: how dark each patch of the paper is, from 0 to f. It guards against accidents, not against a changed word.</summary>
public sealed class LookOfThePageTests
{
    private const int Patch = 3;
    private const double MostOnAverage = 0.4;

    private static readonly SheetContent Sheet = KestrelPickup.Sheet with { TitlePhoto = new SheetPhoto("front.jpg", Pictures.FromCamera(1)) };

    [Fact]
    public void Is_as_dark_where_it_was_dark_as_in_look_txt()
    {
        var poppler = Tool.Path("pdftoppm");
        Assert.SkipWhen(poppler is null, "pdftoppm (poppler) is not installed.");

        var seen = Seen(poppler!);

        var expected = Expected();
        var apart = seen.Length == expected.Length ? seen.Zip(expected).Where(pair => pair.Second != '\n').Average(pair => Math.Abs(Darkness(pair.First) - Darkness(pair.Second))) : double.NaN;
        if (!(apart <= MostOnAverage)) File.WriteAllText(Path.Combine(AppContext.BaseDirectory, "look.seen.txt"), seen);
        Assert.True(apart <= MostOnAverage, $"The pages look different ({apart:0.00} on average). Look at them, and take {AppContext.BaseDirectory}look.seen.txt over as Golden/look.txt if the change is meant.");
    }

    private static string Seen(string poppler)
    {
        var folder = Directory.CreateTempSubdirectory("build-sheet-look-").FullName;
        try
        {
            var file = Path.Combine(folder, "sheet.pdf");
            BuildSheetWriter.WriteFile(Sheet, file);
            using var drawing = Process.Start(new ProcessStartInfo(poppler, ["-r", "9", "-gray", file, Path.Combine(folder, "page")]))!;
            drawing.WaitForExit();
            return string.Join('\n', Directory.GetFiles(folder, "*.pgm").Order(StringComparer.Ordinal).Select(page => Patches(File.ReadAllBytes(page))));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A grey picture as poppler writes it: "P5", width, height, 255, then a byte a point.</summary>
    private static string Patches(byte[] picture)
    {
        var head = Encoding.ASCII.GetString(picture, 0, 20).Split(['\n', ' ']);
        var (width, height) = (int.Parse(head[1], CultureInfo.InvariantCulture), int.Parse(head[2], CultureInfo.InvariantCulture));
        var start = picture.Length - width * height;
        var text = new StringBuilder();
        for (var y = 0; y + Patch <= height; y += Patch)
        {
            for (var x = 0; x + Patch <= width; x += Patch)
            {
                var sum = 0;
                for (var i = 0; i < Patch * Patch; i++) sum += picture[start + (y + i / Patch) * width + x + i % Patch];
                text.Append((15 - sum * 15 / (255 * Patch * Patch)).ToString("x", CultureInfo.InvariantCulture));
            }

            text.Append('\n');
        }

        return text.ToString();
    }

    private static int Darkness(char patch) => patch == '\n' ? 0 : int.Parse([patch], NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    private static string Expected()
    {
        using var resource = typeof(LookOfThePageTests).Assembly.GetManifestResourceStream("look.txt")!;
        using var reader = new StreamReader(resource);
        return reader.ReadToEnd();
    }
}
