namespace BuildLog.Sheet.Pdf;

/// <summary>One numbered object of a PDF file: a value, and the stream that may follow it, both as the bytes of the file.</summary>
internal readonly record struct PdfObject(int Number, ReadOnlyMemory<byte> Value, ReadOnlyMemory<byte>? Stream);
