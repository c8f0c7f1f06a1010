using System.Runtime.CompilerServices;
using System.Text.Encodings.Web;
using System.Text.Json;
using BuildLog.Data.Moving;
using Xunit;

namespace BuildLog.Data.Tests.Moving;

/// <summary>docs/export/schema.json says what an export holds. <c>BUILDLOG_WRITE_DOCS=1</c> writes it anew.</summary>
public sealed class TheDescribedFormat
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    [Fact]
    public void Is_the_one_that_is_written()
    {
        using var test = new TestShop();
        using var db = new ShopContext(ShopContext.OptionsFor(test.Path));
        var schema = ExportSchema.Of(db.Model).ToJsonString(Readable) + "\n";
        if (Environment.GetEnvironmentVariable("BUILDLOG_WRITE_DOCS") is not null) File.WriteAllText(Described(), schema);
        Assert.Equal(schema, File.ReadAllText(Described()));
    }

    private static string Described([CallerFilePath] string here = "")
        => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", "docs", "export", "schema.json"));
}
