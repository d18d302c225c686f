namespace MomentArm.Prescribing;

/// <summary>Things a patient may own.</summary>
public enum Equipment
{
    /// <summary>Mat, carpet or blanket.</summary>
    Mat,

    /// <summary>Sturdy chair.</summary>
    Chair,

    /// <summary>Step or bottom stair.</summary>
    Step,

    /// <summary>Free wall or closed door.</summary>
    Wall,

    /// <summary>Foam roller or rolled towel.</summary>
    Roller,

    /// <summary>Strap: belt, towel, sheet; anything that does not stretch.</summary>
    Strap,

    /// <summary>Loop band.</summary>
    LoopBand,

    /// <summary>Cuff weight, or a bag of water tied on.</summary>
    CuffWeight,

    /// <summary>Long elastic band or tubing, in the hands or fixed at a closed door.</summary>
    Band,

    /// <summary>Small weight for the hand, or a bottle of water.</summary>
    HandWeight,

    /// <summary>Ball as big as a head, or a firm pillow.</summary>
    Ball,

    /// <summary>Ball as big as a fist.</summary>
    SmallBall,

    /// <summary>Towel.</summary>
    Towel,

    /// <summary>Firm pillow or folded blanket; under a foot it unsettles the balance.</summary>
    Pillow,

    /// <summary>Bench, couch or bed at a height.</summary>
    Bench,

    /// <summary>Table or worktop.</summary>
    Table,

    /// <summary>Tilted board or wedge.</summary>
    Board,

    /// <summary>Stick or broom handle.</summary>
    Stick,

    /// <summary>Stationary bicycle.</summary>
    Bicycle,
}
