using CsCheck;

namespace MomentArm.Drawing.Tests;

public sealed class CircleHullTests
{
    private static readonly Gen<Disc[]> Discs = Gen.Select(Gen.Double[-20, 20], Gen.Double[-20, 20], Gen.Double[0.1, 9])
        .Select((x, y, r) => new Disc(x, y, 0, r)).Array[1, 8];

    [Fact]
    public void The_band_reaches_as_far_as_its_farthest_circle_in_every_direction() => Discs.Sample(discs =>
    {
        var arcs = CircleHull.Of(discs);
        for (var k = 0; k < 48; k++)
        {
            var angle = k * Math.PI / 24 + 0.01;
            var (sin, cos) = Math.SinCos(angle);
            var wanted = discs.Max(d => d.X * cos + d.Y * sin + d.R);
            var got = arcs.Max(a =>
            {
                var at = a.From + Math.IEEERemainder(angle - a.From, 2 * Math.PI);
                if (at < a.From)
                    at += 2 * Math.PI;
                var p = a.At(Math.Min(at, a.To));
                var q = a.At(a.From);
                return Math.Max(p.X * cos + p.Y * sin, q.X * cos + q.Y * sin);
            });
            Assert.Equal(wanted, got, 6);
        }
    });

    [Fact]
    public void The_arcs_turn_round_once() => Discs.Sample(discs =>
        Assert.Equal(2 * Math.PI, CircleHull.Of(discs).Sum(a => a.To - a.From), 6));

    [Fact]
    public void A_square_of_points_keeps_its_four_corners()
    {
        Disc[] corners = [new(0, 0, 0, 0), new(10, 0, 0, 0), new(10, 10, 0, 0), new(0, 10, 0, 0)];
        var arcs = CircleHull.Of(corners);
        Assert.Equal(4, arcs.Select(a => a.Center).Distinct().Count());
    }

    [Fact]
    public void A_limb_seen_along_its_axis_is_still_covered()
    {
        Disc[] limb = [new(0, 0, 0, 5), new(0.2, 0.1, 0.3, 4), new(0.3, 0.1, 0.6, 6)];
        var loops = TubeOutline.Of(limb);
        Assert.NotEmpty(loops);
        Assert.Equal(6.3, loops.SelectMany(l => l).Max(a => Math.Max(a.At(a.From).X, Math.Max(a.At(a.To).X, a.Center.X + a.Radius))), 3);
    }
}
