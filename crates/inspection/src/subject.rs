//! What is looked at, and what is asked when a fact that matters is missing.

/// What a check is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Subject {
    /// Distance between the centres of two studs.
    StudSpacing,
    /// Wood under a sheet's edge, on the side that has less.
    SheetEdgeBearing,
    /// Studs nailed together where several are asked for.
    Plies,
    /// Bow of a stud out of its line.
    Bow,
    /// Lean of a stud or a wall.
    Plumb,
    /// A surface out of its plane.
    Flatness,
    /// The faces of two neighbours out of one plane.
    FaceToFace,
    /// Depth of a notch.
    NotchDepth,
    /// Length of a notch along the member.
    NotchLength,
    /// Where along the member a notch is.
    NotchPlace,
    /// Diameter of a hole.
    HoleDiameter,
    /// Wood between a hole and the face or edge of the member.
    HoleToEdge,
    /// Wood between a hole and the next hole or notch.
    HoleToNext,
    /// A hole in the same section as a notch.
    HoleBesideNotch,
    /// Doubled studs bored in a row.
    DoubledInARow,
    /// Any cut in a member that its maker or designer did not allow.
    EngineeredMember,
    /// What was taken of a top plate's width.
    PlateCut,
    /// Thickness of the tie across a cut plate.
    TieThickness,
    /// Width of that tie.
    TieWidth,
    /// How far it reaches past the opening, on the side where it reaches less.
    TiePastOpening,
    /// Its nails, on the side that has fewer.
    TieNails,
    /// Diameter of a nail.
    NailDiameter,
    /// Length of a nail.
    NailLength,
    /// Nails along a panel's edge that hold.
    EdgeNails,
    /// Nails along a stud inside the panel that hold.
    FieldNails,
    /// The widest gap between nails that hold.
    WidestNailGap,
    /// Nail to the edge of the panel.
    NailToPanelEdge,
    /// Diameter of an anchor bolt.
    BoltDiameter,
    /// Bolt in the concrete.
    Embedment,
    /// Bolt above the foundation, for plates, washer and nut.
    ThreadForNut,
    /// Nut on its bolt.
    Nut,
    /// Washer under the nut.
    Washer,
    /// Side of a plate washer.
    WasherSide,
    /// Thickness of a plate washer.
    WasherThickness,
    /// Bolt to the nearer face of the plate.
    BoltAcrossPlate,
    /// Bolt to the near end of the plate piece: not too near.
    BoltNotTooNearEnd,
    /// Bolt to the near end of the plate piece: near enough.
    BoltNearEnd,
    /// Bolts of a plate piece that hold.
    BoltsInPiece,
    /// Distance between bolts that hold.
    BoltSpacing,
    /// A hold-down's thread in its nut.
    HoldDownThread,
    /// How far a hold-down's rod stands from where it was drawn.
    HoldDownOffset,
    /// Nails, screws or bolts of a hold-down.
    HoldDownFasteners,
    /// Studs that a hold-down is fixed to.
    HoldDownStuds,
    /// Uplift on a roof-to-wall connection.
    Uplift,
    /// Side of the wall on which a tie is nailed.
    TieSide,
    /// Nails of a roof-to-wall connection.
    ConnectionNails,
    /// Nails of a strap, on the side that has fewer.
    StrapNails,
    /// A strap that lies flat and straight.
    StrapFlat,
    /// Net uplift at the top of a wall.
    UpliftAtWallTop,
    /// Moisture content.
    Moisture,
}

/// A fact that is missing, asked before it is assumed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Question {
    /// How much wood is between the hole and the face?
    HoleToEdge,
    /// How much wood is between the hole and the next hole or notch?
    HoleToNext,
    /// Is there a notch in the same section as the hole?
    NotchBesideHole,
    /// How many doubled studs in a row are bored?
    DoubledInARow,
    /// Was the panel dry when it was nailed?
    PanelDryWhenNailed,
    /// How far from the panel's edge are the nails?
    NailToPanelEdge,
    /// How deep is the bolt in the concrete?
    Embedment,
    /// How far does the bolt stand up?
    Projection,
    /// How far is the bolt from the plate's face?
    BoltAcrossPlate,
    /// Is the nut on, and tight?
    Nut,
    /// How thick are nut and washer? The bolt's size is not listed.
    NutAndWasherSize,
    /// Is the tie on the sheathed side?
    TieSide,
    /// What does the engineer's drawing or the roof's table ask of the connection?
    UpliftRequired,
    /// Has the wall at least three readings?
    MoreMoistureReadings,
}
