//! The four steps in any order, and the ways back.

use fitup_core::fit::judge;
use fitup_core::item::ItemRef;
use fitup_tests::browser::{LAPTOP, PHONE, SCREENS, browse};

use crate::widget::{choose, comes_to, desk, label, open, story, words};

/// The steps of a story with the labels to take.
fn picks(name: &str) -> Vec<(&'static str, String)> {
    let desk = desk();
    let build = story(&desk, name);
    let mut picks = Vec::new();
    if let Some(id) = build.choices.machine {
        picks.push(("machine", label(&desk, ItemRef::Machine(id))));
    }
    if let Some(id) = build.choices.carrying.frame() {
        picks.push(("frame", label(&desk, ItemRef::Frame(id))));
    }
    if let Some(id) = build.choices.seating.seat() {
        picks.push(("seat", label(&desk, ItemRef::Seat(id))));
    }
    if let Some(id) = build.choices.implement {
        picks.push(("implement", label(&desk, ItemRef::Implement(id))));
    }
    assert_eq!(picks.len(), 4, "the story answers all four steps");
    picks
}

#[test]
fn three_orders_of_the_steps_come_to_the_same_answer_as_the_library() {
    let desk = desk();
    let answer = judge(&desk, &story(&desk, "listed"));
    let expected = words().answer(answer.deciding().question, answer.decided());
    browse("steps-orders", LAPTOP, async |page| {
        for order in [[0, 1, 2, 3], [3, 1, 0, 2], [2, 3, 1, 0]] {
            open(&page, "").await?;
            let picks = picks("listed");
            for at in order {
                let (step, label) = &picks[at];
                choose(&page, step, label).await?;
            }
            comes_to(&page, &expected).await?;
            assert_eq!(page.text(".title-cells dd").await?, "Listed", "order {order:?}");
        }
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn reload_loses_nothing_and_back_and_forward_go_through_the_choices() {
    browse("steps-history", LAPTOP, async |page| {
        open(&page, "").await?;
        let picks = picks("no-adapter");
        for (step, label) in &picks {
            choose(&page, step, label).await?;
        }
        comes_to(&page, "Won’t mount").await?;
        let whole = page.address().await?;
        page.reload().await?;
        comes_to(&page, "Won’t mount").await?;
        assert_eq!(page.address().await?, whole);
        assert_eq!(page.count(".step[data-chosen]").await?, 4);

        page.back().await?;
        page.until("the implement to be open again", "widget.querySelectorAll('.step[data-chosen]').length === 3")
            .await?;
        page.forward().await?;
        page.until("the implement to be back", "widget.querySelectorAll('.step[data-chosen]').length === 4").await?;
        comes_to(&page, "Won’t mount").await?;

        page.click(".bar-tools button:first-child").await?;
        page.until(
            "undo to take something back",
            "widget.querySelector('.bar-tools button:nth-child(2)').disabled === false",
        )
        .await?;
        page.click(".bar-tools button:nth-child(2)").await?;
        comes_to(&page, "Won’t mount").await?;
        Ok(())
    });
}

#[test]
fn a_finger_on_a_phone_goes_through_the_steps_and_sees_the_answer_all_the_while() {
    browse("steps-phone", PHONE, async |page| {
        open(&page, "").await?;
        for (step, label) in picks("sleeve") {
            choose(&page, step, &label).await?;
            let seen = page
                .value("(() => { const r = widget.querySelector('.glance').getBoundingClientRect(); return r.top >= 0 && r.bottom <= innerHeight; })()")
                .await?;
            assert_eq!(seen, true, "the glance left the screen in step {step}");
        }
        page.until(
            "the verdict at a glance",
            "widget.querySelector('.glance .verdict').innerText.includes('Bolts up with work')",
        )
        .await?;
        Ok(())
    });
}

#[test]
fn nothing_scrolls_sideways_on_any_screen_nor_at_320_pixels() {
    browse("steps-reflow", LAPTOP, async |page| {
        let sizes = SCREENS.map(|screen| (screen.width, screen.height));
        for (width, height) in sizes.into_iter().chain([(320, 640)]) {
            page.cdp(
                "Emulation.setDeviceMetricsOverride",
                serde_json::json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": false }),
            )
            .await?;
            let desk = desk();
            open(&page, &crate::widget::fragment(&desk, &story(&desk, "two-holes"))).await?;
            page.click(".joint-head").await?;
            for view in 1..=page.count("[role=tab]").await? {
                page.click(&format!("[role=tab]:nth-child({view})")).await?;
                page.settled().await?;
                let over = page.value("document.scrollingElement.scrollWidth - innerWidth").await?;
                let widest = page
                    .value(
                        "[...widget.querySelectorAll('*')].filter((e) => e.getBoundingClientRect().right > innerWidth + 0.5) \
                         .map((e) => e.tagName + '.' + (e.className.baseVal ?? e.className)).slice(0, 12)",
                    )
                    .await?;
                let fits = over.as_i64().is_some_and(|over| over <= 0);
                assert!(fits, "{width} pixels, view {view}: {over} too wide: {widest}");
            }
        }
        Ok(())
    });
}
