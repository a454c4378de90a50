//! Parts lists compared, in words.

use fitup_catalogue::{ListFault, ListFaultKind, MOST_LINES};
use fitup_core::search::{AssemblyCompared, LineCompared};

use crate::{Arg, Words};

impl Words {
    /// An assembly with what it comes to; where it bears a joint, what follows for it.
    pub fn assembly_compared(&self, assembly: &AssemblyCompared) -> (String, Option<String>) {
        let heading = match assembly.heading.as_str() {
            "" => self.ui("lists-without-heading", &[]),
            heading => heading.to_owned(),
        };
        let word = assembly.sameness.word();
        let told = self.labelled(&heading, &self.ui(&format!("lists-{word}"), &[]));
        let follows = assembly.bears_joint.then(|| self.ui(&format!("lists-{word}.joint"), &[]));
        (told, follows)
    }

    /// A line of two lists.
    pub fn line_compared(&self, line: &LineCompared) -> String {
        let rows = [&line.first, &line.second].map(Option::as_ref);
        let part = |at: usize| Arg::from(rows[at].map_or("", |row| row.part.as_str()));
        let count = |at: usize| Arg::from(i64::from(rows[at].map_or(0, |row| row.quantity)));
        let args = [("first", part(0)), ("second", part(1)), ("of-first", count(0)), ("of-second", count(1))];
        let told = self.ui(&format!("lists-line-{}", line.sameness.word()), &args);
        let description = rows.into_iter().flatten().map(|row| row.description.as_str()).find(|text| !text.is_empty());
        description.map_or_else(|| told.clone(), |description| format!("{told} ({description})"))
    }

    /// What is wrong with a line of a list, with what mends it.
    pub fn list_fault(&self, fault: &ListFault) -> String {
        let (text, other): (&str, usize) = match &fault.what {
            ListFaultKind::NoNumber(text) | ListFaultKind::Quantity(text) => (text, 0),
            ListFaultKind::Doubled(text, before) => (text, *before),
            ListFaultKind::TooLong => ("", MOST_LINES),
            ListFaultKind::NoList | ListFaultKind::NotText => ("", 0),
        };
        // The numbers of lines are names: they are not grouped.
        let args = [("text", Arg::from(text)), ("other", other.to_string().into())];
        let what = self.ui(&format!("lists-fault-{}", fault.what.word()), &args);
        self.ui("lists-fault", &[("line", fault.line.to_string().into()), ("what", what.into())])
    }
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeMap;

    use fitup_catalogue::read_parts_text;
    use fitup_core::search::lists;

    use super::*;
    use crate::{Lang, Units};

    #[test]
    fn what_breaks_a_proof_is_named_and_what_follows_for_the_joint() {
        let words = Words::new(Lang::En, Units::Metric);
        let [first, second] =
            ["Hooks\nHK-7001;hook;2\nPN-20;latch pin;1\n", "Hooks\nhk 7001;hook;1\nPN-20;latch pin;1\n"]
                .map(|text| read_parts_text(text).list);
        let found = lists([&first, &second], &BTreeMap::new(), |heading| heading == "Hooks");
        let assembly = &found.assemblies[0];
        let (told, follows) = words.assembly_compared(assembly);
        assert_eq!(told, "Hooks: the same numbers in other quantities");
        assert_eq!(follows.as_deref(), Some("Not proven as long as it is open which quantity is right."));
        assert_eq!(words.line_compared(&assembly.lines[0]), "HK-7001: 2 in the first list, 1 in the second (hook)");
    }

    #[test]
    fn every_fault_has_its_sentence_in_every_language() {
        let text = "Part number;Qty\n;3\nPN-20;many\nB-1;1\nb1;1\n";
        let mut faults = read_parts_text(text).faults;
        faults.extend(
            [ListFaultKind::NoList, ListFaultKind::TooLong, ListFaultKind::NotText]
                .map(|what| ListFault { line: 1, what }),
        );
        for lang in Lang::ALL {
            let words = Words::new(lang, Units::Metric);
            for fault in &faults {
                let told = words.list_fault(fault);
                assert!(!told.contains("lists-") && told.contains(&fault.line.to_string()), "{told}");
            }
        }
        let words = Words::new(Lang::En, Units::Metric);
        assert_eq!(words.list_fault(&faults[1]), "Line 3: “many” is no quantity; write a whole number from 1.");
    }
}
