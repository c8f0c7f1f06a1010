using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Options;

internal static class PoolWords
{
    public static string InWords(this Pool pool) => pool switch
    {
        Pool.Owned => "owned",
        Pool.Offered => "offered",
        Pool.Listed => "listed",
        _ => throw new ArgumentOutOfRangeException(nameof(pool), pool, "No such pool."),
    };
}
