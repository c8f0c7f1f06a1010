using System.Text.Json.Nodes;

namespace BuildLog.Tui.Commands;

/// <summary>What a command has kept in the record, for its answer.</summary>
/// <param name="Lines">That it was kept, for a person.</param>
internal sealed record Kept(IReadOnlyList<string> Lines)
{
    public static readonly Kept Nothing = new([]);

    /// <summary>The offer it became, and whether that would do; null where it is no offer.</summary>
    public Func<JsonObject>? Offer { get; init; }

    /// <summary>The answer with what was kept.</summary>
    public Answer In(Answer answer) => answer with { ToJson = () => With(answer.ToJson()), Text = [.. answer.Text, .. Lines] };

    private JsonObject With(JsonObject json)
    {
        if (Offer is not null) json["offer"] = Offer();
        return json;
    }
}
