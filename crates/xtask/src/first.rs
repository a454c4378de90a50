//! The first screen of the start page as markup, in every language: it is painted before any program is there, and shown where
//! none can run.

use std::fs;
use std::io;
use std::path::Path;

use fitup_catalogue::{BuildFile, link};
use fitup_words::{Lang, Units, Words};
use serde_json::Value;

/// Where it goes in the page.
const PLACE: &str = "<!-- first screen -->";
/// The demonstration's builds that are offered as stories.
const STORIES: [&str; 3] = ["listed", "measured", "two-holes"];

/// Puts the first screen into the page, if it has a place for it.
pub fn lay_out(page: &Path) -> io::Result<()> {
    let text = fs::read_to_string(page)?;
    if !text.contains(PLACE) {
        return Ok(());
    }
    let told = fs::read_to_string(crate::root().join("www/catalogue/demo-builds.json"))?;
    let told: Vec<Value> = serde_json::from_str(&told)?;
    let screens: String = Lang::ALL.iter().map(|&lang| screen(lang, &told)).collect();
    fs::write(page, text.replace(PLACE, &screens))
}

/// What it is for, the four steps, and stories; the stories stay where nothing is chosen yet.
fn screen(lang: Lang, told: &[Value]) -> String {
    let words = Words::new(lang, Units::Metric);
    let text = |key: &str| escaped(&words.ui(key, &[]));
    let steps =
        ["machine", "frame", "seat", "implement"].map(|step| text(&format!("ui-step-{step}"))).join("</li><li>");
    let story = |name: &&str| {
        let link = link_of(told, name)?;
        Some(format!("<li><a href=\"#fit-up={link}\">{}</a></li>", text(&format!("ui-story-{name}"))))
    };
    let stories: String = STORIES.iter().filter_map(story).collect();
    let (tag, says, title) = (lang.tag(), text("ui-start-says"), text("ui-stories"));
    format!(
        "\n<div class=\"first\" lang=\"{tag}\"><p class=\"first-says\">{says}</p><ol><li>{steps}</li></ol></div>\
         \n<nav class=\"stories\" slot=\"stories-{tag}\" lang=\"{tag}\" aria-label=\"{title}\"><ul>{stories}</ul></nav>"
    )
}

/// The link of a story's build.
fn link_of(told: &[Value], name: &str) -> Option<String> {
    let story = told.iter().find(|story| story["name"] == name)?;
    Some(link::write(&BuildFile::read(&story["build"].to_string()).ok()?))
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('"', "&quot;")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_language_has_its_sentence_its_steps_and_its_stories() {
        let page = std::env::temp_dir().join(format!("fitup-first-{}.html", std::process::id()));
        fs::write(&page, format!("<fit-up>{PLACE}</fit-up>")).expect("the temporary folder is writable");
        lay_out(&page).expect("laid out");
        let made = fs::read_to_string(&page).expect("written");
        fs::remove_file(&page).expect("was there");
        assert_eq!(made.matches("class=\"first\"").count(), Lang::ALL.len());
        assert_eq!(made.matches("href=\"#fit-up=1.").count(), STORIES.len() * Lang::ALL.len());
        assert!(made.contains("Kompakttraktor") && !made.contains(PLACE) && !made.contains("ui-"), "{made}");
    }
}
