//! What is said of the units on the command line: measured, read off them, looked for, serial numbers.

use clap::Args;
use fitup_catalogue::{BuildFile, LookedFile, MeasuredFile, NumberReadFile, ToolFile};
use fitup_core::fit::measurable;
use fitup_core::item::{Catalogue, ItemRef, Port};
use fitup_core::quantity::Tool;
use fitup_words::{Misread, Words};

/// What is said of the units.
#[derive(Debug, Clone, Default, Args)]
pub struct SaidArguments {
    /// A dimension measured on a unit, such as `rack/diameter=40.2 ± 0.1 caliper`; of several readings `;` between them. The
    /// tool is `caliper`, `tape` or `photograph`, a tape if none is named. The item's id before the port only where two items have such a
    /// port. May be given more than once.
    #[arg(long = "measured", value_name = "[ITEM/]PORT/DIMENSION=LENGTH")]
    pub measured: Vec<String>,
    /// A part number read off the piece at a port, such as `axle plate=AX-1104`; of several numbers `+` between them. May be
    /// given more than once.
    #[arg(long = "read", value_name = "[ITEM/]PORT=NUMBER")]
    pub read: Vec<String>,
    /// Who read the numbers.
    #[arg(long, value_name = "TEXT", requires = "read")]
    pub read_by: Option<String>,
    /// When they were read.
    #[arg(long, value_name = "TEXT", requires = "read")]
    pub read_when: Option<String>,
    /// A port or hole that was looked for and is there, such as `axle plate/hole-3`. May be given more than once.
    #[arg(long = "there", value_name = "[ITEM/]PORT[/HOLE]")]
    pub there: Vec<String>,
    /// A port or hole that was looked for and is not there. May be given more than once.
    #[arg(long = "not-there", value_name = "[ITEM/]PORT[/HOLE]")]
    pub not_there: Vec<String>,
    /// The serial number of a unit, such as `hedge-tractor=120`. May be given more than once.
    #[arg(long = "serial", value_name = "ITEM=NUMBER")]
    pub serials: Vec<String>,
}

/// Adds what is said to a build that names its items.
///
/// # Errors
/// The first that names no item, port or dimension of the build, or no value: what it is, and what there is instead.
pub fn say(file: &mut BuildFile, said: &SaidArguments, catalogue: &Catalogue, words: &Words) -> Result<(), String> {
    let units = Units { catalogue, items: items(file, catalogue) };
    for text in &said.measured {
        file.measured.push(units.measured(text, words).map_err(|why| format!("--measured \"{text}\": {why}"))?);
    }
    for text in &said.read {
        let mut read = units.number(text).map_err(|why| format!("--read \"{text}\": {why}"))?;
        read.by = said.read_by.clone().unwrap_or_default();
        read.when = said.read_when.clone().unwrap_or_default();
        file.numbers_read.push(read);
    }
    for (option, texts, there) in [("--there", &said.there, true), ("--not-there", &said.not_there, false)] {
        for text in texts {
            file.looked.push(units.looked(text, there).map_err(|why| format!("{option} \"{text}\": {why}"))?);
        }
    }
    for text in &said.serials {
        let (item, number) = serial(text).ok_or_else(|| {
            format!("--serial \"{text}\": write the item's id, = and a whole number, such as hedge-tractor=120")
        })?;
        file.serials.insert(item, number);
    }
    Ok(())
}

fn serial(text: &str) -> Option<(String, u64)> {
    let (item, number) = text.split_once('=')?;
    Some((item.trim().to_owned(), number.trim().parse().ok()?))
}

/// The items that a build names, as far as the catalogue has them.
fn items(file: &BuildFile, catalogue: &Catalogue) -> Vec<ItemRef> {
    let ids = [&file.machine, &file.frame, &file.seat, &file.implement].into_iter().flatten().chain(&file.adapters);
    ids.filter_map(|id| catalogue.find(id)).collect()
}

struct Units<'a> {
    catalogue: &'a Catalogue,
    items: Vec<ItemRef>,
}

impl Units<'_> {
    fn id(&self, item: ItemRef) -> &str {
        &self.catalogue.body(item).id
    }

    /// The port of `[ITEM/]PORT[/REST]`, and the rest.
    fn port<'t>(&self, text: &'t str) -> Result<(ItemRef, &Port, &'t str), String> {
        let text = text.trim();
        let named = text.split_once('/').and_then(|(id, rest)| Some((self.catalogue.find(id.trim())?, rest)));
        let (items, path) = match named {
            Some((item, rest)) => (vec![item], rest),
            None => (self.items.clone(), text),
        };
        let (port, rest) = path.split_once('/').unwrap_or((path, ""));
        let (port, rest) = (port.trim(), rest.trim());
        let of = |&item: &ItemRef| self.catalogue.body(item).ports.iter().map(move |port| (item, port));
        let all: Vec<(ItemRef, &Port)> = items.iter().flat_map(of).collect();
        let found: Vec<&(ItemRef, &Port)> = all.iter().filter(|(_, known)| known.name == port).collect();
        match found.as_slice() {
            [(item, port)] => Ok((*item, port, rest)),
            [] => {
                let names: Vec<String> =
                    all.iter().map(|(item, port)| format!("{}/{}", self.id(*item), port.name)).collect();
                let there = if names.is_empty() { "name the build's items first".to_owned() } else { names.join(", ") };
                Err(format!("there is no port \"{port}\"; there are: {there}"))
            }
            several => {
                let names: Vec<String> = several.iter().map(|(item, _)| format!("{}/{port}", self.id(*item))).collect();
                Err(format!("more than one item has a port \"{port}\"; say which: {}", names.join(", ")))
            }
        }
    }

    fn measured(&self, text: &str, words: &Words) -> Result<MeasuredFile, String> {
        let (at, value) = text.split_once('=').ok_or("write PORT/DIMENSION=LENGTH, such as rack/diameter=40.2 mm")?;
        let (item, port, dimension) = self.port(at)?;
        let names = measurable(self.catalogue.body(item), port);
        if !names.iter().any(|name| name == dimension) {
            return Err(format!("\"{}\" has no dimension \"{dimension}\"; it has: {}", port.name, names.join(", ")));
        }
        let (value, tool) = with_tool(value.trim());
        let reader = words.reader();
        let told = |why: Misread| words.misread(value, why);
        let is_size =
            !["-u", "-v", "at-x", "at-z", "-height", "-across"].iter().any(|place| dimension.ends_with(place));
        let readings =
            value.split(';').map(|one| if is_size { reader.typed_size(one) } else { reader.typed_length(one) });
        let readings: Vec<_> = readings.collect::<Result<_, _>>().map_err(told)?;
        let mm: Vec<f64> = readings.iter().map(|reading| reading.value.mm()).collect();
        let (least, most) =
            (mm.iter().copied().fold(f64::INFINITY, f64::min), mm.iter().copied().fold(f64::MIN, f64::max));
        let off = readings
            .iter()
            .filter_map(|reading| reading.plus_minus)
            .map(fitup_core::quantity::Length::mm)
            .reduce(f64::max);
        Ok(MeasuredFile {
            item: self.id(item).to_owned(),
            port: port.name.clone(),
            dimension: dimension.to_owned(),
            mm: f64::midpoint(least, most),
            tool: match tool {
                Tool::Caliper => ToolFile::Caliper,
                Tool::Tape => ToolFile::Tape,
                Tool::Photograph => ToolFile::Photograph,
            },
            plus_minus_mm: off,
            readings_mm: if mm.len() > 1 { mm } else { Vec::new() },
            note: String::new(),
        })
    }

    fn number(&self, text: &str) -> Result<NumberReadFile, String> {
        let how = "write PORT=NUMBER, such as axle plate=AX-1104";
        let (at, numbers) = text.split_once('=').ok_or(how)?;
        let (item, port, rest) = self.port(at)?;
        let parts: Vec<String> = numbers.split('+').map(|number| number.trim().to_owned()).collect();
        if !rest.is_empty() || parts.iter().any(String::is_empty) {
            return Err(how.to_owned());
        }
        let (item, port) = (self.id(item).to_owned(), port.name.clone());
        Ok(NumberReadFile { item, port, parts, by: String::new(), when: String::new() })
    }

    fn looked(&self, text: &str, there: bool) -> Result<LookedFile, String> {
        let (item, port, hole) = self.port(text)?;
        let holes = port.kind.pattern().map_or(0, |pattern| pattern.holes.len());
        let number = hole.strip_prefix("hole-").and_then(|number| number.parse::<usize>().ok());
        let what = match number {
            _ if hole.is_empty() => port.name.clone(),
            Some(number) if (1..=holes).contains(&number) => format!("{}/{hole}", port.name),
            _ => return Err(format!("\"{}\" has no \"{hole}\"; its holes are hole-1 to hole-{holes}", port.name)),
        };
        Ok(LookedFile { item: self.id(item).to_owned(), what, there })
    }
}

/// The tool named behind a value; of none the coarser one is taken.
pub(crate) fn with_tool(value: &str) -> (&str, Tool) {
    for (name, tool) in [("caliper", Tool::Caliper), ("tape", Tool::Tape), ("photograph", Tool::Photograph)] {
        if let Some(before) = value.strip_suffix(name) {
            return (before.trim_end_matches([' ', ',']), tool);
        }
    }
    (value, Tool::Tape)
}
