//! What is measured in the yard: entered, asked about, refused, taken back.

use fitup_core::fit::Desk;
use fitup_tests::browser::{LAPTOP, Outcome, PHONE, Page, browse};
use serde_json::json;

use crate::widget::{comes_to, desk, fragment, open, story};

/// Opens the joint of this name.
async fn open_joint(page: &Page, name: &str) -> Outcome {
    page.find(".joint-head").await?;
    page.value(&format!(
        "(() => {{ for (const e of widget.querySelectorAll('.joint-head')) \
         e.toggleAttribute('data-wanted', e.querySelector('.joint-name').textContent.startsWith('{name}')); }})()"
    ))
    .await?;
    page.click(".joint-head[data-wanted]").await?;
    page.find(".joint-body .desk-form").await.map(drop)
}

async fn enter(page: &Page, typed: &str) -> Outcome {
    page.write("#desk-entry", typed).await?;
    page.click(".desk-form [type=submit]").await
}

/// The set with the used arm, before anything was measured on it, in the view of the desk.
fn unmeasured(desk: &Desk) -> String {
    let mut build = story(desk, "measured");
    build.side.measured.clear();
    format!("{}&fit-up.view=measure", fragment(desk, &build))
}

#[test]
fn a_measurement_moves_the_verdict_and_is_taken_back_and_what_is_no_clear_length_is_refused() {
    browse("measure", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        comes_to(&page, "Bolts up").await?;
        open_joint(&page, "implement carrier").await?;
        assert_eq!(page.text(".desk-of").await?, "Sparrow frame, rack");
        for typed in ["about forty", "1,200", "-30", "2 1/32"] {
            enter(&page, typed).await?;
            page.until(
                "the refusal",
                &format!("widget.querySelector('.desk .wrong')?.textContent.includes({})", json!(typed)),
            )
            .await?;
            assert_eq!(page.count(".measured").await?, 0, "{typed}");
        }
        // The bar is 40 mm: one of 30 mm is not the one that the maker lists, and so is asked about first.
        enter(&page, "30").await?;
        page.until("the question", "widget.querySelector('.desk .wrong .actions') != null").await?;
        assert_eq!(
            page.text(".desk .wrong p").await?.replace('\u{a0}', " "),
            "The drawing says 40 mm, you typed 30 mm. Take it?"
        );
        comes_to(&page, "Bolts up").await?;
        page.click(".desk .wrong .actions button:last-child").await?;
        comes_to(&page, "Won’t mount").await?;
        assert_eq!(page.texts(".measured span").await?, ["Sparrow frame, diameter: 30\u{a0}mm (caliper)"]);
        assert_ne!(page.text(".desk-name").await?, "Diameter", "it has gone on to the next");
        page.click(".measured button").await?;
        comes_to(&page, "Bolts up").await?;
        page.click("[aria-label=Undo]").await?;
        comes_to(&page, "Won’t mount").await?;
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn the_desk_leads_from_one_thing_to_the_next_until_the_used_arm_is_settled() {
    for screen in [LAPTOP, PHONE] {
        browse("desk", screen, async |page| {
            let desk = desk();
            open(&page, &unmeasured(&desk)).await?;
            comes_to(&page, "Check first").await?;
            page.find(".desk-picture svg").await?;
            assert!(page.text(".desk-progress").await?.starts_with("1 of "));
            assert_eq!(page.text(".desk-name").await?, "Part number");
            assert_eq!(page.texts(".desk-task .small").await?[1], "Otter digging arm, first series (used), hooks");
            let found = page.violations().await?;
            assert!(found.is_empty(), "{found:#?}");
            let small = "[...widget.querySelectorAll('.desk button, .desk .entry')]\
                .filter((e) => e.getBoundingClientRect().height < 43.5).map((e) => e.className)";
            assert_eq!(page.value(small).await?, json!([]), "targets too small to touch");
            // Nobody finds the number: on to the first thing to measure.
            page.click("li:nth-child(2) > .desk-task").await?;
            for entered in 1..=5 {
                page.find(".pad").await?;
                let name = page.text(".desk-name").await?;
                let value = match name.as_str() {
                    "Diameter" => "51.6",
                    "Latch pin diameter" => "29.4",
                    "Spacing left to right" => "580.5",
                    "Hook centre down to latch pin" => "300.2",
                    "Hook centre to plate" => "75",
                    other => panic!("{other}"),
                };
                for key in value.chars() {
                    press(&page, &key.to_string()).await?;
                }
                page.click(".desk-form [type=submit]").await?;
                page.until("the entry", &format!("widget.querySelectorAll('.measured').length === {entered}")).await?;
            }
            comes_to(&page, "Bolts up").await?;
            page.click("[aria-label=Undo]").await?;
            page.until("the last to be open again", "widget.querySelectorAll('.measured').length === 4").await?;
            assert_eq!(page.errors().await?, Vec::<String>::new());
            Ok(())
        });
    }
}

/// Touches a key of the pad.
async fn press(page: &Page, key: &str) -> Outcome {
    page.value(&format!(
        "[...widget.querySelectorAll('.pad button')].find((e) => e.textContent === {}).click()",
        json!(key)
    ))
    .await?;
    page.settled().await
}

#[test]
fn the_pad_writes_fractions_of_an_inch_and_unit_tool_and_readings_are_kept() {
    browse("desk-inches", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &unmeasured(&desk)).await?;
        page.click("li:nth-child(2) > .desk-task").await?;
        page.click(".desk-value .switch button:last-child").await?;
        page.click(".desk-form > .switch button:last-child").await?;
        page.find(".pad-parts").await?;
        for key in ["2", "–", "1", "/32"] {
            press(&page, key).await?;
        }
        assert_eq!(page.value("widget.querySelector('#desk-entry').value").await?, "2-1/32");
        page.click(".desk-form .actions button:first-child").await?;
        for key in ["2", "–", "1", "/16"] {
            press(&page, key).await?;
        }
        page.click(".desk-form [type=submit]").await?;
        page.until(
            "one entry",
            "widget.querySelectorAll('.measured').length + widget.querySelectorAll('.desk .wrong').length === 1",
        )
        .await?;
        if page.count(".desk .wrong").await? == 1 {
            page.click(".desk .wrong .actions button:last-child").await?;
        }
        page.until("the entry", "widget.querySelectorAll('.measured').length === 1").await?;
        let line = page.text(".measured span").await?.replace('\u{a0}', " ");
        assert!(line.contains("(tape; 2 readings, 51.6 mm to 52.4 mm)"), "{line}");
        let kept = "[...widget.querySelectorAll('.desk-form [aria-pressed=true]')].map((e) => e.textContent).join()";
        assert_eq!(page.value(kept).await?, "in,tape", "unit and tool stay chosen");
        Ok(())
    });
}
