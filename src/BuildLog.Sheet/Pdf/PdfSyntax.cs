using System.Buffers.Text;
using System.Text;

namespace BuildLog.Sheet.Pdf;

/// <summary>The little of PDF's syntax (ISO 32000-1, 7.2 and 7.3) that finishing a file needs.</summary>
internal static class PdfSyntax
{
    /// <summary>White space, of which the standard knows more than is ever written.</summary>
    public static ReadOnlySpan<byte> Blanks => " \r\n\t"u8;

    /// <summary>The whole number that follows a name, blanks between them; null where no such place is.</summary>
    public static int? NumberAfter(ReadOnlySpan<byte> name, ReadOnlySpan<byte> text)
    {
        while (text.IndexOf(name) is >= 0 and var at)
        {
            text = text[(at + name.Length)..];
            var next = text.TrimStart(Blanks);             // "/Length1 9" is another name than "/Length 9"
            if (next.Length < text.Length && Number(next) is { } number) return number;
        }

        return null;
    }

    /// <summary>The whole number that stands here.</summary>
    public static int? Number(ReadOnlySpan<byte> text) => Utf8Parser.TryParse(text, out int number, out _) ? number : null;

    /// <summary>One character a byte, whatever the bytes mean.</summary>
    public static string Text(ReadOnlyMemory<byte> value) => Encoding.Latin1.GetString(value.Span);

    /// <summary>The way back from <see cref="Text"/>.</summary>
    public static byte[] Bytes(string text) => Encoding.Latin1.GetBytes(text);
}
