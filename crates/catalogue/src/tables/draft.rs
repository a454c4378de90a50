//! Values on their way from cells into the tree.

use bumpalo::Bump;

use crate::tree::{Entry, Kind, Node};

/// A value on its way into the tree.
#[derive(Debug)]
pub struct Draft<'t> {
    /// The place of the value.
    pub at: u32,
    /// What it is so far.
    pub held: Held<'t>,
}

/// What a value is so far.
#[derive(Debug)]
pub enum Held<'t> {
    /// A single value.
    Leaf(Kind<'t>),
    /// A list.
    List(Vec<Draft<'t>>),
    /// A record.
    Record(Vec<(String, Draft<'t>)>),
}

impl<'t> Draft<'t> {
    /// A record without fields.
    pub const fn record(at: u32) -> Self {
        Self { at, held: Held::Record(Vec::new()) }
    }

    /// The value of a field, made if it is not there yet.
    pub fn field(&mut self, name: &str, at: u32) -> &mut Self {
        if !matches!(self.held, Held::Record(_)) {
            self.held = Held::Record(Vec::new());
        }
        let Held::Record(fields) = &mut self.held else { unreachable!("it was made a record") };
        let index = fields.iter().position(|(field, _)| field == name).unwrap_or_else(|| {
            fields.push((name.to_owned(), Self::record(at)));
            fields.len() - 1
        });
        &mut fields[index].1
    }

    /// The value at the end of a path, made if it is not there yet.
    pub fn along(&mut self, path: &[String], at: u32) -> &mut Self {
        path.iter().fold(self, |draft, name| draft.field(name, at))
    }

    /// The value at the end of a path, if it is there.
    pub fn existing(&mut self, path: &[String]) -> Option<&mut Self> {
        path.iter().try_fold(self, |draft, name| match &mut draft.held {
            Held::Record(fields) => fields.iter_mut().find(|(field, _)| field == name).map(|(_, value)| value),
            _ => None,
        })
    }

    /// Puts a member at the end of a list.
    pub fn push(&mut self, member: Self) {
        if let Held::List(list) = &mut self.held {
            list.push(member);
        } else {
            self.held = Held::List(vec![member]);
        }
    }

    /// The node of a tree.
    pub fn frozen(self, memory: &'t Bump) -> Node<'t> {
        let kind = match self.held {
            Held::Leaf(kind) => kind,
            Held::List(list) => {
                let nodes: Vec<Node> = list.into_iter().map(|draft| draft.frozen(memory)).collect();
                Kind::List(memory.alloc_slice_copy(&nodes))
            }
            Held::Record(fields) => {
                let entry = |(name, value): (String, Self)| {
                    let value = value.frozen(memory);
                    Entry { at: value.at, name: memory.alloc_str(&name), value }
                };
                let entries: Vec<Entry> = fields.into_iter().map(entry).collect();
                Kind::Record(memory.alloc_slice_copy(&entries))
            }
        };
        Node { at: self.at, kind }
    }

    /// The text of a field, if it has one.
    pub fn leaf_text(&self, field: &str) -> String {
        let Held::Record(fields) = &self.held else { return String::new() };
        let value = fields.iter().find(|(name, _)| name == field).map(|(_, value)| &value.held);
        if let Some(Held::Leaf(Kind::Text(text))) = value { (*text).to_owned() } else { String::new() }
    }

    /// Whether something is at the end of a path.
    pub fn has(&mut self, path: &[&str]) -> bool {
        let path: Vec<String> = path.iter().map(|field| (*field).to_owned()).collect();
        self.existing(&path).is_some()
    }
}

/// A stated number without half range and source is the number alone.
pub fn shorten_stated(record: &mut Draft<'_>, path: &[String]) {
    let Some(stated) = record.existing(path) else { return };
    if let Held::Record(fields) = &mut stated.held
        && fields.len() == 1
        && let Some((name, value)) = fields.pop()
    {
        if name == "value" {
            *stated = value;
        } else {
            fields.push((name, value));
        }
    }
}
