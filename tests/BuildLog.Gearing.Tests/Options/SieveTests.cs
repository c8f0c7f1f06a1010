using BuildLog.Gearing.Options;
using Xunit;

namespace BuildLog.Gearing.Tests.Options;

/// <summary>An unsure combination is asked about the slow way only where it could still be one of the best.</summary>
public sealed class SieveTests
{
    private static readonly OptionScore Good = new(0, 0, 0, 1, 1, 0.1);

    [Fact]
    public void What_is_beaten_at_its_best_is_never_asked_about()
    {
        var early = new Sieve();
        early.Sure.Add(Good, At(1));
        early.AddUnsure(Good with { Cost = 2 }, At(2));
        var late = new Sieve();
        late.AddUnsure(Good with { Cost = 2 }, At(2));
        late.Sure.Add(Good, At(1));

        Assert.Equal([At(1)], Settled(early, _ => throw new InvalidOperationException("asked")));
        Assert.Equal([At(1)], Settled(late, _ => throw new InvalidOperationException("asked")));
    }

    // The most promising first: what it turns out to be may beat the next one unasked. The distance is known already.
    [Fact]
    public void What_is_asked_about_counts_as_what_it_turns_out_to_be()
    {
        List<Combination> asked = [];
        var sieve = new Sieve();
        sieve.AddUnsure(Good with { Cost = 3 }, At(3));
        sieve.AddUnsure(Good with { Cost = 2 }, At(2));
        sieve.Sure.Add(Good with { Clash = 1, Cost = 0 }, At(1));

        var front = sieve.Settled(at => Asked(at, Good with { Cost = at.Tyres, Distance = 9 }), CancellationToken.None);

        Assert.Equal([At(2)], asked);
        Assert.Equal([At(1), At(2)], front.Members.Select(member => member.What).Order());
        Assert.Equal(0.1, front.Members.Single(member => member.What == At(2)).Score.Distance);

        OptionScore Asked(Combination at, OptionScore score)
        {
            asked.Add(at);
            return score;
        }
    }

    [Fact]
    public void What_turns_out_to_clash_is_beaten_by_what_is_sure()
    {
        var sieve = new Sieve();
        sieve.AddUnsure(Good, At(2));
        sieve.Sure.Add(Good with { Watch = 1 }, At(1));

        Assert.Equal([At(1)], Settled(sieve, _ => Good with { Clash = 1, Watch = 1 }));
    }

    [Fact]
    public void What_two_cores_were_left_with_is_one()
    {
        Sieve one = new(), other = new();
        one.Sure.Add(Good with { Cost = 0, Watch = 1 }, At(1));
        other.Sure.Add(Good with { Cost = 5, Distance = 0 }, At(2));
        other.AddUnsure(Good with { Cost = 2 }, At(3));
        one.Add(other);

        Assert.Equal([At(1), At(2), At(3)], Settled(one, _ => Good with { Cost = 2 }));
    }

    [Fact]
    public void It_ends_where_it_is_called_off()
    {
        var sieve = new Sieve();
        sieve.AddUnsure(Good, At(1));

        Assert.Throws<OperationCanceledException>(() => sieve.Settled(_ => Good, new CancellationToken(canceled: true)));
    }

    private static IEnumerable<Combination> Settled(Sieve sieve, Func<Combination, OptionScore> ask) => sieve.Settled(ask, CancellationToken.None).Members.Select(member => member.What).Order();

    private static Combination At(int tyres) => new(0, 0, 0, tyres);
}
