using System.Text;
using BuildLog.Data.Vehicles;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Papers;

/// <summary>What somebody reads who opens the zip of a handover without knowing what it is.</summary>
internal static class HandoverReadMe
{
    public const string Name = "README.txt";

    public static byte[] Of(Vehicle vehicle, string shop, DateTimeOffset printed) => Encoding.UTF8.GetBytes($"""
        {vehicle.Name}: handover of {DayText.InWords(printed)}{(shop.Length > 0 ? $", from {shop}" : "")}

        For people, in this folder:
          build-sheet.pdf   what was built, what was measured, how well it is known, and what is still open
          receipts.csv      what was paid, one line a receipt; any spreadsheet opens it
          photos            copies without place or camera; receipts that were photographed are among them
          papers            everything else that was kept of the vehicle

        For programs, beside this folder:
          *.json            the vehicle's part of the shop's record; BuildLog reads the zip as it is:
                            buildlog import THIS-FILE.zip
          SHA256SUMS        checksums of every file; in the unpacked folder: sha256sum -c SHA256SUMS

        The sheet says what was measured and what follows from it; it does not call the vehicle safe or legal.
        Local codes, inspection and licensed practice decide.

        """.ReplaceLineEndings("\r\n"));
}
