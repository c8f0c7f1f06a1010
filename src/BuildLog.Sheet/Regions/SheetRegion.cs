using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Photos;

namespace BuildLog.Sheet.Regions;

/// <summary>One region of the sheet and who gets it.</summary>
/// <param name="Blocks">What it says of a sheet; nothing where the sheet has no such matter.</param>
/// <param name="Readers">For whom it is printed.</param>
internal sealed record SheetRegion(Func<SheetContent, Album, IEnumerable<Block>> Blocks, params IReadOnlyList<SheetReader> Readers)
{
    public SheetRegion(Func<SheetContent, Block?> region, params IReadOnlyList<SheetReader> readers)
        : this((sheet, _) => region(sheet) is { } block ? [block] : [], readers)
    {
    }

    public SheetRegion(Func<SheetContent, Album, Block?> region, params IReadOnlyList<SheetReader> readers)
        : this((sheet, album) => region(sheet, album) is { } block ? [block] : (IEnumerable<Block>)[], readers)
    {
    }
}
