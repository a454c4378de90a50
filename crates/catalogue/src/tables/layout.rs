//! Which tables and columns there are: worked out from the schema of the wire types.

use serde_json::Value;

use crate::schema::schema;

/// What the cells of a column hold.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sort {
    /// Text.
    Text,
    /// A number.
    Number,
    /// A number that columns beside it may state half range and source of.
    Stated,
    /// Yes or no.
    Flag,
    /// One of some words.
    Word,
    /// A word, with what goes with it in columns beside it.
    Choice,
    /// Several texts or words.
    Texts,
    /// Several numbers.
    Numbers,
}

/// A column.
#[derive(Debug, Clone)]
pub struct Column {
    /// The way to the value from the row's record.
    pub path: Vec<String>,
    /// What its cells hold.
    pub sort: Sort,
    /// Whether every row needs it.
    pub required: bool,
    /// Of a choice, the words that a record goes with.
    pub with_record: Vec<String>,
    /// The words that may stand there, if they are counted.
    pub words: Vec<String>,
    /// Of a number, the quantity whose unit the header states: `length`.
    pub quantity: Option<String>,
    /// What it means.
    pub meaning: String,
}

impl Column {
    /// The heading.
    pub fn heading(&self) -> String {
        self.path.join(".")
    }
}

/// Where the rows of a table belong in the file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// One row for the file itself.
    Top,
    /// A list of the file.
    List(&'static [&'static str]),
    /// A list of each item, named by the first column.
    OfItem(&'static str),
    /// A list of a port, named by item and port in the first two columns: one of these.
    OfPort(&'static [&'static [&'static str]]),
}

/// A table.
#[derive(Debug, Clone)]
pub struct Table {
    /// Name.
    pub name: &'static str,
    /// Where its rows belong.
    pub place: Place,
    /// Headings of the columns that name the row above.
    pub keys: &'static [&'static str],
    /// The other columns.
    pub columns: Vec<Column>,
}

const HOLES: &[&[&str]] = &[&["kind", "bolt_pattern", "holes"], &["kind", "seat_base", "pattern", "holes"]];

const POINTS: &[&[&str]] = &[&["kind", "pins", "points"]];

/// The tables of items.
pub const ITEMS: [&str; 6] = ["machines", "frames", "seats", "implements", "adapters", "equipment"];

/// Name, record and place of every table.
const TABLES: [(&str, &str, Place); 16] = [
    ("catalogue", "", Place::Top),
    ("machines", "Machine", Place::List(&["machines"])),
    ("frames", "Frame", Place::List(&["frames"])),
    ("seats", "Seat", Place::List(&["seats"])),
    ("implements", "Implement", Place::List(&["implements"])),
    ("adapters", "Adapter", Place::List(&["adapters"])),
    ("equipment", "Equipment", Place::List(&["equipment"])),
    ("ports", "Port", Place::OfItem("ports")),
    ("holes", "Hole", Place::OfPort(HOLES)),
    ("pin_points", "PinPoint", Place::OfPort(POINTS)),
    ("shapes", "Shape", Place::OfItem("shapes")),
    ("parts", "Part", Place::List(&["parts"])),
    ("parts_lists", "PartsListRow", Place::List(&["parts_lists"])),
    ("guide", "GuideSet", Place::List(&["guide", "sets"])),
    ("trailers", "Trailer", Place::List(&["trailers"])),
    ("sites", "Site", Place::List(&["sites"])),
];

/// Every table, those that others lean on first.
pub fn tables() -> Vec<Table> {
    let schema = schema();
    let walk = Walk { definitions: &schema["$defs"] };
    let table = |(name, record, place): (&'static str, &str, Place)| {
        let record = if record.is_empty() { &schema } else { &schema["$defs"][record] };
        let mut columns = Vec::new();
        walk.record(record, &[], true, &mut columns);
        // The format's number is not the author's to choose.
        columns.retain(|column| column.path != ["format"]);
        let keys: &[&str] = match place {
            Place::OfItem(_) => &["item"],
            Place::OfPort(_) => &["item", "port"],
            Place::Top | Place::List(_) => &[],
        };
        Table { name, place, keys, columns }
    };
    TABLES.into_iter().map(table).collect()
}

struct Walk<'s> {
    definitions: &'s Value,
}

impl<'s> Walk<'s> {
    /// A schema without its references and without `null`.
    fn plain(&self, schema: &'s Value) -> &'s Value {
        if let Some(name) = schema["$ref"].as_str().and_then(|path| path.rsplit('/').next()) {
            return self.plain(&self.definitions[name]);
        }
        match schema["anyOf"].as_array().map(Vec::as_slice) {
            Some([first, second]) if second["type"] == "null" => self.plain(first),
            _ => schema,
        }
    }

    fn record(&self, record: &'s Value, above: &[String], needed: bool, columns: &mut Vec<Column>) {
        let required: Vec<&str> =
            record["required"].as_array().into_iter().flatten().filter_map(Value::as_str).collect();
        for (name, field) in record["properties"].as_object().into_iter().flatten() {
            let mut path = above.to_vec();
            path.push(name.clone());
            let meaning = field["description"].as_str().unwrap_or_default();
            self.value(field, path, needed && required.contains(&name.as_str()), meaning, columns);
        }
    }

    fn value(&self, field: &'s Value, path: Vec<String>, required: bool, meaning: &str, columns: &mut Vec<Column>) {
        let plain = self.plain(field);
        let (quantity, words) = (quantity(field), words(plain));
        let mut push = |path: Vec<String>, sort, with_record| {
            let (quantity, words) = (quantity.clone(), words.clone());
            columns.push(Column { path, sort, required, with_record, words, quantity, meaning: meaning.to_owned() });
        };
        if let Some(long) = plain["anyOf"].as_array().and_then(|forms| forms.get(1)) {
            push(path.clone(), Sort::Stated, Vec::new());
            let quantity = quantity.clone();
            let long = self.plain(long);
            for beside in ["plus_minus", "source"] {
                let field = &long["properties"][beside];
                let path = path.iter().cloned().chain([beside.to_owned()]).collect();
                self.value(field, path, false, field["description"].as_str().unwrap_or_default(), columns);
                if let Some(column) = columns.last_mut().filter(|_| beside == "plus_minus") {
                    column.quantity.clone_from(&quantity);
                }
            }
        } else if let Some(options) = plain["oneOf"].as_array() {
            let contents = || options.iter().filter_map(|option| option["properties"].as_object()).flatten();
            let is_record = |content: &'s Value| self.plain(content)["properties"].is_object();
            let with_record =
                contents().filter(|(_, content)| is_record(content)).map(|(word, _)| word.clone()).collect();
            let sort = if contents().next().is_some() { Sort::Choice } else { Sort::Word };
            push(path.clone(), sort, with_record);
            for option in options {
                for (word, content) in option["properties"].as_object().into_iter().flatten() {
                    let path: Vec<String> = path.iter().cloned().chain([word.clone()]).collect();
                    if is_record(content) {
                        self.record(self.plain(content), &path, false, columns);
                    } else {
                        let meaning = option["description"].as_str().unwrap_or_default();
                        self.value(content, path, false, meaning, columns);
                    }
                }
            }
        } else if plain["properties"].is_object() {
            self.record(plain, &path, required, columns);
        } else if plain["type"] == "array" {
            let member = self.plain(&plain["items"]);
            // Lists of records are tables of their own.
            if !member["properties"].is_object() {
                let is_number = member["type"] == "number" || member["type"] == "integer";
                push(path, if is_number { Sort::Numbers } else { Sort::Texts }, Vec::new());
                if let Some(column) = columns.last_mut() {
                    column.words = self::words(member);
                }
            }
        } else {
            let kinds = &plain["type"];
            let is =
                |kind: &str| kinds == kind || kinds.as_array().is_some_and(|all| all.iter().any(|one| one == kind));
            let sort = if is("boolean") {
                Sort::Flag
            } else if is("number") || is("integer") {
                Sort::Number
            } else {
                Sort::Text
            };
            push(path, sort, Vec::new());
        }
    }
}

/// The quantity that a schema is of: the name of the type that it refers to, in small letters.
fn quantity(field: &Value) -> Option<String> {
    if let Some(name) = field["$ref"].as_str().and_then(|path| path.rsplit('/').next()) {
        let name = name.strip_prefix("Stated").filter(|name| !name.is_empty() && *name != "Number").unwrap_or(name);
        return Some(name.to_lowercase());
    }
    field["anyOf"].as_array().and_then(|forms| forms.first()).and_then(quantity)
}

/// The words of a schema that has some.
fn words(plain: &Value) -> Vec<String> {
    let word = |option: &Value| {
        let content = option["properties"].as_object().and_then(|fields| fields.keys().next()).map(String::as_str);
        option["const"].as_str().or(content).map(str::to_owned)
    };
    plain["oneOf"].as_array().into_iter().flatten().filter_map(word).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sort(table: &str, heading: &str) -> Option<Sort> {
        let tables = tables();
        let table = tables.iter().find(|one| one.name == table)?;
        table.columns.iter().find(|column| column.heading() == heading).map(|column| column.sort)
    }

    #[test]
    fn columns_follow_the_records() {
        assert_eq!(sort("catalogue", "units.length"), Some(Sort::Text));
        assert_eq!(sort("catalogue", "guide.date"), Some(Sort::Text));
        assert_eq!(sort("catalogue", "format"), None);
        assert_eq!(sort("machines", "wheelbase"), Some(Sort::Stated));
        assert_eq!(sort("machines", "wheelbase.source"), Some(Sort::Word));
        assert_eq!(sort("machines", "stock"), Some(Sort::Choice));
        assert_eq!(sort("machines", "stock.used"), Some(Sort::Number));
        assert_eq!(sort("machines", "operator_seat.turns"), Some(Sort::Flag));
        assert_eq!(sort("machines", "hydraulics.power_beyond"), Some(Sort::Flag));
        assert_eq!(sort("machines", "front_axle.oscillating.pivot_height"), Some(Sort::Number));
        assert_eq!(sort("machines", "ports"), None);
        assert_eq!(sort("frames", "stations"), Some(Sort::Texts));
        assert_eq!(sort("ports", "kind"), Some(Sort::Choice));
        assert_eq!(sort("ports", "kind.power_take_off.speeds"), Some(Sort::Numbers));
        assert_eq!(sort("ports", "kind.seat_base.pattern.bolt"), Some(Sort::Number));
        assert_eq!(sort("holes", "slot.direction"), Some(Sort::Number));
        assert_eq!(sort("pin_points", "diameter.plus_minus"), Some(Sort::Number));
        assert_eq!(sort("parts", "replaced.by"), Some(Sort::Texts));
        assert_eq!(sort("trailers", "ramp.angle"), Some(Sort::Number));
    }

    #[test]
    fn columns_know_their_words_and_quantities() {
        let tables = tables();
        let column = |table: &str, heading: &str| {
            let table = tables.iter().find(|one| one.name == table).unwrap();
            table.columns.iter().find(|column| column.heading() == heading).unwrap()
        };
        for (table, heading, quantity) in [
            ("machines", "rear.track", "length"),
            ("machines", "wheelbase", "length"),
            ("machines", "wheelbase.plus_minus", "length"),
            ("machines", "mass", "mass"),
            ("machines", "price", "money"),
            ("machines", "hydraulics.relief", "pressure"),
            ("trailers", "ramp.angle", "angle"),
            ("holes", "u", "length"),
        ] {
            assert_eq!(column(table, heading).quantity.as_deref(), Some(quantity), "{heading}");
        }
        assert_eq!(column("machines", "years.first").quantity, None);
        assert_eq!(column("machines", "station").words, ["open", "cab"]);
        assert_eq!(column("machines", "stock").words, ["new", "used", "discontinued"]);
        assert_eq!(column("frames", "stations").words, ["open", "cab"]);
        assert_eq!(column("machines", "label").words, Vec::<String>::new());
    }
}
