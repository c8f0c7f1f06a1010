using BuildLog.Gearing.Options;

namespace BuildLog.Tui.Options;

internal static class PoolWords
{
    public static string InWords(this Pool pool) => pool switch
    {
        Pool.Owned => Spoken("owned"),
        Pool.Offered => Spoken("offered"),
        Pool.Listed => Spoken("listed"),
        Pool.Elsewhere => Spoken("fitted elsewhere"),
        _ => throw new ArgumentOutOfRangeException(nameof(pool), pool, "No such pool."),
    };
}
