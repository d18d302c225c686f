using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>A short illustrated explanation for a patient. Words are kept apart, per language.</summary>
/// <param name="Id">Stable id, equal to the file name.</param>
/// <param name="Name">Name for clinicians, such as "Outer-knee pain: the long band".</param>
/// <param name="Region">The part of the body it is kept under.</param>
/// <param name="Pictures">Its pictures in order, one or more.</param>
/// <param name="Sources">Keys of content/sources.json behind what it says.</param>
public sealed record EducationCard(string Id, string Name, BodyRegion Region, ImmutableArray<CardPicture> Pictures, ImmutableArray<string> Sources);

/// <summary>A picture of a card: a moment of a movement, with areas tinted and lines of muscle drawn.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="At">Where in it, 0 start to 1 end.</param>
/// <param name="Tints">Areas of the body to tint.</param>
/// <param name="Lines">Ids of lines of muscle, of the working side.</param>
public sealed record CardPicture(Movement Movement, double At, ImmutableArray<Tint> Tints, ImmutableArray<string> Lines)
{
    /// <summary>Draws it.</summary>
    /// <param name="muscles">The muscles of the figure.</param>
    /// <param name="points">Named surface points.</param>
    /// <param name="working">The side being treated.</param>
    /// <param name="options">Choices.</param>
    /// <returns>The picture.</returns>
    public Picture Draw(MuscleSet muscles, SurfacePoints points, Side working, PictureOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return Pictures.WithLines(muscles, points, Movement, working, At, Lines, options with { Tints = Tints });
    }
}

/// <summary>What a patient reads on a card, in one language.</summary>
/// <param name="Title">The title.</param>
/// <param name="Text">Short paragraphs.</param>
/// <param name="Captions">What each picture shows, one for each.</param>
/// <param name="Help">What helps, a line each.</param>
public sealed record CardWords(string Title, ImmutableArray<string> Text, ImmutableArray<string> Captions, ImmutableArray<string> Help)
{
    /// <summary>All sentences, for grading.</summary>
    public string AllText => string.Join(" ", ((IEnumerable<string>)[Title, .. Text, .. Captions, .. Help]).Select(t => t.TrimEnd('.') + "."));
}
