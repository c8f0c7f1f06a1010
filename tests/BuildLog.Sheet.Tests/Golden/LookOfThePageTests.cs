using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Tests.Photos;
using BuildLog.Sheet.Tests.Reading;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Golden;

/// <summary>The pages of the sheet and of every other paper against stored ones. It guards against accidents, not against a changed word.</summary>
/// <remarks>With a folder in <c>BUILDLOG_LOOKS</c> the pages are written there instead.</remarks>
public sealed class LookOfThePageTests
{
    private const double MostOnAverage = 0.4;
    private const double MostAnywhere = 3.5;

    private static readonly SheetContent Sheet = KestrelPickup.Sheet with { TitlePhoto = new SheetPhoto("front.jpg", Pictures.FromCamera(1)) };

    public static TheoryData<string> Names => [.. All().Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Is_as_dark_where_it_was_dark(string sample)
    {
        var poppler = Tool.Path("pdftoppm");
        Assert.SkipWhen(poppler is null, "pdftoppm (poppler) is not installed.");

        var seen = Seen(poppler!, sample);

        if (Environment.GetEnvironmentVariable("BUILDLOG_LOOKS") is { Length: > 0 } folder)
        {
            File.WriteAllText(Path.Combine(folder, $"{sample}.txt"), string.Join("\n\n", seen) + "\n");
            return;
        }

        var expected = LookOfThePage.Read(Expected(sample));
        Assert.True(seen.Count == expected.Count, $"{sample} has {seen.Count} pages instead of {expected.Count}.");
        Assert.All(seen.Zip(expected), (pair, page) =>
        {
            var (average, worst) = pair.First.ApartFrom(pair.Second);
            Assert.True(average <= MostOnAverage && worst <= MostAnywhere, $"Page {page + 1} of {sample} looks different ({average:0.00} on average, {worst:0.0} at the worst place). Look at it; if the change is meant, write Golden/Looks anew.");
        });
    }

    [Fact]
    public void A_photo_that_is_missing_and_a_table_that_moved_are_noticed()
    {
        var poppler = Tool.Path("pdftoppm");
        Assert.SkipWhen(poppler is null, "pdftoppm (poppler) is not installed.");
        var page = LookOfThePage.Read(Expected("build-sheet"))[0];
        var blank = new LookOfThePage([.. page.Lines.Select(line => new string('0', line.Length))]);
        var moved = new LookOfThePage([.. page.Lines.Skip(2), .. page.Lines.Take(2)]);
        var withoutPhoto = new LookOfThePage([.. page.Lines.Select((line, y) => y is > 2 and < 9 ? line[..16] + new string('0', line.Length - 16) : line)]);

        Assert.All([blank, moved, withoutPhoto], accident =>
        {
            var (average, worst) = accident.ApartFrom(page);
            Assert.True(average > MostOnAverage || worst > MostAnywhere);
        });
    }

    private static Dictionary<string, Action<string>> All()
    {
        var samples = new Dictionary<string, Action<string>> { ["build-sheet"] = file => BuildSheetWriter.WriteFile(Sheet, file) };
        foreach (var (kind, content) in PapersOf.Everything("Šķūnis, Ζέφυρος"))
            samples[kind.Replace(' ', '-')] = file => PaperWriter.WriteFile(content, file);
        return samples;
    }

    private static IReadOnlyList<LookOfThePage> Seen(string poppler, string sample)
    {
        var folder = Directory.CreateTempSubdirectory("build-sheet-looked-at-").FullName;
        try
        {
            var file = Path.Combine(folder, "sample.pdf");
            All()[sample](file);
            return LookOfThePage.Of(poppler, file);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string Expected(string sample)
    {
        using var resource = typeof(LookOfThePageTests).Assembly.GetManifestResourceStream($"look:{sample}")
            ?? throw new InvalidOperationException($"There is no Golden/Looks/{sample}.txt yet; write it with BUILDLOG_LOOKS.");
        using var reader = new StreamReader(resource);
        return reader.ReadToEnd();
    }
}
