using System.Security.Cryptography;

namespace BuildLog.Data.Attachments;

/// <summary>The SHA-256 of a content as the record writes it: 64 lower-case hexadecimal digits.</summary>
internal static class ContentHash
{
    public static bool Is(string text) => text.Length == 64 && text.All(char.IsAsciiHexDigitLower);

    public static string Of(Stream content) => Convert.ToHexStringLower(SHA256.HashData(content));

    public static string Of(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content));
}
