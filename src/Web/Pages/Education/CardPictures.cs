using System.Collections.Concurrent;
using System.Collections.Immutable;
using MomentArm.Body;
using MomentArm.Content;
using MomentArm.Drawing;

namespace MomentArm.Web.Pages.Education;

/// <summary>The pictures of education cards, drawn once each with the build of the reference person.</summary>
public sealed class CardPictures(ContentLibrary content)
{
    private readonly Lazy<MuscleSet> muscles = new(() => content.Body.MusclesOf(content.Body.Build(new Physique())));
    private readonly ConcurrentDictionary<(string, Side), ImmutableArray<Picture>> drawn = new();

    /// <summary>The pictures of a card, in order.</summary>
    public ImmutableArray<Picture> Of(EducationCard card, Side side)
    {
        ArgumentNullException.ThrowIfNull(card);
        return drawn.GetOrAdd(
            (card.Id, side),
            _ => [.. card.Pictures.Select(p => p.Draw(muscles.Value, content.Body.Points, side, PictureOptions.Usual))]);
    }
}
