namespace MomentArm.Records;

/// <summary>A row that belongs to one clinic and is never seen or changed from another.</summary>
public interface IClinicRow
{
    /// <summary>The clinic it belongs to; the first part of every key.</summary>
    Guid ClinicId { get; }
}

/// <summary>A row with an id of its own, which the audit trail can name.</summary>
public interface IAuditedRow : IClinicRow
{
    /// <summary>Id within the clinic.</summary>
    Guid Id { get; }
}

/// <summary>A row people edit: a save based on an older version is refused.</summary>
public interface IVersionedRow
{
    /// <summary>Changes with every save.</summary>
    Guid RowVersion { get; set; }
}

/// <summary>A row that is part of a visit and closed with it.</summary>
public interface IVisitRow : IAuditedRow
{
    /// <summary>The visit it is part of.</summary>
    Guid VisitId { get; }
}
