using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace MomentArm.Records;

/// <summary>Instants are stored in UTC and come back marked as UTC; a local time is refused on the way in.</summary>
internal sealed class UtcConverter() : ValueConverter<DateTime, DateTime>(
    value => Utc(value), stored => DateTime.SpecifyKind(stored, DateTimeKind.Utc))
{
    private static DateTime Utc(DateTime value) => value.Kind == DateTimeKind.Utc
        ? value
        : throw new ArgumentException("An instant must be given in UTC.", nameof(value));
}
