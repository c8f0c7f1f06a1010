using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using BuildLog.Data.Files;
using BuildLog.Endurance.CutOff;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Endurance.Fuzz;

/// <summary>Spoilt exports, given to import: every second one with its JSON spoilt and checksums that are right, as somebody would who knows the format, the others with bits of the zip turned.</summary>
internal sealed class FuzzedArchives : IOrdeal
{
    private const string Sums = "SHA256SUMS";

    public string Name => "fuzzed exports (JSON, zip)";

    public Survival Run(int rounds)
    {
        var folder = Directory.CreateTempSubdirectory("buildlog-fuzz-").FullName;
        Records.Empty.LayIn(folder);
        var zip = Path.Combine(folder, "spoilt.zip");
        var bytes = File.ReadAllBytes(Records.DemoArchive);
        var files = Unpacked();
        var json = files.Keys.Where(name => name.EndsWith(".json", StringComparison.Ordinal)).ToArray();
        var (troubles, refused, chance) = (new List<string>(), 0, new Random(20_260_503));
        using (var shop = ShopFile.Open(Records.In(folder)))
        {
            for (var round = 1; round <= rounds; round++)
            {
                if (round % 2 == 0) File.WriteAllBytes(zip, Spoilt.Bytes(bytes, chance));
                else Pack(zip, files, json[chance.Next(json.Length)], chance);
                try
                {
                    shop.Import(zip, dryRun: true);
                }
                catch (RefusedException)
                {
                    refused++;
                }
#pragma warning disable CA1031 // Anything else that is thrown is what is looked for.
                catch (Exception thrown)
                {
                    troubles.Add(FormattableString.Invariant($"round {round}: {thrown.GetType().Name}: {thrown.Message} {thrown.StackTrace?.Split('\n')[0].Trim()}"));
                }
#pragma warning restore CA1031
            }

            if (shop.Vehicles().Count != 1) troubles.Add("a trial import has stored something");
        }

        troubles.AddRange(RecordCheck.Of(Records.In(folder)).Troubles());
        Directory.Delete(folder, recursive: true);
        return new(rounds, troubles, FormattableString.Invariant($"{refused:N0} refused in a sentence, the others taken"));
    }

    private static Dictionary<string, byte[]> Unpacked()
    {
        using var zip = ZipFile.OpenRead(Records.DemoArchive);
        return zip.Entries.Where(entry => entry.FullName != Sums).ToDictionary(entry => entry.FullName, entry =>
        {
            using var stream = entry.Open();
            using var content = new MemoryStream();
            stream.CopyTo(content);
            return content.ToArray();
        });
    }

    private static void Pack(string path, Dictionary<string, byte[]> files, string spoilt, Random chance)
    {
        var all = new Dictionary<string, byte[]>(files) { [spoilt] = Encoding.UTF8.GetBytes(Spoilt.Text(Encoding.UTF8.GetString(files[spoilt]), chance)) };
        all[Sums] = Encoding.UTF8.GetBytes(string.Concat(all.Select(file => $"{Convert.ToHexStringLower(SHA256.HashData(file.Value))}  {file.Key}\n")));
        File.Delete(path);
        using var zip = ZipFile.Open(path, ZipArchiveMode.Create);
        foreach (var (name, content) in all)
        {
            using var stream = zip.CreateEntry(name, CompressionLevel.NoCompression).Open();
            stream.Write(content);
        }
    }
}
