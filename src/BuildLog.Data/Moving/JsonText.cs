using System.Text.Json;

namespace BuildLog.Data.Moving;

internal static class JsonText
{
    public static bool TryGetGuidText(this JsonElement json, out Guid uid)
    {
        uid = default;
        return json.ValueKind == JsonValueKind.String && Guid.TryParseExact(json.GetString(), "D", out uid);
    }
}
