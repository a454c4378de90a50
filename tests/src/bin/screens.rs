//! Takes the pictures that `tests/screens.txt` lists.

use std::path::Path;
use std::process::ExitCode;

use fitup_core::fit::Desk;
use fitup_tests::browser::{Outcome, Page, SCREENS, Screen, browse, supply};
use fitup_tests::stories::{broken, desk, fragment, story};

const LIST: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/screens.txt");

/// A picture to take.
#[derive(Debug, PartialEq)]
struct Picture {
    name: String,
    screens: Vec<Screen>,
    address: String,
    /// What is clicked before it is taken, one after the other.
    clicks: Vec<String>,
}

fn main() -> ExitCode {
    let list = match std::fs::read_to_string(Path::new(LIST)) {
        Ok(list) => list,
        Err(error) => return wrong(&format!("{LIST}: {error}")),
    };
    let pictures = match pictures(&list) {
        Ok(pictures) => pictures,
        Err(error) => return wrong(&format!("{LIST}: {error}")),
    };
    let desk = desk();
    let only = std::env::args().nth(1).unwrap_or_default();
    for screen in SCREENS {
        let here: Vec<&Picture> =
            pictures.iter().filter(|p| p.screens.contains(&screen) && p.name.contains(&only)).collect();
        if here.is_empty() {
            continue;
        }
        browse("screens", screen, async |page| {
            for picture in here {
                show(&page, &desk, picture).await?;
                let path = page.screenshot(&format!("{}-{}", picture.name, screen.name)).await?;
                println!("{}", path.display());
            }
            for error in page.errors().await? {
                println!("browser log: {error}");
            }
            Ok(())
        });
    }
    ExitCode::SUCCESS
}

/// Brings the page to where the picture is taken.
async fn show(page: &Page, desk: &Desk, picture: &Picture) -> Outcome {
    let address = match picture.address.split_once("story:") {
        Some((before, name)) => {
            let (name, after) = name.split_once('&').map_or((name, String::new()), |(n, rest)| (n, format!("&{rest}")));
            format!("{before}{}{after}", fragment(desk, &story(desk, name)))
        }
        None => picture.address.clone(),
    };
    let broken_one = address == "broken:";
    page.open(if broken_one { "" } else { &address }).await?;
    if broken_one {
        supply(page, "broken.json", Some(&broken())).await?;
    }
    page.until("the catalogue", "widget.querySelector('.sheet, .trouble') != null").await?;
    for selector in &picture.clicks {
        page.click(selector).await?;
    }
    if picture.clicks.is_empty() {
        page.value("scrollTo(0, 0)").await?;
    }
    // The answer comes in parts: nothing is to come any more when nothing has come for a while.
    let still = "(() => { const now = widget.innerHTML; const at = performance.now(); \
                 if (window.shown !== now) [window.shown, window.since] = [now, at]; return at - window.since > 1000; })()";
    page.until("the whole answer", still).await?;
    page.settled().await
}

fn wrong(text: &str) -> ExitCode {
    eprintln!("{text}");
    ExitCode::from(2)
}

/// The pictures of the list, or what is wrong with which line.
fn pictures(list: &str) -> Result<Vec<Picture>, String> {
    let lines = list.lines().enumerate().map(|(at, line)| (at + 1, line.trim()));
    lines.filter(|(_, line)| !line.is_empty() && !line.starts_with('#')).map(|(at, line)| picture(at, line)).collect()
}

fn picture(at: usize, line: &str) -> Result<Picture, String> {
    let words: Vec<&str> = line.split_whitespace().collect();
    let [name, screens, address, ref clicks @ ..] = words[..] else {
        return Err(format!("line {at}: {line:?} is not NAME SCREENS ADDRESS [CLICK …]"));
    };
    let screens = if screens == "all" {
        SCREENS.to_vec()
    } else {
        let named = |name: &str| {
            let known = SCREENS.into_iter().find(|screen| screen.name == name);
            known.ok_or_else(|| format!("line {at}: no screen {name:?}: phone, tablet, laptop or desk"))
        };
        screens.split(',').map(named).collect::<Result<_, _>>()?
    };
    Ok(Picture {
        name: name.to_owned(),
        screens,
        address: address.trim_start_matches('/').to_owned(),
        clicks: clicks.iter().map(|&selector| selector.to_owned()).collect(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_line_names_a_picture_its_screens_and_its_address() {
        let read = pictures("# note\nstart phone,desk /#b=1 .joint-head #next\n").expect("well formed");
        assert_eq!((read[0].name.as_str(), read[0].address.as_str(), read[0].screens.len()), ("start", "#b=1", 2));
        assert_eq!(read[0].clicks, [".joint-head", "#next"]);
    }

    #[test]
    fn a_wrong_line_is_told_with_its_number() {
        assert!(pictures("\nstart all").expect_err("no address").starts_with("line 2"));
        assert!(pictures("start watch /").expect_err("no such screen").contains("phone, tablet"));
    }
}
