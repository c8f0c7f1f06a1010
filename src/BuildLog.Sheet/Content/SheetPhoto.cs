namespace BuildLog.Sheet.Content;

/// <summary>A photo as the camera left it: JPEG, PNG or WebP. The sheet prints a copy that is turned upright, made smaller and carries nothing but the picture.</summary>
/// <param name="Name">What a sentence about it calls it, usually its file name.</param>
/// <param name="File">The file's bytes.</param>
/// <param name="Caption">What it shows.</param>
/// <param name="When">Before the work, after it, or neither.</param>
public sealed record SheetPhoto(string Name, ReadOnlyMemory<byte> File, string? Caption = null, PhotoMoment When = PhotoMoment.Any);

/// <summary>On which side of the work a photo was taken.</summary>
public enum PhotoMoment
{
    Any,
    Before,
    After,
}
