using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Fonts;

namespace BuildLog.Sheet.Paper;

/// <summary>The few text styles the sheet is set in.</summary>
internal static class TypeScale
{
    public static readonly TextStyle VehicleName = new(SheetFonts.SemiBold, 23, Ink.Text, 1.18);
    public static readonly TextStyle LongVehicleName = new(SheetFonts.SemiBold, 13, Ink.Text, 1.25);
    public static readonly TextStyle ShopName = new(SheetFonts.Regular, 10.5, Ink.Quiet);
    public static readonly TextStyle Band = new(SheetFonts.SemiBold, 8.5, Ink.White);
    public static readonly TextStyle Section = new(SheetFonts.SemiBold, 11.5, Ink.Accent);
    public static readonly TextStyle Figure = new(SheetFonts.SemiBold, 13, Ink.Text, 1.25);
    public static readonly TextStyle PartCode = new(SheetFonts.SemiBold, 19, Ink.Text, 1.2);
    public static readonly TextStyle Label = new(SheetFonts.Regular, 7.5, Ink.Quiet);
    public static readonly TextStyle TableHead = new(SheetFonts.SemiBold, 7.8, Ink.Accent);
    public static readonly TextStyle Body = new(SheetFonts.Regular, 8.4, Ink.Text);
    public static readonly TextStyle Strong = new(SheetFonts.SemiBold, 8.4, Ink.Text);
    public static readonly TextStyle Note = new(SheetFonts.Italic, 8, Ink.Quiet);
    public static readonly TextStyle Missing = new(SheetFonts.Italic, 8.4, Ink.Quiet);
    public static readonly TextStyle Running = new(SheetFonts.Regular, 7.5, Ink.Quiet);
    public static readonly TextStyle Axis = new(SheetFonts.Regular, 7.2, Ink.Quiet);
    public static readonly TextStyle GearName = new(SheetFonts.SemiBold, 7.5, Ink.Accent);
}
