//! Every code is reached, at the right place, by one small fault in a good file.
//!
//! Covers: catalogue/src/decode, catalogue/src/tree, catalogue/src/check.

use std::collections::BTreeSet;
use std::sync::LazyLock;

use fitup_catalogue::decode::{self, Filled};
use fitup_catalogue::tables::{Cell, Merged, Sheet, read_sheets, sheets};
use fitup_catalogue::{Code, Position, Problem, SORTS, Severity, read, read_bytes, read_closely};

const GOOD: &str = include_str!("minimal.json");

/// A code, the path it is reported at, and the fault: this text replaced by that.
type Case = (Code, &'static str, &'static str, &'static str);

const WHEELBASE: &str = "{\"value\": 1490, \"plus_minus\": 5, \"source\": \"listed\"}";

const CASES: &[Case] = &[
    // The file as a whole.
    (Code::Syntax, "", "\"format\": 1,", "\"format\": 1"),
    (Code::Syntax, "", "\"format\": 1,", "// a remark\n\"format\": 1,"),
    (Code::MissingFormat, "", "\"format\": 1,", ""),
    (Code::NewerFormat, "format", "\"format\": 1,", "\"format\": 2, \"wheels\": [],"),
    (Code::UnknownFormat, "format", "\"format\": 1,", "\"format\": 0,"),
    (Code::UnknownFormat, "format", "\"format\": 1,", "\"format\": \"1\","),
    (Code::WrongType, "", "{\n  \"format\": 1,", "[{\n  \"format\": 1,"),
    // Values that are not what the format wants.
    (Code::NumberWithUnit, "machines[0].mass", "\"mass\": 780", "\"mass\": \"780 kg\""),
    (Code::NotNumber, "machines[0].wheelbase", WHEELBASE, "\"n/a\""),
    (Code::WrongType, "frames[0].price", "\"price\": 1250", "\"price\": null"),
    (Code::WrongType, "machines[0].front_axle", "{\"oscillating\": {\"pivot_height\": 330}}", "3"),
    (Code::NotFlag, "machines[0].operator_seat.turns", "\"turns\": false", "\"turns\": \"no\""),
    (
        Code::MissingField,
        "seats[0].front_seat",
        "\"front_seat\": \"flips_forward\"",
        "\"front_seat\": \"slides_forward\"",
    ),
    (Code::UnknownField, "machines[0].wheelbas", "\"wheelbase\"", "\"wheelbas\""),
    (Code::UnknownField, "currency", "\"edition\"", "\"currency\": \"USD\", \"edition\""),
    (Code::UnknownField, "machines[0].wheelbase.plusminus", "\"plus_minus\": 5", "\"plusminus\": 5"),
    (Code::MissingField, "machines[0]", "\"station\": \"open\",", ""),
    (Code::MissingField, "units", "\"power\": \"kW\", ", ""),
    (
        Code::DuplicateField,
        "machines[0].station",
        "\"station\": \"open\",",
        "\"station\": \"open\", \"station\": \"cab\",",
    ),
    (Code::UnknownWord, "machines[0].ports[0].role", "\"role\": \"axle_anchor\"", "\"role\": \"axle_ancor\""),
    (
        Code::UnknownWord,
        "frames[0].ports[1].kind",
        "\"hook_rack\": {\n              \"side\": \"bar\"",
        "\"hookrack\": {\n              \"side\": \"bar\"",
    ),
    (Code::UnknownWord, "frames[0].stations[0]", "\"stations\": [\"open\"]", "\"stations\": [\"opne\"]"),
    (Code::NotExactlyOne, "machines[0].stock", "\"stock\": {\"used\": 1}", "\"stock\": {\"used\": 1, \"new\": 2}"),
    (Code::NotExactlyOne, "machines[0].stock", "\"stock\": {\"used\": 1}", "\"stock\": {}"),
    (Code::NumberNotFinite, "machines[0].mass", "\"mass\": 780", "\"mass\": 1e999"),
    (Code::NumberNotFinite, "machines[0].mass", "\"mass\": 780", "\"mass\": NaN"),
    (Code::NumberNotFinite, "machines[0].mass", "\"mass\": 780", "\"mass\": -Infinity"),
    (Code::NumberOutOfRange, "machines[0].mass", "\"mass\": 780", "\"mass\": 1e10"),
    (Code::NumberOutOfRange, "machines[0].years.first", "\"first\": 2009", "\"first\": 70000"),
    (
        Code::NumberOutOfRange,
        "machines[0].serials.first",
        "\"serials\": {\"first\": 1000}",
        "\"serials\": {\"first\": -1}",
    ),
    (Code::NumberNotWhole, "machines[0].hydraulics.outlets", "\"outlets\": 1,", "\"outlets\": 1.5,"),
    (Code::UnsafeCharacter, "machines[0].label", "\"label\": \"Small, open\"", "\"label\": \"Small\\u202e, open\""),
    (Code::UnsafeCharacter, "machines[0].label", "\"label\": \"Small, open\"", "\"label\": \"Small\\u0000\""),
    (Code::BlankText, "machines[0].label", "\"label\": \"Small, open\"", "\"label\": \" \""),
    (Code::BlankText, "name", "\"Smallest example\"", "\"\""),
    (Code::UnknownUnit, "units.length", "\"length\": \"mm\"", "\"length\": \"mn\""),
    (Code::UnknownUnit, "units.pressure", "\"pressure\": \"bar\"", "\"pressure\": \"atm\""),
    (Code::UnknownCurrency, "units.money", "\"money\": \"USD\"", "\"money\": \"$\""),
    (Code::NamedTwice, "parts[1].replaced.by[1]", "\"by\": [\"FR-20\"]", "\"by\": [\"FR-20\", \"FR-20\"]"),
    (
        Code::ListedWithItself,
        "frames[0].listed_with[0]",
        "\"requires\": [\"loader base\"],",
        "\"requires\": [\"loader base\"], \"listed_with\": [\"small-frame\"],",
    ),
    (Code::DrawsNothing, "implements[0].shapes[0].path", "M -700 -100 L 0 -100 L 0 700 L -700 700 Z", "M 3 4 L 3 4 Z"),
    (Code::HalfRangeTooGreat, "machines[0].wheelbase.plus_minus", "\"plus_minus\": 5", "\"plus_minus\": 5000"),
    // Sizes in another unit than the header's.
    (Code::UnlikelySize, "machines[0].wheelbase", WHEELBASE, "1.49"),
    (Code::UnlikelySize, "machines[0].wheelbase", WHEELBASE, "1e9"),
    (Code::UnlikelySize, "machines[0].mass", "\"mass\": 780", "\"mass\": 0.78"),
    (Code::UnlikelySize, "machines[0].mass", "\"mass\": 780", "\"mass\": 780000"),
    (Code::UnlikelySize, "sites[0].gate_width", "\"gate_width\": 1200", "\"gate_width\": 1.2"),
    (Code::BadDate, "guide.date", "\"2014-02-01\"", "\"Feb 2014\""),
    (Code::BadDate, "guide.date", "\"2014-02-01\"", "\"2014-02-31\""),
    // What contradicts itself.
    (Code::LoadsNotMass, "machines[0].mass", "\"mass\": 780", "\"mass\": 870"),
    (
        Code::LoadAboveRating,
        "machines[0].front.bare_load",
        "\"rated\": 600, \"bare_load\": 335",
        "\"rated\": 300, \"bare_load\": 335",
    ),
    (Code::WheelsOverlap, "machines[0].wheelbase", WHEELBASE, "690"),
    (
        Code::PartsOutweighWhole,
        "implements[0].mass",
        "\"label\": \"Small digging arm\",\n      \"mass\": 310",
        "\"label\": \"Small digging arm\",\n      \"mass\": 31",
    ),
    (Code::UnlikelySize, "machines[0].hydraulics.relief", "\"relief\": 135", "\"relief\": 2030"),
    (Code::UnlikelySize, "machines[0].hydraulics.flow", "\"flow\": 18.5", "\"flow\": 1850"),
    (
        Code::UnlikelySize,
        "implements[0].arm.bucket.greatest",
        "\"least\": -150, \"greatest\": 30, \"transport\": -60",
        "\"least\": -2.6, \"greatest\": 0.5, \"transport\": -1",
    ),
    (Code::UnlikelyYear, "machines[0].years.last", "\"last\": 2014", "\"last\": 20199"),
    (
        Code::TyreAboveMachine,
        "machines[0].front.static_loaded_radius",
        "\"track\": 930, \"tyre_width\": 180, \"static_loaded_radius\": 270",
        "\"track\": 930, \"tyre_width\": 180, \"static_loaded_radius\": 540",
    ),
    (
        Code::PortFarAway,
        "machines[0].ports[0].pose.at.x",
        "{\"at\": {\"x\": 0, \"z\": 330}, \"faces\": \"down\"",
        "{\"at\": {\"x\": -4300, \"z\": 330}, \"faces\": \"down\"",
    ),
    (
        Code::RareWord,
        "implements[0].ports[1].kind.coupler.size",
        "\"size\": \"12.5\", \"gender\": \"male\"",
        "\"size\": \"12,5\", \"gender\": \"male\"",
    ),
    (
        Code::SimilarPart,
        "parts[1].number",
        "{\"number\": \"FR-19\",",
        "{\"number\": \"ax 10\", \"name\": \"Axle\"}, {\"number\": \"FR-19\",",
    ),
    (
        Code::LineTwice,
        "parts_lists[1]",
        "\"parts_lists\": [",
        "\"parts_lists\": [{\"item\": \"small-frame\", \"assembly\": \"Axle plates\", \"position\": \"1\", \"part\": \"FR-20\", \"quantity\": 1},",
    ),
    (
        Code::HolesOverlap,
        "machines[0].ports[0].kind.bolt_pattern.holes[1]",
        "{\"u\": -250, \"v\": 40, \"diameter\": 14,",
        "{\"u\": -250, \"v\": -36, \"diameter\": 14,",
    ),
    (
        Code::BoltAboveHole,
        "frames[0].ports[0].kind.bolt_pattern.holes[0].diameter",
        "{\"u\": -250, \"v\": -40, \"diameter\": 15}",
        "{\"u\": -250, \"v\": -40, \"diameter\": 13}",
    ),
    (Code::LooksAway, "frames[0].ports[1].pose.faces", "\"faces\": \"rear\"", "\"faces\": \"front\""),
    (
        Code::FrameWithoutPort,
        "frames[0].ports",
        "\"name\": \"axle plates\",\n          \"role\": \"axle_anchor\"",
        "\"name\": \"axle plates\",\n          \"role\": \"front_anchor\"",
    ),
    // Ids and references.
    (Code::BadId, "sites[0].id", "\"id\": \"churchyard\"", "\"id\": \"Church Yard\""),
    (Code::BadId, "sites[0].id", "\"id\": \"churchyard\"", "\"id\": \"javascript:alert(1)\""),
    (Code::ReservedId, "sites[0].id", "\"id\": \"churchyard\"", "\"id\": \"any\""),
    (Code::DuplicateId, "sites[0].id", "\"id\": \"churchyard\"", "\"id\": \"small-open\""),
    (Code::DuplicatePart, "parts[1].number", "\"number\": \"FR-19\"", "\"number\": \"AX-10\""),
    (Code::DuplicatePort, "machines[0].ports[1].name", "\"name\": \"pressure\"", "\"name\": \"axle pads\""),
    (
        Code::UnknownReference,
        "parts_lists[1].item",
        "{\"item\": \"small-frame\", \"assembly\": \"Rack\"",
        "{\"item\": \"smal-frame\", \"assembly\": \"Rack\"",
    ),
    (Code::UnknownReference, "guide.sets[0].frame", "\"frame\": \"small-frame\"", "\"frame\": \"small-open\""),
    (Code::UnknownReference, "frames[0].listed_with[0]", "\"stations\": [\"open\"]", "\"listed_with\": [\"nobody\"]"),
    (Code::UnknownPart, "machines[0].ports[0].parts[0]", "\"parts\": [\"AX-10\"]", "\"parts\": [\"AX-1O\"]"),
    (Code::UnknownPart, "parts_lists[2].part", "\"part\": \"DA-11\"", "\"part\": \"DA-1\""),
    (Code::UnknownPart, "parts[1].replaced.by[0]", "\"by\": [\"FR-20\"]", "\"by\": [\"FR-21\"]"),
    (Code::EmptyRecord, "machines[0].years", "\"years\": {\"first\": 2009, \"last\": 2014}", "\"years\": {}"),
    (
        Code::EmptyRecord,
        "machines[0].hydraulics",
        "\"hydraulics\": {\"flow\": 18.5, \"relief\": 135, \"outlets\": 1, \"power_beyond\": true}",
        "\"hydraulics\": {}",
    ),
    // Numbers that cannot be.
    (Code::MassNotPositive, "machines[0].mass", "\"mass\": 780", "\"mass\": 0"),
    (Code::MassNotPositive, "implements[0].arm.boom.mass", "\"mass\": 70", "\"mass\": -70"),
    (
        Code::NotPositive,
        "machines[0].rear.static_loaded_radius",
        "\"static_loaded_radius\": 410",
        "\"static_loaded_radius\": 0",
    ),
    (
        Code::NotPositive,
        "parts_lists[2].quantity",
        "\"description\": \"Mast\", \"quantity\": 1",
        "\"description\": \"Mast\", \"quantity\": 0",
    ),
    (Code::Negative, "machines[0].wheelbase.plus_minus", "\"plus_minus\": 5", "\"plus_minus\": -5"),
    (Code::Negative, "adapters[0].hours", "\"hours\": 0.5", "\"hours\": -0.5"),
    (Code::RangeUpsideDown, "machines[0].years", "\"last\": 2014", "\"last\": 2004"),
    (
        Code::RangeUpsideDown,
        "machines[0].serials",
        "\"serials\": {\"first\": 1000}",
        "\"serials\": {\"first\": 1000, \"last\": 999}",
    ),
    (Code::RangeUpsideDown, "implements[0].arm.boom.greatest", "\"greatest\": 70", "\"greatest\": -70"),
    (Code::RangeUpsideDown, "implements[0].hydraulics.flow_max", "\"flow_max\": 30", "\"flow_max\": 3"),
    (Code::RangeUpsideDown, "machines[0].rear.overall_radius", "\"overall_radius\": 425", "\"overall_radius\": 405"),
    (Code::OutsideOwnRange, "implements[0].arm.boom.transport", "\"transport\": 65", "\"transport\": 75"),
    (Code::ShareOutOfRange, "trailers[0].nose_most", "\"nose_most\": 0.15", "\"nose_most\": 15"),
    (
        Code::FoldedSeatNotOutlined,
        "machines[0].operator_seat.flips_forward",
        "\"name\": \"body\", \"view\": \"side\", \"role\": \"body\"",
        "\"name\": \"body\", \"view\": \"side\", \"role\": \"seat\"",
    ),
    (
        Code::FoldedSeatNotStated,
        "implements[0].own_seat_moves.folds",
        "\"name\": \"post\", \"view\": \"side\", \"role\": \"body\"",
        "\"name\": \"post\", \"view\": \"side\", \"role\": \"seat_folded\"",
    ),
    (Code::OwnSeatNotThere, "implements[0].own_seat_moves", "\"own_seat\": true", "\"own_seat_moves\": {\"off\": 1}"),
    (Code::PriceTooFine, "adapters[0].price", "\"price\": 22.5,", "\"price\": 22.505,"),
    (Code::SleeveInsideOut, "adapters[0].sleeve", "\"inner\": 22.2", "\"inner\": 25.4"),
    // Ports.
    (
        Code::HolesCoincide,
        "machines[0].ports[0].kind.bolt_pattern.holes[1]",
        "{\"u\": -250, \"v\": 40, \"diameter\": 14,",
        "{\"u\": -250, \"v\": -40, \"diameter\": 14,",
    ),
    (Code::MoreBoltsThanHoles, "frames[0].ports[0].kind.bolt_pattern.required", "\"required\": 4", "\"required\": 5"),
    (
        Code::ThreadNotRead,
        "frames[0].ports[0].kind.bolt_pattern.thread",
        "\"required\": 4",
        "\"required\": 4, \"thread\": \"W12\"",
    ),
    (
        Code::PoseNotSquare,
        "machines[0].ports[0].pose",
        "\"faces\": \"down\", \"up\": \"front\"",
        "\"faces\": \"down\", \"up\": \"up\"",
    ),
    (
        Code::PoseMissing,
        "implements[0].ports[0]",
        "\"pose\": {\"at\": {\"x\": 0, \"z\": 0}, \"faces\": \"front\", \"up\": \"up\"},",
        "",
    ),
    (
        Code::KindNotOfRole,
        "machines[0].ports[1].kind",
        "\"role\": \"pressure\",\n          \"end\": \"carrier\"",
        "\"role\": \"wiring\",\n          \"end\": \"carrier\"",
    ),
    (
        Code::MachineCarried,
        "machines[0].ports[1].end",
        "\"role\": \"pressure\",\n          \"end\": \"carrier\"",
        "\"role\": \"pressure\",\n          \"end\": \"carried\"",
    ),
    (
        Code::AdapterLeadsNowhere,
        "adapters[0].ports",
        ",\n      \"sleeve\": {\"outer\": 25.4, \"inner\": 22.2, \"count\": 2}",
        "",
    ),
    (Code::MountWithoutPort, "implements[0].mount", "\"mount\": \"rack\"", "\"mount\": \"three_point\""),
    // Equipment.
    (
        Code::EquipmentForNothing,
        "equipment[1].machines",
        "\"kind\": \"belly mower\", \"machines\": [\"small-open\"], \"needs\": [\"base plates\"]",
        "\"kind\": \"belly mower\", \"machines\": [], \"needs\": [\"base plates\"]",
    ),
    (
        Code::EquipmentBlocksOwn,
        "equipment[0].blocks[0]",
        "\"hours_on\": 2,",
        "\"hours_on\": 2, \"blocks\": [\"base plates\"],",
    ),
    (
        Code::EquipmentNamesNothing,
        "equipment[1].hides[0]",
        "\"hides\": [\"left fender\"]",
        "\"hides\": [\"right fender\"]",
    ),
    (
        Code::EquipmentNamesNothing,
        "equipment[1].blocks[0]",
        "\"blocks\": [\"base plates\"]",
        "\"blocks\": [\"base plate\"]",
    ),
    (
        Code::EquipmentPortTaken,
        "equipment[0].ports[0].name",
        "\"name\": \"base plates\", \"role\": \"front_anchor\"",
        "\"name\": \"axle pads\", \"role\": \"front_anchor\"",
    ),
    (
        Code::MachineCarried,
        "equipment[0].ports[0].end",
        "\"role\": \"front_anchor\", \"end\": \"carrier\"",
        "\"role\": \"front_anchor\", \"end\": \"carried\"",
    ),
    (
        Code::FittedNotForMachine,
        "machines[0].fitted[0]",
        "\"kind\": \"loader base\", \"machines\": [\"small-open\"]",
        "\"kind\": \"loader base\", \"machines\": []",
    ),
    (Code::UnknownReference, "machines[0].fitted[0]", "\"fitted\": [\"small-base\"]", "\"fitted\": [\"smal-base\"]"),
    (
        Code::KindOfNoEquipment,
        "frames[0].requires[0]",
        "\"requires\": [\"loader base\"]",
        "\"requires\": [\"loader bse\"]",
    ),
    // Outlines.
    (Code::PathUnreadable, "frames[0].shapes[0].path", "M -420 -40 L 1300 -40", "M -420 -40 K 1300 -40"),
    (Code::PathUnreadable, "machines[0].underside", "M -150 300 L 600 260", "L 600 260"),
    (Code::PathOutOfRange, "frames[0].shapes[0].path", "L 1300 -40 L 1300 60", "L 1e12 -40 L 1300 60"),
    (Code::PathCurved, "machines[0].underside", "L 600 260", "Q 600 260 700 260"),
    (Code::OutlineCrosses, "frames[0].shapes[0].path", "L 1300 60 L -420 60 Z", "L -420 60 L 1300 60 Z"),
    (Code::CentreOutside, "frames[0].centre_of_gravity", "{\"x\": 100, \"z\": 20}", "{\"x\": 100, \"z\": 200}"),
    (
        Code::CarrierWithoutArm,
        "frames[0].shapes[0].carrier",
        "\"role\": \"frame_rail\",",
        "\"role\": \"frame_rail\", \"carrier\": \"boom\",",
    ),
    // Lineage.
    (
        Code::LineageCircle,
        "parts[2].replaced.by",
        "{\"number\": \"FR-20\", \"name\": \"Plate, left\"}",
        "{\"number\": \"FR-20\", \"name\": \"Plate, left\", \"replaced\": {\"by\": [\"FR-19\"], \"serves\": \"both_ways\"}}",
    ),
    (Code::ReplacedByNothing, "parts[1].replaced.by", "\"by\": [\"FR-20\"]", "\"by\": []"),
    // The guide.
    (
        Code::DuplicateSet,
        "guide.sets[1]",
        "\"sets\": [",
        "\"sets\": [{\"machine\": \"small-open\", \"frame\": \"small-frame\", \"seat\": \"own-seat\", \"implement\": \"small-arm\"},",
    ),
    (
        Code::SetNamesNothing,
        "guide.sets[0]",
        "\"sets\": [",
        "\"sets\": [{\"machine\": \"any\", \"frame\": \"without\", \"seat\": \"any\", \"implement\": \"any\"},",
    ),
];

/// Faults that cannot be made by one small replacement, or bring a second problem with them.
static SPECIAL: LazyLock<Vec<(Code, &str, Vec<Problem>)>> = LazyLock::new(special);

fn table(name: &str) -> Sheet {
    Sheet::of(name, name, Vec::new())
}

/// The problems of the good file's tables after a change to the table of sites.
fn sites(change: impl FnOnce(&mut Vec<Sheet>, usize)) -> Vec<Problem> {
    let mut tables = sheets(&read_closely(GOOD).0.expect("the good file is good").0);
    let nth = tables.iter().position(|sheet| sheet.name == "sites").expect("it has sites");
    change(&mut tables, nth);
    read_sheets(&tables).1
}

/// The problems after a cell of the sites' row is changed.
fn site(column: usize, cell: Cell) -> Vec<Problem> {
    sites(|tables, nth| tables[nth].rows[1][column] = cell)
}

fn special() -> Vec<(Code, &'static str, Vec<Problem>)> {
    let holes = (0..101).map(|i| format!("{{\"u\": {i}, \"v\": 0, \"diameter\": 15}},")).collect::<Vec<_>>().concat();
    let many_holes = GOOD.replace("{\"u\": -250, \"v\": -40, \"diameter\": 15},", &holes);
    let no_holes = {
        let start = GOOD.find("\"holes\": [").expect("the good file has holes") + "\"holes\": [".len();
        let end = start + GOOD[start..].find(']').expect("the list ends");
        format!("{}{}", &GOOD[..start], &GOOD[end..])
    };
    let comb = (0..20_000).map(|i| format!(" L {} {i}", i % 2 * 400)).collect::<Vec<_>>().concat();
    let long = GOOD.replace("Invented from end to end.", &"x".repeat(70_000));
    let many = format!("{{\"format\": 1, \"sites\": [{}{{}}]}}", "{},".repeat(1200));
    let contradictory = GOOD.replace(
        "{\"number\": \"FR-20\", \"name\": \"Plate, left\"}",
        "{\"number\": \"FR-20\", \"name\": \"Plate\"}, {\"number\": \"FR-19\", \"name\": \"Plate\", \"replaced\": {\"by\": [\"FR-20\"], \"serves\": \"both_ways\"}}",
    );
    let no_points = GOOD.replace(
        "{\"hook_rack\": {\"side\": \"hook\", \"diameter\": 38.5, \"spread\": 521, \"drop\": 300, \"latch\": 25, \"setback\": 60}}",
        "{\"pins\": {\"form\": \"lug\", \"points\": []}}",
    );
    let misfit = GOOD.replace("\"spread\": 521", "\"spread\": 821");
    let combs = (0..4)
        .map(|i| {
            format!(
                "{{\"name\": \"comb {i}\", \"view\": \"side\", \"role\": \"tool\", \"path\": \"M 0 0{} Z\"}},",
                &comb[..60_000]
            )
        })
        .collect::<Vec<_>>()
        .concat();
    let detailed = GOOD.replace("{\"name\": \"rail\"", &format!("{combs}{{\"name\": \"rail\""));
    let machine = &GOOD[GOOD.find("    {\n      \"id\": \"small-open\"").expect("a machine")
        ..GOOD.find("\n  ],\n  \"frames\"").expect("its end")];
    let twin =
        GOOD.replace(machine, &format!("{machine},{}", machine.replace("\"id\": \"small-open\"", "\"id\": \"twin\"")));
    let more = (0..4).map(|i| {
        format!("{{\"id\": \"f{i}\", \"label\": \"F{i}\", \"mass\": {}}},", if i == 3 { 9600 } else { 90 + i })
    });
    let frames = GOOD.replace("\"frames\": [", &format!("\"frames\": [{}", more.collect::<Vec<_>>().concat()));
    let off = ["-250", "250"].iter().fold(GOOD.to_owned(), |text, u| {
        text.replace(
            &format!("\"u\": {u}, \"v\": -40, \"diameter\": 14"),
            &format!("\"u\": {u}, \"v\": 860, \"diameter\": 14"),
        )
        .replace(
            &format!("\"u\": {u}, \"v\": 40, \"diameter\": 14"),
            &format!("\"u\": {u}, \"v\": 940, \"diameter\": 14"),
        )
    });
    let pair = decode::read::<[f64; 2]>("[1]").expect_err("one is too few");
    let filled = decode::read::<Filled<f64>>("[]").expect_err("none is too few");
    vec![
        (Code::WrongCount, "", pair),
        (Code::EmptyList, "", filled),
        (Code::NotText, "", read_bytes(b"{\"format\": \xff}").problems),
        (Code::TooLarge, "", read(&" ".repeat(fitup_catalogue::tree::GREATEST_SIZE + 1)).problems),
        (Code::TooManyValues, "", read(&format!("[{}0]", "0,".repeat(fitup_catalogue::tree::GREATEST_COUNT))).problems),
        (Code::TooDeep, "", read(&"[".repeat(1 << 20)).problems),
        (Code::MoreProblems, "", read(&many).problems),
        (Code::TextTooLong, "notice", read(&long).problems),
        (Code::NoHoles, "machines[0].ports[0].kind.bolt_pattern.holes", read(&no_holes).problems),
        (Code::TooManyHoles, "frames[0].ports[0].kind.bolt_pattern.holes", read(&many_holes).problems),
        (Code::NoPoints, "implements[0].ports[0].kind.pins.points", read(&no_points).problems),
        (Code::LineageContradictory, "parts[3].replaced.serves", read(&contradictory).problems),
        (Code::OutlineTooDetailed, "frames[0].shapes[3].path", read(&detailed).problems),
        (Code::MissingTable, "", read_sheets(&[table("machine")]).1),
        (Code::UnknownTable, "", read_sheets(&[table("machine")]).1),
        (Code::FutureDate, "guide.date", read_closely(&GOOD.replace("2014-02-01", "2914-02-01")).1),
        (Code::LongLabel, "machines[0].label", read_closely(&GOOD.replace("Small, open", &"x".repeat(121))).1),
        (Code::SameLabel, "machines[1].label", read_closely(&twin).1),
        (Code::FarFromItsKind, "frames[3].mass", read_closely(&frames).1),
        (Code::HolesOffReference, "machines[0].ports[0].kind.bolt_pattern.holes", read_closely(&off).1),
        (Code::BoltsDisagree, "guide.sets[0]", read_closely(&GOOD.replacen("\"bolt\": 14", "\"bolt\": 12", 1)).1),
        (
            Code::ListedBlocked,
            "guide.sets[0]",
            read_closely(&GOOD.replace("\"rated\": 1500, \"tyre", "\"rated\": 500, \"tyre")).1,
        ),
        (Code::DuplicateTable, "", sites(|tables, nth| tables.push(tables[nth].clone()))),
        (Code::UnknownColumn, "", sites(|tables, nth| tables[nth].rows[0][2] = Cell::Text("gate".into()))),
        (Code::NoHeading, "", sites(|tables, nth| tables[nth].rows[1].push(Cell::Text("ask Tom".into())))),
        (Code::UnitInHeading, "", sites(|tables, nth| tables[nth].rows[0][2] = Cell::Text("gate_width [in]".into()))),
        (Code::MergedCells, "", sites(|tables, nth| tables[nth].merged.push(Merged { first: (0, 2), last: (0, 3) }))),
        (Code::HiddenRows, "", sites(|tables, nth| tables[nth].hidden.push(2))),
        (Code::CellError, "", site(2, Cell::Error("#REF!".into()))),
        (Code::FormulaWithoutValue, "", site(2, Cell::Formula)),
        (Code::DateInstead, "", site(1, Cell::Date("2025-03-01".into()))),
        (Code::BlanksAround, "", site(0, Cell::Text("churchyard ".into()))),
        (
            Code::CommaInList,
            "",
            sites(|tables, _| {
                let frames = tables.iter_mut().find(|sheet| sheet.name == "frames").expect("it has frames");
                let at = frames.rows[0].iter().position(|cell| cell.text() == "requires").expect("the column");
                frames.rows[1][at] = Cell::Text("loader base, belly mower".into());
            }),
        ),
        (Code::ListedCannotMate, "guide.sets[0]", read_closely(&misfit).1),
    ]
}

fn broken(from: &str, to: &str) -> String {
    assert!(GOOD.contains(from), "the good file has {from:?}");
    let text = GOOD.replacen(from, to, 1);
    // The one case that turns the file into a list has to close it.
    if text.starts_with('[') { text + "]" } else { text }
}

#[test]
fn every_fault_is_found_at_its_place_and_brings_no_other() {
    let mut wrong = Vec::new();
    for &(code, path, from, to) in CASES {
        let text = broken(from, to);
        let (read, problems) = read_closely(&text);
        let found: Vec<_> = problems.iter().map(|p| (p.code, p.path.as_str())).collect();
        if !found.contains(&(code, path)) {
            wrong.push(format!("{code:?} at {path:?} for {to:?}: {found:?}"));
        }
        let usable = problems.iter().all(|p| p.code.severity() == Severity::Warning);
        assert_eq!(read.is_some(), usable, "{to:?}");
        for problem in &problems {
            let Some(Position::Text { line, column }) = problem.position else { panic!("{problem:?} has a position") };
            let text_line = text.lines().nth(line as usize - 1).unwrap_or_default();
            assert!(column as usize <= text_line.chars().count() + 1, "{problem:?}");
        }
        // A changed id or number breaks what refers to it: the one way a fault brings others.
        let renames = [
            Code::DuplicateId,
            Code::BadId,
            Code::ReservedId,
            Code::DuplicatePart,
            Code::UnknownField,
            Code::EquipmentPortTaken,
            Code::FittedNotForMachine,
        ];
        if !renames.contains(&code) {
            let rest: Vec<_> = found.iter().filter(|&&it| it != (code, path)).collect();
            if !rest.is_empty() {
                wrong.push(format!("{code:?} for {to:?} brings {rest:?}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn every_special_fault_is_found_at_its_place() {
    for (code, path, problems) in SPECIAL.iter() {
        let found: Vec<_> = problems.iter().take(8).map(|p| (p.code, p.path.as_str())).collect();
        assert!(problems.iter().any(|p| p.code == *code && p.path == *path), "{code:?} at {path:?}: {found:?}");
    }
}

#[test]
fn every_code_is_reached() {
    let mut reached: BTreeSet<Code> = SPECIAL.iter().map(|(code, ..)| *code).collect();
    reached.extend(CASES.iter().map(|case| case.0));
    let missed: Vec<_> = Code::ALL.iter().filter(|code| !reached.contains(code)).collect();
    assert!(missed.is_empty(), "{missed:?}");
}

#[test]
fn a_problem_carries_the_arguments_of_its_code() {
    let found = CASES.iter().flat_map(|&(_, _, from, to)| read_closely(&broken(from, to)).1);
    for problem in found.chain(SPECIAL.iter().flat_map(|(.., problems)| problems.clone())) {
        let mut carried: Vec<&str> = problem.args.iter().map(|(name, _)| *name).collect();
        let mut named = problem.code.args().to_vec();
        if problem.arg("suggestion").is_none() {
            named.retain(|name| *name != "suggestion");
        }
        carried.sort_unstable();
        named.sort_unstable();
        assert_eq!(carried, named, "{problem:?}");
        let sorts = match problem.code {
            Code::WrongType => ["found", "expected"].map(|name| problem.arg(name)),
            Code::Syntax => [problem.arg("expected"), None],
            _ => continue,
        };
        assert!(sorts.into_iter().flatten().all(|sort| SORTS.contains(&sort)), "{problem:?}");
    }
}

/// Source: RFC 8259, sections 2 to 5, on which sign may follow which.
#[test]
fn each_sign_out_of_place_says_what_belongs_there() {
    for (text, column, found, expected) in [
        ("{} {}", 4, "{", "end-of-file"),
        ("", 1, "end-of-file", "value"),
        ("]", 1, "]", "value"),
        ("{1}", 2, "1", "field-name"),
        ("{\"a\" 1}", 6, "1", "colon"),
        ("{\"a\": 1 \"b\"}", 9, "b", "comma-or-close-brace"),
        ("[1 2]", 4, "2", "comma-or-close-bracket"),
        ("[1,", 4, "end-of-file", "value"),
    ] {
        let problems = read(text).problems;
        let [problem] = problems.as_slice() else { panic!("{text}: {problems:?}") };
        assert_eq!((problem.code, problem.position.clone()), (Code::Syntax, Some(Position::Text { line: 1, column })));
        assert_eq!((problem.arg("found"), problem.arg("expected")), (Some(found), Some(expected)), "{text}");
        assert!(SORTS.contains(&expected));
    }
}

#[test]
fn a_position_points_at_the_value() {
    let text = broken("\"mass\": 780", "\"mass\": 0");
    let problem = &read(&text).problems[0];
    let Some(Position::Text { line, column }) = problem.position else { panic!("a position") };
    let text_line = text.lines().nth(line as usize - 1).unwrap();
    assert!(text_line[column as usize - 1..].starts_with("0,"));
    assert_eq!(problem.row, "small-open");
    assert_eq!((problem.table(), problem.field()), ("machines", "mass"));
}

#[test]
fn all_problems_come_in_one_run_and_in_the_order_of_the_file() {
    let text = GOOD
        .replace("\"length\": \"mm\"", "\"length\": \"mil\"")
        .replace("\"mass\": 780", "\"mass\": \"heavy\"")
        .replace("\"station\": \"open\",", "\"station\": \"opne\", \"colour\": \"green\",")
        .replace("\"diameter\": 14, \"kind\": \"tapped\"", "\"diameter\": -14, \"kind\": \"taped\"")
        .replace("\"frame\": \"small-frame\"", "\"frame\": \"small-fram\"")
        .replace("\"greatest\": 70", "\"greatest\": -70");
    let problems = read(&text).problems;
    let found: Vec<_> = problems.iter().map(|p| (p.code.as_str(), p.path.as_str())).collect();
    assert_eq!(
        found,
        [
            ("unknown-unit", "units.length"),
            ("not-number", "machines[0].mass"),
            ("unknown-word", "machines[0].station"),
            ("unknown-field", "machines[0].colour"),
            ("not-positive", "machines[0].ports[0].kind.bolt_pattern.holes[0].diameter"),
            ("unknown-word", "machines[0].ports[0].kind.bolt_pattern.holes[0].kind"),
            ("not-positive", "machines[0].ports[0].kind.bolt_pattern.holes[1].diameter"),
            ("unknown-word", "machines[0].ports[0].kind.bolt_pattern.holes[1].kind"),
            ("not-positive", "machines[0].ports[0].kind.bolt_pattern.holes[2].diameter"),
            ("unknown-word", "machines[0].ports[0].kind.bolt_pattern.holes[2].kind"),
            ("not-positive", "machines[0].ports[0].kind.bolt_pattern.holes[3].diameter"),
            ("unknown-word", "machines[0].ports[0].kind.bolt_pattern.holes[3].kind"),
            ("range-upside-down", "implements[0].arm.boom.greatest"),
            ("unknown-reference", "guide.sets[0].frame"),
        ]
    );
    let suggestions: Vec<_> = problems.iter().filter_map(|p| p.arg("suggestion")).collect();
    assert_eq!(suggestions, ["open", "tapped", "tapped", "tapped", "tapped", "small-frame"]);
}
