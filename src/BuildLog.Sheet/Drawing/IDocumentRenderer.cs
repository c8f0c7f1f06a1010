namespace BuildLog.Sheet.Drawing;

/// <summary>Turns drawn pages into a file. Layout knows no more of it than this.</summary>
internal interface IDocumentRenderer
{
    ReadOnlyMemory<byte> Render(DrawnDocument document);
}
