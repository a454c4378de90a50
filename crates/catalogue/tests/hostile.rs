//! Whatever a file holds, reading ends, and ends with problems or a catalogue.

use fitup_catalogue::{Severity, read, read_bytes, read_closely};
use proptest::prelude::*;

const GOOD: &str = include_str!("minimal.json");

fn holds(bytes: &[u8]) {
    let reading = read_bytes(bytes);
    let has_error = reading.problems.iter().any(|p| p.code.severity() == Severity::Error);
    assert_eq!(reading.catalogue.is_none(), has_error);
    for problem in &reading.problems {
        assert!(problem.path.len() < 500, "{problem:?}");
        assert!(problem.args.iter().all(|(_, value)| value.len() < 4_000), "{problem:?}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn any_bytes(bytes in proptest::collection::vec(any::<u8>(), 0..400)) {
        holds(&bytes);
    }

    #[test]
    fn a_good_file_with_bytes_changed(changes in proptest::collection::vec((0..GOOD.len(), any::<u8>()), 1..12)) {
        let mut bytes = GOOD.as_bytes().to_vec();
        for (at, byte) in changes {
            bytes[at] = byte;
        }
        holds(&bytes);
    }

    #[test]
    fn a_good_file_with_pieces_moved(from in 0..GOOD.len(), length in 0usize..300, to in 0..GOOD.len()) {
        let mut bytes = GOOD.as_bytes().to_vec();
        let piece: Vec<u8> = bytes.iter().copied().skip(from).take(length).collect();
        bytes.splice(to..to, piece);
        holds(&bytes);
    }

    /// A value of another sort in the place of any number of the file.
    #[test]
    fn a_good_file_with_values_exchanged(
        which in 0usize..300,
        value in prop::sample::select(vec![
            "null", "true", "[]", "{}", "\"\"", "-1", "0", "1e999", "NaN", "1e-300", "-0", "99999999999999999999",
            "\"M 0 0\"", "[[[[]]]]", "{\"value\": {}}", "1e9", "0.5",
        ])
    ) {
        let bytes = GOOD.as_bytes();
        let digits = |at: usize| bytes[at].is_ascii_digit() && !bytes[at - 1].is_ascii_alphanumeric() && bytes[at - 1] != b'.';
        let starts: Vec<usize> = (1..bytes.len()).filter(|&at| digits(at)).collect();
        let at = starts[which % starts.len()];
        let end = (at..bytes.len()).find(|&end| !bytes[end].is_ascii_digit() && bytes[end] != b'.').unwrap_or(at);
        holds(format!("{}{value}{}", &GOOD[..at], &GOOD[end..]).as_bytes());
    }
}

#[test]
fn labels_stay_plain_text() {
    let text = GOOD.replace("Small, open", "<script>alert(1)</script> javascript:alert(1) &amp; {{x}}");
    let catalogue = read(&text).catalogue.expect("markup is text like any other");
    assert_eq!(catalogue.machines[0].body.label, "<script>alert(1)</script> javascript:alert(1) &amp; {{x}}");
}

#[test]
fn a_catalogue_without_a_guide_or_items_is_one() {
    let units = "{\"length\": \"in\", \"mass\": \"lb\", \"pressure\": \"psi\", \"flow\": \"gal/min\", \"power\": \"hp\", \
                 \"angle\": \"rad\", \"money\": \"USD\"}";
    let reading = read(&format!("{{\"format\": 1, \"name\": \"A\", \"units\": {units}}}"));
    assert_eq!(reading.problems, []);
    assert!(reading.catalogue.is_some_and(|catalogue| catalogue.guide.is_none()));
}

#[test]
fn much_that_is_wrong_is_read_in_good_time() {
    // Every row names things that are not there and is asked for suggestions among many.
    let parts: Vec<String> = (0..20_000).map(|i| format!("{{\"number\": \"P-{i}\", \"name\": \"x\"}}")).collect();
    let rows: Vec<String> = (0..20_000)
        .map(|i| {
            format!(
                "{{\"item\": \"i{i}\", \"assembly\": \"\", \"position\": \"\", \"part\": \"Q-{i}\", \"quantity\": 1}}"
            )
        })
        .collect();
    let text = format!("{{\"format\": 1, \"parts\": [{}], \"parts_lists\": [{}]}}", parts.join(","), rows.join(","));
    assert_eq!(read(&text).problems.len(), 1001);
    let keys: Vec<String> = (0..30_000).map(|i| format!("\"k{i}\": 0")).collect();
    assert_eq!(read(&format!("{{\"format\": 1, {}}}", keys.join(","))).problems.len(), 1001);
    let same = vec!["\"name\": \"x\""; 20_000].join(",");
    assert_eq!(read_closely(&format!("{{\"format\": 1, {same}}}")).1.len(), 1001);
}
