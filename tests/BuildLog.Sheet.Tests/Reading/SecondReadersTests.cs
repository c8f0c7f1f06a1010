using System.Text.RegularExpressions;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers;
using BuildLog.Sheet.Tests.Photos;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Sheet.Tests.Reading;

/// <summary>Every sample in the hands of programs that had no part in writing it.</summary>
public sealed partial class SecondReadersTests
{
    private static readonly SheetContent Sheet = KestrelPickup.Sheet with { TitlePhoto = new SheetPhoto("front.jpg", Pictures.FromCamera(1)) };

    // What PDF/A-1 (ISO 19005-1) forbids or asks and PDF/A-2 does not: compressed cross references, a CIDSet beside each subset, and the number 1.
    private static readonly string[] OfTheFirstPartOnly = ["/XRef cross reference streams are not allowed", "The CIDSet entry is missing", "part must be 1"];

    private static readonly string[] PreflightJars =
        ["preflight", "pdfbox2", "fontbox2", "xmpbox", "commons-logging", "javax.activation", "jaxb-api"];

    public static TheoryData<string> Names => [.. All().Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Qpdf_finds_no_fault(string sample) => WithFile(sample, file =>
    {
        var qpdf = Installed("qpdf");

        var (exit, said) = Tool.Run(qpdf, "--check", file);

        Assert.True(exit == 0, said);
    });

    [Theory]
    [MemberData(nameof(Names))]
    public void Poppler_reads_it_without_complaint(string sample) => WithFile(sample, file =>
    {
        var poppler = Installed("pdftotext");

        // "-q" would silence it: errors are told on the error stream, which Said holds beside nothing else.
        var (exit, said) = Tool.Run(poppler, file, Path.ChangeExtension(file, "txt"));

        Assert.True(exit == 0 && said.Length == 0, said);
        Assert.NotEmpty(File.ReadAllText(Path.ChangeExtension(file, "txt")).Trim());
    });

    /// <summary>
    /// No checker of PDF/A-2 is at hand; PDFBox knows PDF/A-1b, which shares fonts, colours, metadata, transparency and actions with it. Not checked by
    /// anybody: the rules on the meaning of tags (level A) and what part 2 alone allows.
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void PdfBox_preflight_finds_only_what_the_second_part_of_the_standard_allows(string sample) => WithFile(sample, file =>
    {
        var java = Installed("java");
        var jars = PreflightJars.Select(jar => $"/usr/share/java/{jar}.jar").ToList();
        Assert.SkipUnless(jars.All(File.Exists), "PDFBox preflight is not installed.");

        var (_, said) = Tool.Run(java, "-cp", string.Join(':', jars), "org.apache.pdfbox.preflight.Validator_A1b", file);

        var found = Found().Matches(said).Select(line => line.Value).ToList();
        Assert.Contains(found, line => line.Contains("part must be 1", StringComparison.Ordinal));
        Assert.DoesNotContain(found, line => !OfTheFirstPartOnly.Any(allowed => line.Contains(allowed, StringComparison.Ordinal)));
    });

    private static Dictionary<string, Action<string>> All()
    {
        var samples = new Dictionary<string, Action<string>>();
        foreach (var reader in Enum.GetValues<SheetReader>())
            foreach (var paper in new[] { Content.Paper.A4, Content.Paper.Letter })
                samples[$"sheet for {reader} on {paper}"] = file => BuildSheetWriter.WriteFile(Sheet with { Reader = reader, Paper = paper }, file);
        samples["sheet with nothing recorded"] = file => BuildSheetWriter.WriteFile(Sheets.Empty, file);
        samples["sheet with 500 swaps"] = file => BuildSheetWriter.WriteFile(Sheets.WithHistory(500), file);
        foreach (var (kind, content) in PapersOf.Everything("Жук Ζέφυρος Šķūnis")) samples[kind] = file => PaperWriter.WriteFile(content, file);
        return samples;
    }

    private static string Installed(string name)
    {
        var path = Tool.Path(name);
        Assert.SkipWhen(path is null, $"{name} is not installed.");
        return path!;
    }

    private static void WithFile(string sample, Action<string> look)
    {
        var folder = Directory.CreateTempSubdirectory("build-sheet-second-readers-").FullName;
        try
        {
            var file = Path.Combine(folder, "sample.pdf");
            All()[sample](file);
            look(file);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [GeneratedRegex(@"^[0-9.]+ : .*$", RegexOptions.Multiline)]
    private static partial Regex Found();
}
