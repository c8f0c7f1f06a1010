using System.Text;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Papers;

/// <summary>What somebody reads who opens the zip of a handover without knowing what it is.</summary>
internal static class HandoverReadMe
{
    public const string Name = "README.txt";

    public static byte[] Of(Vehicle vehicle, string shop, DateTimeOffset printed) => Encoding.UTF8.GetBytes(string.Concat(Lines(vehicle, shop, printed).Select(line => line + "\r\n")));

    // The names of the files are the same in every language.
    private static IEnumerable<string> Lines(Vehicle vehicle, string shop, DateTimeOffset printed) =>
    [
        Spoken($"{vehicle.Name}: handover of {DayText.InWords(printed)}") + (shop.Length > 0 ? Spoken($", from {shop}") : ""),
        "",
        Spoken("For people, in this folder:"),
        Listed("build-sheet.pdf", Spoken("what was built, what was measured, how well it is known, and what is still open")),
        Listed("receipts.csv", Spoken("what was paid, one line a receipt; any spreadsheet opens it")),
        Listed("photos", Spoken("copies without place or camera; receipts that were photographed are among them")),
        Listed("papers", Spoken("everything else that was kept of the vehicle")),
        "",
        Spoken("For programs, beside this folder:"),
        Listed("*.json", Spoken("the vehicle's part of the shop's record; BuildLog reads the zip as it is:")),
        Listed("", Spoken("buildlog import THIS-FILE.zip")),
        Listed("SHA256SUMS", Spoken("checksums of every file; in the unpacked folder: sha256sum -c SHA256SUMS")),
        "",
        Spoken("The sheet says what was measured and what follows from it; it does not call the vehicle safe or legal."),
        Spoken("Local codes, inspection and licensed practice decide."),
    ];

    private static string Listed(string name, string says) => $"  {name,-18}{says}";
}
