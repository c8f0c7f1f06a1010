using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;

namespace BuildLog.Sheet.Regions;

/// <summary>The cautions and the signatures below them, so that nobody signs on a page that says nothing.</summary>
internal static class ClosingRegion
{
    public static Block Of(SheetContent sheet) => new KeptTogether(CautionsRegion.Of(sheet), SignOffRegion.Of(sheet));
}
