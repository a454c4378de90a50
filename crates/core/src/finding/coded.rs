//! Coded words that several rules use.

use crate::item::{Role, SeatState};
use crate::words;

words! {
    /// An axle by its place.
    AxleName, shown as "axle-" { Front = "front", Rear = "rear" }
}

words! {
    for Role, shown as "role-" {
        AxleAnchor = "axle-anchor",
        FrontAnchor = "front-anchor",
        Rack = "rack",
        Hitch = "hitch",
        SeatDeck = "seat-deck",
        PowerTakeOff = "power-take-off",
        Pressure = "pressure",
        Return = "return",
        CaseDrain = "case-drain",
        Wiring = "wiring",
    }
}

words! {
    for SeatState {
        Driving = "driving",
        Turned = "turned",
        Folded = "folded",
        Slid = "slid",
        Off = "off",
    }
}

words! {
    /// A value that a row of the catalogue may leave unsaid, or a dimension of a port that may not be known.
    Unstated, shown as "value-" {
        BallastPlace = "ballast-place",
        BeaverAngle = "beaver-angle",
        Bolt = "bolt",
        Bore = "bore",
        CabRear = "cab-rear",
        Category = "category",
        CentreOfGravity = "centre-of-gravity",
        Console = "console",
        Coupling = "coupling",
        DeckHeight = "deck-height",
        DeckLength = "deck-length",
        DeckRear = "deck-rear",
        DeckWidth = "deck-width",
        Diameter = "diameter",
        Drop = "drop",
        Flow = "flow",
        FrontAxle = "front-axle",
        FrontAxleLoad = "front-axle-load",
        FrontBore = "front-bore",
        Gap = "gap",
        GateHeight = "gate-height",
        GateWidth = "gate-width",
        GreatestFlow = "greatest-flow",
        GreatestPower = "greatest-power",
        GreatestPressure = "greatest-pressure",
        GroundLoad = "ground-load",
        Height = "height",
        HitchStay = "hitch-stay",
        Holes = "holes",
        HydraulicNeed = "hydraulic-need",
        IndexPoint = "index-point",
        Latch = "latch",
        LeastFlow = "least-flow",
        LeastPower = "least-power",
        LeastPressure = "least-pressure",
        Lift = "lift",
        LinkMass = "link-mass",
        Mass = "mass",
        NoseLoad = "nose-load",
        Outlets = "outlets",
        Outline = "outline",
        OverallRadius = "overall-radius",
        PathTurn = "path-turn",
        PathWidth = "path-width",
        Pose = "pose",
        Power = "power",
        PowerBeyond = "power-beyond",
        PresenceSwitch = "presence-switch",
        Pressure = "pressure",
        Ramp = "ramp",
        RatedAxle = "rated-axle",
        RatedLoad = "rated-load",
        RatedNose = "rated-nose",
        RatedTotal = "rated-total",
        Reach = "reach",
        RearAxleLoad = "rear-axle-load",
        RollOverBar = "roll-over-bar",
        RoomBehind = "room-behind",
        Rotation = "rotation",
        SeatOff = "seat-off",
        OwnSeat = "own-seat",
        Serials = "serials",
        Setback = "setback",
        ShaftType = "shaft-type",
        Size = "size",
        Speed = "speed",
        Spread = "spread",
        Standard = "standard",
        StaticLoadedRadius = "static-loaded-radius",
        Stations = "stations",
        Supplier = "supplier",
        SwivelRadius = "swivel-radius",
        Tolerance = "tolerance",
        Track = "track",
        TransportWidth = "transport-width",
        TurningRadius = "turning-radius",
        TyreRating = "tyre-rating",
        TyreWidth = "tyre-width",
        Wheelbase = "wheelbase",
        Width = "width",
    }
}
