using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Prescribing;

namespace MomentArm.Web.Pages.Program;

/// <summary>One exercise of a program being built. The key stays while it is moved and changed.</summary>
public sealed record PlanItem(Guid Key, ProgramItem Item);

/// <summary>A home program while it is being built. Every change makes a new one, so that the last can be taken back.</summary>
public sealed record Plan
{
    /// <summary>Days a week when nothing else was said (common practice, no source).</summary>
    public const int UsualDays = 3;

    public ImmutableArray<PlanItem> Items { get; init; } = [];

    public int DaysPerWeek { get; init; } = UsualDays;

    public int PainCeiling { get; init; } = 3;

    public string? Note { get; init; }

    /// <summary>Education cards that go with it.</summary>
    public ImmutableArray<string> Cards { get; init; } = [];

    public AgreedLimits Agreed { get; init; } = new();

    /// <summary>A stored program, opened for editing; an empty plan for none.</summary>
    public static Plan From(HomeProgram? program) => program is null
        ? new Plan()
        : new Plan
        {
            Items = [.. program.Items.Select(item => new PlanItem(Guid.NewGuid(), item))],
            DaysPerWeek = program.DaysPerWeek,
            PainCeiling = program.PainCeiling,
            Note = program.Note,
            Cards = program.Cards.IsDefault ? [] : program.Cards,
            Agreed = program.Agreed,
        };

    public Plan With(PlanItem item) => this with { Items = Items.Add(item) };

    public Plan Without(Guid key) => this with { Items = Items.RemoveAll(i => i.Key == key) };

    public Plan Changed(Guid key, Func<ProgramItem, ProgramItem> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return this with { Items = [.. Items.Select(i => i.Key == key ? i with { Item = change(i.Item) } : i)] };
    }

    /// <summary>One place up (-1) or down (+1); nothing at the ends.</summary>
    public Plan Moved(Guid key, int by)
    {
        var from = Items.ToList().FindIndex(i => i.Key == key);
        var to = from + by;
        if (from < 0 || to < 0 || to >= Items.Length)
            return this;
        var item = Items[from];
        return this with { Items = Items.RemoveAt(from).Insert(to, item) };
    }

    /// <summary>In the usual order of a session.</summary>
    public Plan Sorted(Func<string, Exercise?> exercise)
    {
        var sorted = ProgramOrder.Sort([.. Items.Select(i => i.Item)], exercise);
        return this with { Items = [.. sorted.Select(item => Items.First(i => ReferenceEquals(i.Item, item)))] };
    }
}

/// <summary>Which side works, as one choice.</summary>
public enum WorkChoice
{
    /// <summary>Both at once.</summary>
    Together,

    Left,

    Right,

    /// <summary>Both in turn, left first.</summary>
    LeftThenRight,

    /// <summary>Both in turn, right first.</summary>
    RightThenLeft,
}

/// <summary>Between a choice of sides and a program item.</summary>
public static class WorkChoices
{
    public static WorkChoice Of(ProgramItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return item.WorkingSide switch
        {
            Side.Left => item.BothSides ? WorkChoice.LeftThenRight : WorkChoice.Left,
            Side.Right => item.BothSides ? WorkChoice.RightThenLeft : WorkChoice.Right,
            null => WorkChoice.Together,
        };
    }

    public static ProgramItem With(this ProgramItem item, WorkChoice choice)
    {
        ArgumentNullException.ThrowIfNull(item);
        Side? side = choice switch
        {
            WorkChoice.Together => null,
            WorkChoice.Left or WorkChoice.LeftThenRight => Side.Left,
            WorkChoice.Right or WorkChoice.RightThenLeft => Side.Right,
        };
        return item with { WorkingSide = side, BothSides = choice is WorkChoice.LeftThenRight or WorkChoice.RightThenLeft };
    }

    public static string Words(WorkChoice choice) => choice switch
    {
        WorkChoice.Together => "Both at once",
        WorkChoice.Left => "Left",
        WorkChoice.Right => "Right",
        WorkChoice.LeftThenRight => "Both in turn, left first",
        WorkChoice.RightThenLeft => "Both in turn, right first",
    };
}
