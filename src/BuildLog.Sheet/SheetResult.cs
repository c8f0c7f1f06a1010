namespace BuildLog.Sheet;

/// <summary>What came of writing a sheet.</summary>
/// <param name="Pages">How many pages it has.</param>
/// <param name="MissingSigns">Signs that could not be printed, for the user to be told.</param>
public sealed record SheetResult(int Pages, IReadOnlyList<MissingSign> MissingSigns)
{
    /// <summary>One sentence a photo that could not be printed.</summary>
    public IReadOnlyList<string> SkippedPhotos { get; init; } = [];
}
