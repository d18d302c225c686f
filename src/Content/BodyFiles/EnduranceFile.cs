using MomentArm.Body;

namespace MomentArm.Content;

/// <summary>Relations of repetitions and holding time to strength, with their spread.</summary>
public sealed record EnduranceFile(
    IReadOnlyList<RepetitionCurveFile> Repetitions,
    double PersonSpreadAt80,
    double PersonSpreadAt60,
    double TaskSpread,
    double LiftedSpread,
    double MostRepetitions,
    IReadOnlyList<HoldingCurveFile> Holding,
    double HoldingStudySpread,
    double HoldingPersonSpread,
    double NearestRegionSpread,
    double LeastHoldingShare,
    double DemandSpread,
    string Source,
    string Note)
{
    /// <summary>The tables; null with faults told.</summary>
    internal EnduranceTables? ToTables(string file, FaultList faults)
    {
        var before = faults.Faults.Count;
        CheckRepetitions(file, faults);
        CheckHolding(file, faults);
        double[] fractions = [TaskSpread, LiftedSpread, HoldingStudySpread, HoldingPersonSpread, NearestRegionSpread, LeastHoldingShare, DemandSpread];
        if (fractions.Any(f => !(f is > 0 and < 1)))
            faults.Add(file, null, "endurance", "Spreads and the least share must lie between 0 and 1.", "Correct them.");
        if (!(PersonSpreadAt80 > 0 && PersonSpreadAt60 > 0 && MostRepetitions >= 10))
            faults.Add(file, null, "endurance", "Spreads in repetitions must be above 0 and the most repetitions at least 10.", "Correct them.");
        return faults.Faults.Count > before
            ? null
            : new EnduranceTables(
                [.. Repetitions.Select(r => new RepetitionCurve(r.Task, [.. r.Points.Select(p => (p.Repetitions, p.Percent / 100))]))],
                PersonSpreadAt80,
                PersonSpreadAt60,
                TaskSpread,
                LiftedSpread,
                MostRepetitions,
                [.. Holding.Select(h => new HoldingCurve(h.Region, h.B, h.M))],
                HoldingStudySpread,
                HoldingPersonSpread,
                NearestRegionSpread,
                LeastHoldingShare,
                DemandSpread);
    }

    private void CheckRepetitions(string file, FaultList faults)
    {
        foreach (var task in Enum.GetValues<RepetitionTask>())
        {
            if (Repetitions.Count(r => r.Task == task) != 1)
                faults.Add(file, null, "endurance.repetitions", $"{task} needs one curve.", "Give each task one row.");
        }

        foreach (var curve in Repetitions)
        {
            var points = curve.Points;
            var falls = points.Count >= 2 && points[0] is { Repetitions: 1, Percent: 100 } && points[^1].Percent > 0;
            for (var i = 1; falls && i < points.Count; i++)
                falls = points[i].Repetitions > points[i - 1].Repetitions && points[i].Percent < points[i - 1].Percent;
            if (!falls)
                faults.Add(file, null, $"endurance.repetitions.{curve.Task}", "Repetitions must rise and percent fall, from 1 and 100.", "Correct the points.");
        }
    }

    private void CheckHolding(string file, FaultList faults)
    {
        foreach (var region in Enum.GetValues<HoldingRegion>())
        {
            if (Holding.Count(h => h.Region == region) != 1)
                faults.Add(file, null, "endurance.holding", $"{region} needs one curve.", "Give each region one row.");
        }

        foreach (var curve in Holding)
        {
            if (!(curve.B > 0 && curve.M < 0))
                faults.Add(file, null, $"endurance.holding.{curve.Region}", "b must be above 0 and m below.", "Correct the row.");
        }
    }
}

/// <summary>Repetitions to failure against percent of the one-repetition maximum, for one kind of task.</summary>
public sealed record RepetitionCurveFile(RepetitionTask Task, IReadOnlyList<RepetitionPointFile> Points, string Source, string Note);

/// <summary>One point of a repetition curve.</summary>
public sealed record RepetitionPointFile(double Repetitions, double Percent);

/// <summary>Holding time in seconds = b x share^m for one region.</summary>
public sealed record HoldingCurveFile(HoldingRegion Region, double B, double M, string Source);
