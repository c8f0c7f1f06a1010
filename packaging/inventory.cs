#:property RestorePackagesWithLockFile=false
#:property PublishAot=false
// What travels with the program: reads a lock file, the packages it names and the fonts, and writes
//   FOLDER/buildlog.cdx.json   the bill of materials, CycloneDX 1.6
//   FOLDER/licences/           the licence of each, as the package brings it or names it
// dotnet run packaging/inventory.cs -- src/BuildLog.Tui/packages.lock.json VERSION FOLDER [RUNTIME]     RUNTIME is the package of the runtime inside a single file
// or the same as a page of names, versions and licences:
// dotnet run packaging/inventory.cs -- src/BuildLog.Tui/packages.lock.json docs/dependencies.md
using System.Globalization;
using System.Security.Cryptography;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;

var lockFile = args[0];
var cache = Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
var fontFiles = Path.Combine(Path.GetDirectoryName(lockFile)!, "..", "BuildLog.Sheet", "Fonts", "Files");
var parts = Packages().Concat(Fonts()).ToList();
if (args is [_, var page])
{
    WritePage(page);
    return;
}

var (version, folder) = (args[1], args[2]);
if (args is [_, _, _, var runtime]) parts.Add(Runtime(runtime));
var licences = Directory.CreateDirectory(Path.Combine(folder, "licences")).FullName;
File.WriteAllLines(Path.Combine(licences, "PACKAGES.txt"), parts.Select(part => $"{part.Name} {part.Version}: {part.Licence}; {part.Holder}"));
foreach (var (part, file) in parts.SelectMany(part => part.LicenceFiles.Select(file => (part, file)))) File.Copy(file, Path.Combine(licences, $"{part.Files}-{Path.GetFileName(file)}"), overwrite: true);
foreach (var file in Directory.EnumerateFiles(fontFiles, "*-LICENSE.txt")) File.Copy(file, Path.Combine(licences, Path.GetFileName(file)), overwrite: true);

var bill = new JsonObject
{
    ["bomFormat"] = "CycloneDX",
    ["specVersion"] = "1.6",
    ["version"] = 1,
    ["metadata"] = new JsonObject { ["component"] = new JsonObject { ["type"] = "application", ["name"] = "buildlog", ["version"] = version, ["licenses"] = new JsonArray(new JsonObject { ["license"] = new JsonObject { ["id"] = "MIT" } }) } },
    ["components"] = new JsonArray([.. parts.Select(part => new JsonObject
    {
        ["type"] = part.Type,
        ["name"] = part.Name,
        ["version"] = part.Version,
        ["purl"] = part.Purl,
        ["licenses"] = new JsonArray(new JsonObject { ["license"] = new JsonObject { ["name"] = part.Licence } }),
        ["hashes"] = new JsonArray(new JsonObject { ["alg"] = "SHA-512", ["content"] = part.Sha512 }),
    })]),
};
var indented = new JsonSerializerOptions { WriteIndented = true };
File.WriteAllText(Path.Combine(folder, "buildlog.cdx.json"), bill.ToJsonString(indented) + "\n");
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{parts.Count} parts."));

IEnumerable<Part> Packages()
{
    using var read = JsonDocument.Parse(File.ReadAllText(lockFile));
    foreach (var package in read.RootElement.GetProperty("dependencies").EnumerateObject().SelectMany(framework => framework.Value.EnumerateObject()).Where(IsPackage).OrderBy(package => package.Name, StringComparer.Ordinal))
    {
        var resolved = package.Value.GetProperty("resolved").GetString()!;
#pragma warning disable CA1308 // The folders of the cache are named so.
        var home = Path.Combine(cache, package.Name.ToLowerInvariant(), resolved);
#pragma warning restore CA1308
        yield return FromPackage(package.Name, resolved, home, package.Value.GetProperty("contentHash").GetString()!);
    }
}

// Embedded unchanged; src/BuildLog.Sheet/Fonts/README.md says the same.
IEnumerable<Part> Fonts()
{
    (string Family, string Package, string Version, string Licence, string Holder)[] families =
    [
        ("DejaVuSans", "dejavu-fonts-ttf", "2.37.3", "Bitstream Vera and DejaVu licence", "see DejaVuSans-LICENSE.txt"),
        ("IBMPlexSans", "@expo-google-fonts/ibm-plex-sans", "0.4.1", "OFL-1.1", "see IBMPlexSans-LICENSE.txt"),
    ];
    return Directory.EnumerateFiles(fontFiles, "*.ttf").Order(StringComparer.Ordinal).Select(file =>
    {
        var of = families.Single(family => Path.GetFileName(file).StartsWith(family.Family, StringComparison.Ordinal));
        return new Part("file", Path.GetFileName(file), of.Version, $"pkg:npm/{of.Package.Replace("@", "%40", StringComparison.Ordinal)}@{of.Version}", of.Licence, of.Holder, Convert.ToHexStringLower(SHA512.HashData(File.ReadAllBytes(file))), of.Family, []);
    });
}

// Its folder is NAME/VERSION in the cache of packages.
static Part Runtime(string home)
    => FromPackage(Path.GetFileName(Path.GetDirectoryName(home)!), Path.GetFileName(home), home, File.ReadAllText(Directory.GetFiles(home, "*.nupkg.sha512").Single())) with { Type = "framework", Files = "dotnet-runtime" };

static Part FromPackage(string name, string version, string home, string sha512)
{
    var nuspec = XDocument.Load(Directory.GetFiles(home, "*.nuspec").Single());
    string? Of(string element) => nuspec.Descendants().FirstOrDefault(each => each.Name.LocalName == element)?.Value;
    var brought = Directory.EnumerateFiles(home, "*", SearchOption.TopDirectoryOnly)
        .Where(file => Path.GetFileName(file).ToUpperInvariant() is var upper && (upper.StartsWith("LICEN", StringComparison.Ordinal) || upper.StartsWith("THIRD", StringComparison.Ordinal) || upper.StartsWith("NOTICE", StringComparison.Ordinal)));
    return new("library", Of("id") ?? name, version, $"pkg:nuget/{Of("id") ?? name}@{version}", Of("license") ?? Of("licenseUrl") ?? "not named by the package", Of("copyright") ?? Of("authors") ?? "no holder named",
        Convert.ToHexStringLower(Convert.FromBase64String(sha512.Trim())), name, [.. brought]);
}

// The house's own projects stand in the lock file too.
static bool IsPackage(JsonProperty entry) => entry.Value.GetProperty("type").GetString() != "Project";

void WritePage(string path) => File.WriteAllText(path, $"""
    # What travels with the program

    Written by `packaging/inventory.cs` from `{lockFile}`, the packages it names and the fonts; a test compares names and versions. What only builds or tests the program is
    not here. The bill of materials in the packages, `buildlog.cdx.json`, says the same with checksums; single files also hold the .NET runtime (MIT) of the SDK
    that `global.json` names.

    | name | version | licence |
    |---|---|---|
    {string.Join('\n', parts.Select(part => $"| {part.Name} | {part.Version} | {part.Licence} |"))}

    """);

/// <summary>Something that travels with the program.</summary>
/// <param name="Files">What its licence files begin with.</param>
internal sealed record Part(string Type, string Name, string Version, string Purl, string Licence, string Holder, string Sha512, string Files, IReadOnlyList<string> LicenceFiles);
