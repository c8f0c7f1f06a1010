using BuildLog.Tui.Tests.Samples;
using BuildLog.Tui.WhatNow;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.WhatNow;

public sealed class WhatNowTests
{
    [Fact]
    public void A_vehicle_says_what_is_late_what_it_waits_for_and_what_it_came_to()
    {
        using var small = new SmallShop().WithWork();

        var row = WhatNowWords.Of(small.Shop, small.Bittern, small.Shop.Deadlines(), new(2026, 5, 20));

        Assert.Equal(["job due 10 May 2026: Rebuild the brake cylinders", "Balance the propshaft: waits for balance, at Tolland machine shop, promised 15 May 2026"], row.Late);
        Assert.Equal(["Fit the axle: waits for the paint to dry", "by 1 Jun 2026: test station, second look"], row.WaitsFor);
        Assert.Equal("Rebuild the brake cylinders", row.NextJob); // the propshaft is away
        Assert.DoesNotContain("Balance the propshaft", row.FurtherJobs);
        Assert.Equal(row.Counts.Clash + row.Counts.Open, row.Findings.Count);
        Assert.Equal("2:30 h", row.Hours);
        Assert.Equal("165.50 EUR", row.Spent); // 45.50 + 120.00
        Assert.Equal(2, row.IdleDays);         // worked on 18 May, asked on 20 May
    }

    [Fact]
    public void What_is_sent_out_blocks_its_job_and_another_comes_next()
    {
        using var small = new SmallShop().WithWork();

        var row = WhatNowWords.Of(small.Shop, small.Bittern, small.Shop.Deadlines(), new(2026, 5, 5));

        Assert.Contains("Balance the propshaft: waits for balance, at Tolland machine shop, promised 15 May 2026", row.WaitsFor);
        Assert.Equal("Rebuild the brake cylinders", row.NextJob);
    }

    [Fact]
    public void What_is_late_comes_before_what_clashes_and_what_is_at_rest_comes_last()
    {
        WhatNowRow[] rows =
        [
            Row("at rest") with { IsAtRest = true, Counts = new(Clash: 5) },
            Row("idle") with { IdleDays = 90 },
            Row("open") with { Counts = new(Open: 2) },
            Row("clash") with { Counts = new(Clash: 1) },
            Row("late") with { Late = ["by 3 May 2026: retest"] },
        ];

        Assert.Equal(["late", "clash", "open", "idle", "at rest"], WhatNowOrder.Sorted(rows).Select(row => row.Name));
    }

    // 365.25 days a year, a twelfth of that a month: 90 days are 2.96, 456 are 14.98, 741 are 2.03 years.
    [Theory]
    [InlineData(0, "worked on today")]
    [InlineData(1, "1 day")]
    [InlineData(59, "59 days")]
    [InlineData(90, "3 months")]
    [InlineData(456, "15 months")]
    [InlineData(600, "over a year")]
    [InlineData(741, "2 years")]
    [InlineData(1460, "over 3 years")]
    public void How_long_it_stood_idle_is_said_in_the_unit_that_says_something(int days, string words)
        => Assert.Equal(words, WhatNowText.Idle(Row("idle") with { IdleDays = days }));

    [Fact]
    public void Every_word_typed_has_to_occur_somewhere()
    {
        WhatNowRow[] rows = [Row("Heron") with { NextJob = "paint the axle" }, Row("Heron two"), Row("Wren") with { WaitsFor = ["Fit: waits for a part, the axle"] }];

        Assert.Equal(["Heron", "Wren"], WhatNowOrder.Matching(rows, "AXLE").Select(row => row.Name));
        Assert.Equal(["Heron"], WhatNowOrder.Matching(rows, "axle her").Select(row => row.Name));
    }

    private static WhatNowRow Row(string name) => new(1, name, "in build", new VerdictCounts());
}
