//! Accessibility as axe-core sees it.

use std::path::PathBuf;
use std::time::Duration;

use serde_json::Value;

use super::{Outcome, Page, trouble};

/// A rule that the page breaks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Violation {
    /// The rule's name.
    pub rule: String,
    /// What it asks for.
    pub asks: String,
    /// The elements that break it.
    pub at: Vec<String>,
}

const RUN: &str = "const done = arguments[arguments.length - 1];
    axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
       .then((result) => done(result), (error) => done({ error: String(error) }));";

impl Page {
    /// Runs axe over the whole page, shadow roots included, by the rules of WCAG 2.2 AA and good
    /// practice.
    ///
    /// # Errors
    /// axe-core is not installed or cannot run.
    pub async fn violations(&self) -> Outcome<Vec<Violation>> {
        let script = std::fs::read_to_string(axe())
            .map_err(|error| trouble(format!("{}: {error}; run cargo xtask tools", axe().display())))?;
        self.browser().set_script_timeout(Duration::from_mins(1)).await?;
        self.browser().execute(script, Vec::new()).await?;
        let result = self.browser().execute_async(RUN, Vec::new()).await?.json().clone();
        let Some(found) = result["violations"].as_array() else {
            return Err(trouble(format!("axe could not run: {}", result["error"])));
        };
        Ok(found.iter().map(violation).collect())
    }
}

fn violation(found: &Value) -> Violation {
    let text = |key: &str| found[key].as_str().unwrap_or_default().to_owned();
    let nodes = found["nodes"].as_array().map(Vec::as_slice).unwrap_or_default();
    let at = nodes.iter().map(|node| format!("{} {}", node["target"], node["html"].as_str().unwrap_or_default()));
    Violation { rule: text("id"), asks: text("help"), at: at.collect() }
}

/// The script's place: `$FITUP_AXE`, set by `cargo xtask test`, else the tools' usual folder.
fn axe() -> PathBuf {
    std::env::var_os("FITUP_AXE").map_or_else(
        || {
            let home = std::env::var_os("HOME").map(PathBuf::from).unwrap_or_default();
            home.join(".cache/fitup-tools/node_modules/axe-core/axe.min.js")
        },
        PathBuf::from,
    )
}
