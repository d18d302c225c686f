using System.Text.Json.Serialization;
using MomentArm.Body;
using MomentArm.Drawing;
using MomentArm.Prescribing;

namespace MomentArm.Content;

/// <summary>One file of content/cards: a short illustrated explanation for patients.</summary>
/// <param name="Schema">Where the schema is.</param>
/// <param name="Id">Equal to the file name.</param>
/// <param name="Name">Name for clinicians.</param>
/// <param name="Region">The part of the body it is kept under.</param>
/// <param name="Pictures">One or more pictures.</param>
/// <param name="Sources">Keys of sources.json behind what it says, or "common-practice".</param>
public sealed record CardFile(
    [property: JsonPropertyName("$schema")] string Schema, string Id, string Name, BodyRegion Region, IReadOnlyList<CardPictureFile> Pictures,
    IReadOnlyList<string> Sources);

/// <summary>A picture of a card: an exercise at a moment, or a pose of its own.</summary>
public sealed record CardPictureFile
{
    /// <summary>Id of the exercise; left out when a pose is given.</summary>
    public string? Exercise { get; init; }

    /// <summary>Where in the movement, 0 start to 1 end.</summary>
    public double At { get; init; } = 1;

    /// <summary>A pose of its own.</summary>
    public PoseFile? Pose { get; init; }

    /// <summary>Props of that pose.</summary>
    public IReadOnlyList<PropFile> Props { get; init; } = [];

    /// <summary>Direction of view; that of the exercise when left out, side for a pose.</summary>
    public ViewKind? View { get; init; }

    /// <summary>Point of the working limb that the picture is drawn close round.</summary>
    public string? CloseUp { get; init; }

    /// <summary>Areas to tint.</summary>
    public IReadOnlyList<CardTintFile> Tints { get; init; } = [];

    /// <summary>Ids of lines of body/muscles.json to draw, working side.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];
}

/// <summary>An area to tint.</summary>
/// <param name="Area">The drawn area.</param>
/// <param name="Kind">Work or stretch.</param>
/// <param name="Limb">Whose; left out for both.</param>
public sealed record CardTintFile(BodyArea Area, TintKind Kind, Limb? Limb = null);

/// <summary>One file of content/words/&lt;language&gt;/cards.</summary>
/// <param name="Schema">Where the schema is.</param>
/// <param name="Title">The title.</param>
/// <param name="Text">Short paragraphs.</param>
/// <param name="Captions">What each picture shows, in their order.</param>
/// <param name="Help">What helps.</param>
public sealed record CardWordsFile(
    [property: JsonPropertyName("$schema")] string Schema, string Title, IReadOnlyList<string> Text, IReadOnlyList<string> Captions, IReadOnlyList<string> Help);
