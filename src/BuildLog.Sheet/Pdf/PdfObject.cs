namespace BuildLog.Sheet.Pdf;

/// <summary>One numbered object of a PDF file: a value as text, and the stream that may follow it.</summary>
internal sealed record PdfObject(int Number, string Value, byte[]? Stream);
