using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;

namespace BuildLog.Tui.Sheets;

/// <summary>For whom a sheet is, as it is typed and shown.</summary>
public static class ReaderWords
{
    public const string All = "buyer|inspector|insurer|own";

    public static string InWords(SheetReader reader) => reader switch
    {
        SheetReader.Buyer => Spoken("the buyer"),
        SheetReader.Inspector => Spoken("an inspector"),
        SheetReader.Insurer => Spoken("an insurer"),
        _ => Spoken("the shop's own file"),
    };

    public static Parsed<SheetReader> Read(string text)
        => Enum.GetValues<SheetReader>().Where(reader => reader.ToString().Equals(text.Trim(), StringComparison.OrdinalIgnoreCase)).ToList() is [var reader]
            ? reader
            : new Refusal("reader", Spoken($"{Shown.Quoted(text)} is nobody a sheet is made for: buyer, inspector, insurer or own."), "inspector");
}
