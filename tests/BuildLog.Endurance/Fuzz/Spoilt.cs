namespace BuildLog.Endurance.Fuzz;

/// <summary>Makes something bad of something sound.</summary>
internal static class Spoilt
{
    private static readonly string[] Odd =
    [
        "", "0", "-1", "1e999", "null", "true", "[]", "{}", "[[[[[[[[", "\"", "\\", "\\u0000", "\u001b[2J", "=cmd()", "'", ";", ",", "\t", "\r\n", "\n", "9999-12-31", "0001-01-01", "NaN",
        "99999999999999999999999999", "-0.0", "½", "\ud83d\ude00", "İ", "../../x", "00000000-0000-0000-0000-000000000000",
    ];

    /// <summary>A few bits turned where something is written, or the end cut off, or a stretch written twice.</summary>
    public static byte[] Bytes(byte[] sound, Random chance)
    {
        if (chance.Next(8) == 0) return sound[..chance.Next(sound.Length)];
        var bytes = (byte[])sound.Clone();
        for (var k = chance.Next(1, 6); k > 0; k--)
        {
            var at = chance.Next(bytes.Length);
            while (bytes[at] == 0) at = (at + 1) % bytes.Length;
            bytes[at] ^= (byte)(1 << chance.Next(8));
        }

        if (chance.Next(8) > 0) return bytes;
        var length = chance.Next(1, Math.Min(4096, bytes.Length));
        Array.Copy(bytes, chance.Next(bytes.Length - length), bytes, chance.Next(bytes.Length - length), length);
        return bytes;
    }

    /// <summary>A few pieces taken out, put in, written twice or exchanged for something odd.</summary>
    public static string Text(string sound, Random chance)
    {
        var text = sound;
        for (var k = chance.Next(1, 4); k > 0; k--)
        {
            var from = chance.Next(text.Length + 1);
            var length = chance.Next(Math.Min(20, text.Length - from) + 1);
            text = chance.Next(4) switch
            {
                0 => text.Remove(from, length),
                1 => text.Insert(from, text.Substring(from, length)),
                2 => text.Insert(from, Odd[chance.Next(Odd.Length)]),
                _ => text.Remove(from, length).Insert(from, Odd[chance.Next(Odd.Length)]),
            };
        }

        return text;
    }
}
