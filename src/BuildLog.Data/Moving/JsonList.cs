using System.Text.Json;

namespace BuildLog.Data.Moving;

/// <summary>Reads a JSON list off a stream one entry at a time, so that a list of millions takes no more memory than a short one.</summary>
/// <param name="stream">Where it stands.</param>
/// <param name="noList">It is JSON, but no list.</param>
/// <param name="longestEntry">Of one entry, in bytes.</param>
/// <param name="tooLong">An entry goes on for longer.</param>
internal sealed class JsonList(Stream stream, Func<Exception> noList, int longestEntry, Func<Exception> tooLong)
{
    private const int Piece = 64 * 1024;

    private byte[] buffer = new byte[Piece];
    private int start, end;
    private bool isAll, isBegun, isEnded;
    private JsonReaderState state;

    /// <summary>Null at the end.</summary>
    /// <exception cref="JsonException">It is no JSON.</exception>
    public JsonElement? Next()
    {
        while (!(isEnded && isAll))
        {
            if (TryRead() is { } entry) return entry;
            if (!isAll) Fill();
        }

        return null;
    }

    /// <summary>Null where more of the stream is wanted, or the list is at its end; what was read only half is read again.</summary>
    private JsonElement? TryRead()
    {
        var reader = new Utf8JsonReader(buffer.AsSpan(start, end - start), isAll, state);
        while (true)
        {
            var (consumed, before) = ((int)reader.BytesConsumed, reader.CurrentState);
            if (!reader.Read()) return Keep(consumed, before);
            if (!isBegun)
            {
                isBegun = reader.TokenType == JsonTokenType.StartArray ? true : throw noList();
            }
            else if (reader.CurrentDepth == 0)
            {
                isEnded = true;
            }
            else
            {
                return JsonElement.TryParseValue(ref reader, out var entry) ? Keep((int)reader.BytesConsumed, reader.CurrentState, entry) : Keep(consumed, before);
            }
        }
    }

    private JsonElement? Keep(int consumed, JsonReaderState at, JsonElement? entry = null)
    {
        (start, state) = (start + consumed, at);
        return entry;
    }

    private void Fill()
    {
        buffer.AsSpan(start, end - start).CopyTo(buffer);
        (start, end) = (0, end - start);
        if (end == buffer.Length)
        {
            if (end >= longestEntry) throw tooLong();
            Array.Resize(ref buffer, buffer.Length * 2);
        }

        var read = stream.Read(buffer, end, buffer.Length - end);
        (end, isAll) = (end + read, read == 0);
    }
}
