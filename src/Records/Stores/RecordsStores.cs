using Microsoft.EntityFrameworkCore;

namespace MomentArm.Records;

/// <summary>All stores over one database and one clock. Seeding uses <see cref="At"/> to enter the past.</summary>
public sealed class RecordsStores(RecordsWork work)
{
    public RecordsStores(IDbContextFactory<RecordsContext> factory, TimeProvider clock)
        : this(new RecordsWork(factory, clock))
    {
    }

    public PatientStore Patients { get; } = new(work);

    public EpisodeStore Episodes { get; } = new(work);

    public VisitStore Visits { get; } = new(work);

    public GoalStore Goals { get; } = new(work);

    public AttachmentStore Attachments { get; } = new(work);

    public ProgramStore Programs { get; } = new(work);

    public FormStore Forms { get; } = new(work);

    public LinkStore Links { get; } = new(work);

    public LogStore Logs { get; } = new(work);

    public TodayQuery Today { get; } = new(work);

    public AuditStore Audit { get; } = new(work);

    public DraftStore Drafts { get; } = new(work);

    /// <summary>The same stores with their clock standing at that instant.</summary>
    public RecordsStores At(DateTime utc) => new(work.At(new FixedClock(utc)));
}
