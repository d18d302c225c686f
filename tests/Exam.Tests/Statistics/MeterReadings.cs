using System.Collections.Immutable;

namespace MomentArm.Exam.Tests;

/// <summary>Peak flow of 17 people, l/min, by two meters, twice each: Bland JM, Altman DG 1986 Lancet 1:307-310.</summary>
internal static class MeterReadings
{
    internal static readonly ImmutableArray<double> LargeFirst =
        [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];

    internal static readonly ImmutableArray<double> LargeSecond =
        [490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421];

    internal static readonly ImmutableArray<double> SmallFirst =
        [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];

    internal static readonly ImmutableArray<double> SmallSecond =
        [525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443];
}
