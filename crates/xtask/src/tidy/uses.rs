//! Which modules a source file names, read from its text.

/// The paths below its crate that a source file names through `crate::` and `super::`, each as its segments; tests and
/// comments do not count.
///
/// `module` is the file's own path below the crate, so that `super` can be followed.
///
/// Valid for: formatted code whose tests are the last module of the file. A name that only a macro puts together is not seen.
pub fn uses(module: &[&str], text: &str) -> Vec<Vec<String>> {
    let lines: Vec<&str> = text.lines().collect();
    let opens_tests = |pair: &[&str]| {
        pair[0].trim() == "#[cfg(test)]" && pair[1].contains("mod ") && pair[1].trim_end().ends_with('{')
    };
    let end = lines.windows(2).position(opens_tests).unwrap_or(lines.len());
    let code: Vec<&str> = lines[..end].iter().copied().filter(|line| !line.trim_start().starts_with("//")).collect();
    let code = code.join("\n");
    let mut found = Vec::new();
    let mut rest = code.as_str();
    let mut before = ' ';
    while let Some(first) = rest.chars().next() {
        let starts = !before.is_alphanumeric() && before != '_' && before != ':';
        let head = ["crate::", "super::"].into_iter().find(|head| starts && rest.starts_with(head));
        let Some(head) = head else {
            before = first;
            rest = &rest[first.len_utf8()..];
            continue;
        };
        let mut base: Vec<String> =
            if head == "crate::" { Vec::new() } else { module.iter().map(|&segment| segment.to_owned()).collect() };
        rest = if head == "crate::" { &rest[head.len()..] } else { rest };
        while let Some(after) = rest.strip_prefix("super::") {
            base.pop();
            rest = after;
        }
        rest = tree(&base, rest, &mut found);
        before = ' ';
    }
    found
}

/// Reads one path, or a group of them in braces, that goes on from `base`; what is left of the text.
fn tree<'t>(base: &[String], text: &'t str, found: &mut Vec<Vec<String>>) -> &'t str {
    if let Some(group) = text.strip_prefix('{') {
        let mut rest = group;
        loop {
            rest = rest.trim_start().trim_start_matches(',').trim_start();
            match rest.chars().next() {
                None => return rest,
                Some('}') => return &rest[1..],
                Some(_) => {
                    let after = tree(base, rest, found);
                    // What cannot be read is passed over, a letter at a time.
                    rest = if after.len() == rest.len() { rest.get(1..).unwrap_or_default() } else { after };
                }
            }
        }
    }
    let end = text.find(|letter: char| !letter.is_alphanumeric() && letter != '_').unwrap_or(text.len());
    let (name, after) = text.split_at(end);
    let mut path = base.to_vec();
    if !name.is_empty() {
        path.push(name.to_owned());
    }
    if let Some(deeper) = after.strip_prefix("::")
        && !deeper.starts_with('<')
    {
        return tree(&path, deeper, found);
    }
    found.push(path);
    after
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(module: &[&str], text: &str) -> Vec<String> {
        uses(module, text).into_iter().map(|path| path.join("::")).collect()
    }

    #[test]
    fn paths_of_the_crate_are_found_in_groups_and_in_code() {
        let text = "use crate::fit::{desk::Desk, lay};\nfn a() { crate::plane::gap(x) }\nuse std::fmt;";
        assert_eq!(named(&["search"], text), ["fit::desk::Desk", "fit::lay", "plane::gap"]);
    }

    #[test]
    fn super_is_followed_from_the_module_it_stands_in() {
        assert_eq!(named(&["fit", "rule", "loads"], "use super::super::whole::Weight;"), ["fit::whole::Weight"]);
        assert_eq!(named(&["fit", "rule"], "use super::{desk::Desk, Answer};"), ["fit::desk::Desk", "fit::Answer"]);
    }

    #[test]
    fn comments_and_tests_name_nothing() {
        let text = "//! See [`crate::search`].\nfn a() {}\n#[cfg(test)]\nmod tests {\n    use crate::search;\n}\n";
        assert!(named(&["fit"], text).is_empty());
    }

    #[test]
    fn what_cannot_be_read_ends() {
        assert_eq!(named(&[], "use crate::{").len(), 0);
        assert_eq!(named(&[], "use crate::{*, a};"), ["", "a"]);
    }
}
