//! Catalogues and addresses that are not as they should be.

use fitup_catalogue::{BuildFile, link};
use fitup_tests::browser::{LAPTOP, browse, supply};
use fitup_tests::stories::{CATALOGUE, broken};
use serde_json::json;

use crate::widget::{comes_to, desk, fragment, open, story};

#[test]
fn a_broken_catalogue_says_every_mistake_with_its_place_and_keeps_what_was_there() {
    browse("trouble-broken", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        page.value("(() => { window.heard = []; document.addEventListener('fitup-error', (e) => window.heard.push(e.detail)); })()").await?;
        let broken = broken();
        supply(&page, "broken.json", Some(&broken)).await?;
        page.until("the mistakes", "widget.querySelectorAll('.problems li').length >= 2").await?;
        let places = page.texts(".problem-place").await?;
        assert!(places.iter().all(|place| place.starts_with("line ")), "{places:?}");
        let told = page.text(".problems").await?;
        assert!(told.contains("There is no field “mas” here."), "{told}");
        assert!(told.contains("Did you mean “mass”?") && !told.contains("expected"), "{told}");
        comes_to(&page, "Bolts up").await?;
        assert!(page.text(".trouble").await?.contains("stays in use"));
        page.until("the event", "window.heard.some((d) => d.kind === 'broken' && d.problems.length >= 2)").await?;
        supply(&page, "nothing.json", Some("this is not a catalogue")).await?;
        page.until(
            "the place of the first letter",
            "widget.querySelector('.problem-place').textContent.includes('line 1')",
        )
        .await?;
        Ok(())
    });
}

#[test]
fn a_newer_format_and_a_missing_file_are_told_apart() {
    browse("trouble-newer", LAPTOP, async |page| {
        open(&page, "").await?;
        let newer = CATALOGUE.replacen("\"format\": 1", "\"format\": 99", 1);
        supply(&page, "newer.json", Some(&newer)).await?;
        assert!(page.text(".trouble").await?.contains("newer format"), "{}", page.text(".trouble").await?);
        supply(&page, "gone.json", None).await?;
        page.until("the status", "widget.querySelector('.trouble').innerText.includes('404')").await?;
        assert!(page.text(".trouble").await?.contains("gone.json"));
        Ok(())
    });
}

#[test]
fn a_page_without_a_catalogue_can_still_be_mended_by_trying_again() {
    browse("trouble-again", LAPTOP, async |page| {
        open(&page, "").await?;
        supply(&page, "later.json", None).await?;
        page.value("(() => { window.fetch = (address) => window.realFetch(String(address).endsWith('later.json') ? 'catalogue/demo.json' : address); })()").await?;
        page.click(".trouble .button").await?;
        page.until("the trouble to be over", "widget.querySelector('.trouble') == null").await?;
        Ok(())
    });
}

#[test]
fn a_cut_or_hostile_address_gives_a_message_and_an_empty_build_and_stays_in_the_address() {
    browse("trouble-address", LAPTOP, async |page| {
        let desk = desk();
        let whole = fragment(&desk, &story(&desk, "listed"));
        let cut = &whole[..whole.len() - 7];
        for (address, says) in [
            (cut.to_owned(), "cut off"),
            ("#fit-up=1.%3Cimg%20src=x%20onerror=alert(1)%3E".to_owned(), "no build"),
            ("#fit-up=9.AAAA".to_owned(), "newer version"),
            (format!("#fit-up=1.{}", "A".repeat(70_000)), "no build"),
        ] {
            open(&page, &address).await?;
            page.until("a notice", "widget.querySelector('.notice') != null").await?;
            let notice = page.text(".notice").await?;
            assert!(notice.contains(says), "{says:?}: {notice:?}");
            assert_eq!(page.count(".step[data-chosen]").await?, 0);
            assert_eq!(page.count("img").await?, 0, "markup of the address must not become markup of the page");
            let kept = page.value("location.hash.length").await?;
            assert!(kept.as_u64().is_some_and(|kept| kept > 10), "the address is kept until something is chosen");
        }
        Ok(())
    });
}

#[test]
fn an_unknown_id_is_named_and_the_rest_of_the_build_opens() {
    browse("trouble-unknown", LAPTOP, async |page| {
        let desk = desk();
        let mut file = BuildFile::of(desk.catalogue(), &story(&desk, "listed"));
        file.frame = Some("a-frame-of-last-year".into());
        open(&page, &format!("#fit-up={}", link::write(&file))).await?;
        page.until("a notice", "widget.querySelector('.notice li') != null").await?;
        assert!(page.text(".notice").await?.contains("a-frame-of-last-year is not in this catalogue"));
        assert_eq!(page.count(".step[data-chosen]").await?, 3);
        Ok(())
    });
}

#[test]
fn a_failure_inside_leaves_a_message_an_event_and_the_build_in_the_address() {
    browse("trouble-failed", LAPTOP, async |page| {
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        let before = page.address().await?;
        page.value(
            "(() => { window.heard = []; document.addEventListener('fitup-error', (e) => window.heard.push(e.detail)); \
             const real = Document.prototype.createElement; window.breaks = true; \
             Document.prototype.createElement = function (...given) { \
               if (window.breaks) { window.breaks = false; throw new Error('out of paper'); } return real.apply(this, given); }; })()",
        )
        .await?;
        page.value("void setTimeout(() => widget.querySelector('#step-seat').click())").await?;
        page.until("the last words", "widget.querySelector('.failed .trouble') != null").await?;
        assert!(page.text(".failed").await?.contains("kept in the address"));
        page.until("the event", "window.heard.some((d) => d.kind === 'failed')").await?;
        let after = page.address().await?;
        assert!(after.starts_with(&before), "the build stands there, whichever step is open: {after}");
        Ok(())
    });
}

#[test]
fn a_language_that_cannot_be_loaded_leaves_english_and_says_so() {
    browse("trouble-language", LAPTOP, async |page| {
        open(&page, "").await?;
        page.value(
            "(() => { const real = window.fetch.bind(window); window.fetch = (address, more) => \
             String(address).includes('words/') ? Promise.reject(new TypeError('no network')) : real(address, more); })()",
        )
        .await?;
        page.value("document.querySelector('fit-up').setAttribute('lang', 'de')").await?;
        page.until("the notice", "widget.querySelector('.notice')?.textContent.includes('Deutsch')").await?;
        assert_eq!(page.value("widget.querySelector('.fitup').lang").await?, json!("en"));
        Ok(())
    });
}

#[test]
fn without_any_texts_the_widget_still_says_what_is_wrong_and_tells_the_page() {
    browse("trouble-speechless", LAPTOP, async |page| {
        let script = "window.heard = []; document.addEventListener('fitup-error', (e) => window.heard.push(e.detail)); \
             const real = window.fetch.bind(window); window.fetch = (address, more) => \
             String(address).includes('words/') ? Promise.reject(new TypeError('no network')) : real(address, more);";
        page.cdp("Page.addScriptToEvaluateOnNewDocument", json!({ "source": script })).await?;
        page.open("").await?;
        assert!(page.text("[role=alert]").await?.contains("could not be loaded"));
        page.until(
            "the event",
            "window.heard.some((d) => d.kind === 'unreachable' && d.address.endsWith('words/en.page.txt'))",
        )
        .await?;
        Ok(())
    });
}
