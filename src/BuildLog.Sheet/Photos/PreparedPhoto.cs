namespace BuildLog.Sheet.Photos;

/// <summary>A photo ready to print: a plain JPEG, upright, with nothing in it but the picture.</summary>
/// <param name="Jpeg">The file.</param>
/// <param name="Width">Pixels across.</param>
/// <param name="Height">Pixels down.</param>
internal sealed record PreparedPhoto(byte[] Jpeg, int Width, int Height);
