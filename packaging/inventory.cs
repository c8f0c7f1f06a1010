#:property RestorePackagesWithLockFile=false
#:property PublishAot=false
// What travels with the program: reads a lock file and the packages it names, and writes
//   FOLDER/buildlog.cdx.json   the bill of materials, CycloneDX 1.6
//   FOLDER/licences/           the licence of each package, as the package brings it or names it
// dotnet run packaging/inventory.cs -- src/BuildLog.Tui/packages.lock.json VERSION FOLDER
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;

var (lockFile, version, folder) = (args[0], args[1], args[2]);
var cache = Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
var licences = Directory.CreateDirectory(Path.Combine(folder, "licences")).FullName;

using var read = JsonDocument.Parse(File.ReadAllText(lockFile));
var components = new JsonArray();
foreach (var package in read.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(framework => framework.Value.EnumerateObject()).Where(IsPackage).OrderBy(package => package.Name, StringComparer.Ordinal))
{
    var resolved = package.Value.GetProperty("resolved").GetString()!;
#pragma warning disable CA1308 // The folders of the cache are named so.
    var home = Path.Combine(cache, package.Name.ToLowerInvariant(), resolved);
#pragma warning restore CA1308
    var (licence, holder) = LicenceOf(home);
    KeepLicence(package.Name, resolved, $"{licence}; {holder}", home);
    components.Add(new JsonObject
    {
        ["type"] = "library",
        ["name"] = package.Name,
        ["version"] = resolved,
        ["purl"] = $"pkg:nuget/{package.Name}@{resolved}",
        ["licenses"] = new JsonArray(new JsonObject { ["license"] = new JsonObject { ["name"] = licence } }),
        ["hashes"] = new JsonArray(new JsonObject { ["alg"] = "SHA-512", ["content"] = Convert.ToHexStringLower(Convert.FromBase64String(package.Value.GetProperty("contentHash").GetString()!)) }),
    });
}

var bill = new JsonObject
{
    ["bomFormat"] = "CycloneDX",
    ["specVersion"] = "1.6",
    ["version"] = 1,
    ["metadata"] = new JsonObject { ["component"] = new JsonObject { ["type"] = "application", ["name"] = "buildlog", ["version"] = version, ["licenses"] = new JsonArray(new JsonObject { ["license"] = new JsonObject { ["id"] = "MIT" } }) } },
    ["components"] = components,
};
var indented = new JsonSerializerOptions { WriteIndented = true };
File.WriteAllText(Path.Combine(folder, "buildlog.cdx.json"), bill.ToJsonString(indented) + "\n");
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{components.Count} packages."));

// The house's own projects stand in the lock file too.
static bool IsPackage(JsonProperty entry) => entry.Value.GetProperty("type").GetString() != "Project";

static (string Licence, string Holder) LicenceOf(string home)
{
    var nuspec = XDocument.Load(Directory.GetFiles(home, "*.nuspec").Single());
    string? Of(string name) => nuspec.Descendants().FirstOrDefault(element => element.Name.LocalName == name)?.Value;
    return (Of("license") ?? Of("licenseUrl") ?? "not named by the package", Of("copyright") ?? Of("authors") ?? "no holder named");
}

void KeepLicence(string name, string resolved, string licence, string home)
{
    var brought = Directory.EnumerateFiles(home, "*", SearchOption.TopDirectoryOnly)
        .Where(file => Path.GetFileName(file).ToUpperInvariant() is var upper && (upper.StartsWith("LICEN", StringComparison.Ordinal) || upper.StartsWith("THIRD", StringComparison.Ordinal) || upper.StartsWith("NOTICE", StringComparison.Ordinal)));
    foreach (var file in brought) File.Copy(file, Path.Combine(licences, $"{name}-{Path.GetFileName(file)}"), overwrite: true);
    File.AppendAllText(Path.Combine(licences, "PACKAGES.txt"), $"{name} {resolved}: {licence}\n");
}
