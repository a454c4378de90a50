//! Marks in the drawing, and the ways from them and back.

use fitup_tests::browser::{LAPTOP, PHONE, browse};

use crate::widget::{desk, fragment, open, open_step, story};

/// Whether the top of an element is on the screen and nothing sticky lies over it.
fn is_seen(selector: &str) -> String {
    format!(
        "(() => {{ const e = widget.querySelector('{selector}'), r = e.getBoundingClientRect(); \
         return r.top >= 40 && r.top < innerHeight - 40; }})()"
    )
}

#[test]
fn touching_a_mark_brings_its_finding_into_sight_and_a_button_leads_back() {
    for screen in [LAPTOP, PHONE] {
        browse("marks", screen, async |page| {
            let desk = desk();
            open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
            page.find(".drawing [data-target^=joint]").await?;
            page.value(
                "widget.querySelector('.drawing [data-target^=joint]')\
                 .dispatchEvent(new MouseEvent('click', { bubbles: true }))",
            )
            .await?;
            page.find(".joint-body").await?;
            page.until("the finding on the screen", &is_seen(".joint-head[aria-expanded=true]")).await?;
            assert!(page.focused().await?.contains("joint-head"));
            page.click(".to-drawing").await?;
            page.until("the drawing on the screen", &is_seen("#drawing .drawing")).await?;
            assert!(page.focused().await?.contains("#drawing"), "{}", page.focused().await?);
            Ok(())
        });
    }
}

#[test]
fn a_clash_is_marked_where_it_is_and_opens_its_finding() {
    browse("marks-clash", LAPTOP, async |page| {
        let desk = desk();
        let build = story(&desk, "another-seat");
        open(&page, &fragment(&desk, &build)).await?;
        page.find(".drawing [data-target^=finding]").await?;
        page.value(
            "widget.querySelector('.drawing [data-target^=finding]')\
             .dispatchEvent(new MouseEvent('click', { bubbles: true }))",
        )
        .await?;
        page.find(".joint-body").await?;
        page.until("the finding on the screen", &is_seen(".joint-head[aria-expanded=true]")).await?;
        assert!(page.text(".joint-head[aria-expanded=true] .joint-between").await?.contains('↔'));
        Ok(())
    });
}

#[test]
fn on_a_phone_a_pick_closes_its_step_and_leads_on_with_the_drawing_in_view() {
    browse("marks-phone", PHONE, async |page| {
        open(&page, "").await?;
        open_step(&page, "machine").await?;
        page.tap(".card:nth-child(1)").await?;
        page.until("the next step", "widget.querySelector('#step-frame').getAttribute('aria-expanded') === 'true'")
            .await?;
        page.until("the drawing on the screen", &is_seen("#drawing .drawing")).await?;
        assert!(page.focused().await?.contains("#step-frame"), "{}", page.focused().await?);
        assert_eq!(page.count(".step-head[aria-expanded=true]").await?, 1);
        Ok(())
    });
}

#[test]
fn loading_and_site_answer_in_a_sentence() {
    browse("marks-sentence", LAPTOP, async |page| {
        let desk = desk();
        for (view, answer) in [("loading", "Loads up with longer ramps"), ("site", "Check first")] {
            open(&page, &format!("{}&fit-up.view={view}", fragment(&desk, &story(&desk, "ramp")))).await?;
            let said = page.text(".whole-answer").await?;
            assert!(said.starts_with(answer) && said.chars().any(|sign| sign.is_ascii_digit()), "{view}: {said}");
        }
        Ok(())
    });
}
