//! Parts lists compared, as plain data.

use fitup_catalogue::ListFault;
use fitup_core::item::PartsListRow;
use fitup_core::search::{AssemblyCompared, LineCompared, ListsCompared};
use serde::Serialize;

use crate::Words;

/// Two lists compared.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ListsReport {
    /// What could not be read of the first list.
    pub faults_first: Vec<ListFaultReport>,
    /// What could not be read of the second list.
    pub faults_second: Vec<ListFaultReport>,
    /// The assemblies, those that bear a joint first.
    pub assemblies: Vec<AssemblyReport>,
}

/// What is wrong with a line of a list.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ListFaultReport {
    /// The line, counted from 1.
    pub line: usize,
    /// `no-number`, `quantity`, `doubled`, `no-list`, `too-long`, `not-text`.
    pub code: &'static str,
    /// In a sentence.
    pub text: String,
}

/// An assembly.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct AssemblyReport {
    /// Its heading.
    pub heading: String,
    /// Whether ports go by it.
    pub bears_joint: bool,
    /// `same`, `replaced-both-ways`, `second-serves-for-first`, `first-serves-for-second`, `quantities-differ`,
    /// `hardware-differs`, `differs`, `only-first`, `only-second`.
    pub sameness: &'static str,
    /// In a sentence, and what follows for a joint.
    pub text: Vec<String>,
    /// The lines, those that differ first.
    pub lines: Vec<ListLineReport>,
}

/// A line.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct ListLineReport {
    /// In the first list.
    pub first: Option<ListRowReport>,
    /// In the second list.
    pub second: Option<ListRowReport>,
    /// `same`, `written-otherwise`, `quantity`, `second-replaces`, `second-replaces-both-ways`, `first-replaces`,
    /// `first-replaces-both-ways`, `only-first`, `only-second`.
    pub sameness: &'static str,
    /// Whether it is a bolt, nut or washer.
    pub hardware: bool,
    /// In a sentence.
    pub text: String,
}

/// A line as a list has it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct ListRowReport {
    /// Position on the drawing.
    pub position: String,
    /// Part number, as written.
    pub part: String,
    /// Description.
    pub description: String,
    /// Quantity.
    pub quantity: u32,
}

impl Words {
    /// Two lists compared, as data, with what could not be read of each.
    pub fn lists_report(&self, found: &ListsCompared, faults: [&[ListFault]; 2]) -> ListsReport {
        let told = |fault: &ListFault| ListFaultReport {
            line: fault.line,
            code: fault.what.word(),
            text: self.list_fault(fault),
        };
        let [faults_first, faults_second] = faults.map(|faults| faults.iter().map(told).collect());
        let assemblies = found.assemblies.iter().map(|assembly| self.assembly_report(assembly)).collect();
        ListsReport { faults_first, faults_second, assemblies }
    }

    fn assembly_report(&self, assembly: &AssemblyCompared) -> AssemblyReport {
        let (told, follows) = self.assembly_compared(assembly);
        let line = |line: &LineCompared| ListLineReport {
            first: line.first.as_ref().map(row),
            second: line.second.as_ref().map(row),
            sameness: line.sameness.word(),
            hardware: line.is_hardware,
            text: self.line_compared(line),
        };
        AssemblyReport {
            heading: assembly.heading.clone(),
            bears_joint: assembly.bears_joint,
            sameness: assembly.sameness.word(),
            text: std::iter::once(told).chain(follows).collect(),
            lines: assembly.lines.iter().map(line).collect(),
        }
    }
}

fn row(row: &PartsListRow) -> ListRowReport {
    ListRowReport {
        position: row.position.clone(),
        part: row.part.clone(),
        description: row.description.clone(),
        quantity: row.quantity,
    }
}
