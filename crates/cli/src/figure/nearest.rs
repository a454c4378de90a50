//! The name somebody meant.

/// The one of `known` whose spelling is nearest, if it is near.
pub fn nearest<'a>(name: &str, known: &[&'a str]) -> Option<&'a str> {
    let spelt = |name: &str| name.to_lowercase().replace('_', "-");
    known
        .iter()
        .map(|&known| (strsim::damerau_levenshtein(&spelt(name), &spelt(known)), known))
        .filter(|(steps, known)| steps * 2 <= known.len())
        .min()
        .map(|(_, known)| known)
}
