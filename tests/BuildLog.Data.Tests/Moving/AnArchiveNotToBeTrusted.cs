using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using BuildLog.Data.Files;
using BuildLog.Data.Suppliers;
using BuildLog.Gearing.Quantities;
using Xunit;

namespace BuildLog.Data.Tests.Moving;

/// <summary>What comes from elsewhere may be broken or meant badly: it is refused in a sentence, and nothing is stored.</summary>
public sealed class AnArchiveNotToBeTrusted : IDisposable
{
    private const int Spoilt = 200;

    private readonly TestShop here = new();
    private readonly TestShop there = new();

    public AnArchiveNotToBeTrusted()
    {
        here.Shop.Add(new Supplier { Name = "Tolland yard" });
        here.Vehicle("Brindle");
        here.Shop.Export(Zip);
    }

    private string Zip => Path.Combine(here.Folder, "shop.zip");

    public void Dispose()
    {
        here.Dispose();
        there.Dispose();
    }

    [Theory]
    [InlineData("../outside.json", "it holds '../outside.json', which belongs in no export; a newer program or somebody else wrote it")]
    [InlineData("/etc/passwd", "it holds '/etc/passwd', which belongs in no export; a newer program or somebody else wrote it")]
    [InlineData("attachments/../../x", "it holds 'attachments/../../x', which belongs in no export; a newer program or somebody else wrote it")]
    [InlineData("handover/../../x", "it holds 'handover/../../x', which belongs in no export; a newer program or somebody else wrote it")]
    [InlineData("handover/.profile", "it holds 'handover/.profile', which belongs in no export; a newer program or somebody else wrote it")]
    [InlineData("handover/photos\\x.jpg", "it holds 'handover/photos\\x.jpg', which belongs in no export; a newer program or somebody else wrote it")]
    [InlineData("vehicles.json\u001b[2J", "it holds 'vehicles.json�[2J', which belongs in no export; a newer program or somebody else wrote it")]
    public void Brings_no_file_to_a_place_of_its_choice(string name, string says)
    {
        Rewrite(files => files[name] = "[]");
        Refuses(says);
    }

    [Fact]
    public void Is_refused_where_a_checksum_differs()
    {
        Rewrite(files => files["vehicles.json"] = files["vehicles.json"].Replace("Brindle", "Bramble", StringComparison.Ordinal), sum: false);
        Refuses("vehicles.json is not as it was written: its checksum differs");
    }

    [Theory]
    [InlineData("\"name\": \"Brindle\"", "\"name\": 5", "vehicles.json, entry 1, name is no plain text")]
    [InlineData("\"name\": \"Brindle\"", "\"name\": \"\\u001b[2J\"", "vehicles.json, entry 1, name is no plain text")]
    [InlineData("\"name\": \"Brindle\"", "\"name\": \"\"", "a vehicle cannot be in this record. A vehicle needs a name")]
    [InlineData("\"name\": \"Brindle\"", "\"name\": \"Brindle\", \"wings\": 2", "vehicles.json, entry 1 has a field 'wings' that this BuildLog does not know; a newer one wrote it")]
    public void Is_refused_where_an_entry_cannot_be(string was, string becomes, string says)
    {
        Rewrite(files => files["vehicles.json"] = files["vehicles.json"].Replace(was, becomes, StringComparison.Ordinal));
        Refuses(says);
    }

    // Entries are stored one by one, so what came before the broken one has to go again.
    [Fact]
    public void Leaves_nothing_of_a_list_that_breaks_off()
    {
        here.Vehicle("Tansy");
        here.Shop.Export(Zip, overwrite: true);
        Rewrite(files => files["vehicles.json"] = files["vehicles.json"].Replace("\"name\": \"Tansy\"", "\"name\": Tansy", StringComparison.Ordinal));
        Assert.Matches("^Nothing was imported: vehicles.json is no JSON \\(line [0-9]+\\).$", Assert.Throws<RefusedException>(() => there.Shop.Import(Zip)).Message);
        Assert.Empty(there.Shop.Vehicles());
        Assert.Empty(there.Shop.Changes());
        Assert.Empty(there.Shop.Find("Brindle"));
    }

    [Fact]
    public void Is_refused_where_an_entry_comes_twice()
    {
        Rewrite(files => files["suppliers.json"] = $"[{files["suppliers.json"].Trim()[1..^1]},{files["suppliers.json"].Trim()[1..^1]}]");
        Refuses("suppliers.json holds an entry twice");
    }

    // A viewer is handed a copy under this name.
    [Theory]
    [InlineData("pinion.jpg", "../pinion.jpg", "'../pinion.jpg' is no name of a file: leave its folder out")]
    [InlineData("\"sha256\": \"", "\"sha256\": \"A", "The file's SHA-256 is not written in 64 lower-case hexadecimal digits")]
    public void Is_refused_where_a_paper_cannot_be(string was, string becomes, string says)
    {
        var photo = Path.Combine(here.Folder, "pinion.jpg");
        File.WriteAllText(photo, "a picture");
        here.Shop.Attach(here.Shop.FindVehicle("Brindle"), photo);
        here.Shop.Export(Zip, overwrite: true);
        Rewrite(files => files["attachments.json"] = files["attachments.json"].Replace(was, becomes, StringComparison.Ordinal));

        Assert.Contains(says, Assert.Throws<RefusedException>(() => there.Shop.Import(Zip)).Message, StringComparison.Ordinal);
        Assert.Empty(there.Shop.Vehicles());
    }

    [Fact]
    public void Is_refused_where_a_newer_program_wrote_it()
    {
        Rewrite(files => files["manifest.json"] = files["manifest.json"].Replace("\"version\": 1", "\"version\": 2", StringComparison.Ordinal));
        Refuses("a newer BuildLog wrote it. Update this one, then import");
    }

    // Only where today's program wrote it must everything be there.
    [Fact]
    public void Is_taken_with_less_in_it_from_an_earlier_schema_only()
    {
        Rewrite(files => files["vehicles.json"] = System.Text.RegularExpressions.Regex.Replace(files["vehicles.json"], ",\\s*\"rollingClass\": null", ""));
        Refuses("vehicles.json, entry 1 lacks 'rollingClass'");

        Rewrite(files => files["manifest.json"] = files["manifest.json"].Replace(KnownMigrations.Ids[^1], KnownMigrations.Ids[^2], StringComparison.Ordinal));
        Assert.Equal(1, there.Shop.Import(Zip).Added[Matter.Vehicle]);
    }

    [Fact]
    public void Is_refused_where_a_vehicle_has_the_name_of_another()
    {
        there.Vehicle("Brindle");
        Refuses("vehicle Brindle cannot be in this record. The shop already has a vehicle called 'Brindle'; give this one another name", vehicles: 1);
    }

    [Fact]
    public void Cannot_unpack_to_more_than_a_shop_can_be()
    {
        using (var zip = ZipFile.Open(Zip, ZipArchiveMode.Update))
        {
            zip.GetEntry("SHA256SUMS")!.Delete();
            using var stream = zip.CreateEntry("SHA256SUMS", CompressionLevel.SmallestSize).Open();
            var zeros = new byte[1024 * 1024];
            for (var k = 0; k < 40; k++) stream.Write(zeros);
        }

        Refuses("'SHA256SUMS' is larger than anything BuildLog writes");
    }

    [Fact]
    public void Is_imported_or_refused_with_a_sentence_however_it_is_spoilt()
    {
        var sound = File.ReadAllBytes(Zip);
        var chance = new Random(20_260_503);
        var refused = new int[2]; // cut off, and with a bit turned
        for (var k = 0; k < Spoilt; k++)
        {
            var bytes = k % 2 == 0 ? sound[..chance.Next(sound.Length)] : (byte[])sound.Clone();
            if (bytes.Length > 0) bytes[chance.Next(bytes.Length)] ^= (byte)(1 << chance.Next(8));
            File.WriteAllBytes(Zip, bytes);
            try
            {
                there.Shop.Import(Zip, dryRun: true);
            }
            catch (RefusedException sentence)
            {
                Assert.StartsWith("Nothing was imported: ", sentence.Message, StringComparison.Ordinal);
                refused[k % 2]++;
            }
        }

        // A cut-off one always; of those with a bit turned, nearly all: the zip's own dates and the like may be anything.
        Assert.Equal(Spoilt / 2, refused[0]);
        Assert.InRange(refused[1], Spoilt / 4, Spoilt / 2);
    }

    private void Refuses(string says, int vehicles = 0)
    {
        Assert.Equal($"Nothing was imported: {says}.", Assert.Throws<RefusedException>(() => there.Shop.Import(Zip)).Message);
        Assert.Equal(vehicles, there.Shop.Vehicles().Count);
        Assert.Empty(there.Shop.Suppliers());
    }

    // As somebody would who knows the format: with checksums that are right.
    private void Rewrite(Action<Dictionary<string, string>> change, bool sum = true)
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        using (var zip = ZipFile.OpenRead(Zip))
        {
            foreach (var entry in zip.Entries)
            {
                using var reader = new StreamReader(entry.Open(), Encoding.UTF8);
                files[entry.FullName] = reader.ReadToEnd();
            }
        }

        change(files);
        if (sum)
        {
            files.Remove("SHA256SUMS");
            files["SHA256SUMS"] = string.Concat(files.Select(file => $"{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(file.Value)))}  {file.Key}\n"));
        }

        File.Delete(Zip);
        using var fresh = ZipFile.Open(Zip, ZipArchiveMode.Create);
        foreach (var (name, content) in files)
        {
            using var writer = new StreamWriter(fresh.CreateEntry(name).Open(), new UTF8Encoding(false));
            writer.Write(content);
        }
    }
}
