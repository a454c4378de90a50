//! An engine that hangs, fails, is not there or is another: the page outlives it.

use fitup_tests::browser::{LAPTOP, Outcome, Page, Site, browse};
use serde_json::json;

use crate::widget::{choose, comes_to, desk, fragment, label, open, story};

/// Serves the site with one file of it changed, in place of the site as it is.
fn changed(page: &Page, name: &str, change: impl Fn(Vec<u8>) -> Option<Vec<u8>>) -> Outcome {
    let port = page.site().port();
    page.site().stop();
    *page.site() = Site::serve_changed(port, &[(name, &change)])?;
    Ok(())
}

/// The script that holds the engine, with something done before an answer is worked out.
fn before_an_answer(script: &str) -> impl Fn(Vec<u8>) -> Option<Vec<u8>> + use<'_> {
    move |bytes| {
        let text = String::from_utf8(bytes).expect("a script is text");
        let at = "if (ask) {";
        assert!(text.contains(at), "the script asks the engine elsewhere");
        Some(text.replace(at, &format!("{script} {at}")).into_bytes())
    }
}

/// Counts what an engine has been asked.
const COUNT: &str = "if (ask) globalThis.asks = (globalThis.asks ?? 0) + 1;";

/// The first implement of the story's, to be chosen in its place.
async fn choose_another(page: &Page) -> Outcome<String> {
    let desk = desk();
    let machine = label(&desk, fitup_core::item::ItemRef::Machine(fitup_core::item::MachineId(1)));
    choose(page, "machine", &machine).await?;
    Ok(machine)
}

/// Opens a build, lets the engine do what it does at the third request, and looks that the page goes on with the same build.
async fn goes_on(page: Page, script: &str) -> Outcome {
    changed(&page, "worker.js", before_an_answer(&format!("{COUNT} {script}")))?;
    let desk = desk();
    page.cdp(
        "Page.addScriptToEvaluateOnNewDocument",
        json!({ "source": "window.heard = []; document.addEventListener('fitup-error', (e) => window.heard.push(e.detail));" }),
    )
    .await?;
    open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
    comes_to(&page, "Bolts up").await?;
    page.until("the engine to fail", "window.heard.some((d) => d.kind === 'engine-restarted') || (widget.querySelector('#step-seat').click(), false)")
        .await?;
    page.until("a sentence about it", "widget.querySelector('.notice')?.textContent.includes('begun again')").await?;
    comes_to(&page, "Bolts up").await?;
    assert_eq!(page.count(".step[data-chosen]").await?, 4, "the build is the same");
    let machine = choose_another(&page).await?;
    assert!(page.text("#step-machine .step-choice").await?.contains(&machine), "and goes on being edited");
    Ok(())
}

#[test]
fn an_engine_that_hangs_is_ended_and_another_goes_on_with_the_same_build() {
    browse("engine-hangs", LAPTOP, async |page| goes_on(page, "if (globalThis.asks === 4) for (;;);").await);
}

#[test]
fn an_engine_that_panics_is_replaced_and_its_last_words_are_told() {
    browse("engine-panics", LAPTOP, async |page| {
        let told = page.clone();
        let script = "if (ask && globalThis.asks === 4) { post({ kind: 'panic', value: 'the drill' }); \
                      return attempt(() => { throw new WebAssembly.RuntimeError('unreachable'); }); }";
        goes_on(page, script).await?;
        told.until("the reason", "window.heard.some((d) => d.reason === 'the drill')").await
    });
}

#[test]
fn an_engine_without_memory_is_replaced() {
    browse("engine-memory", LAPTOP, async |page| {
        let script = "if (ask && globalThis.asks === 4) return attempt(() => { const all = []; \
                      all.push(new WebAssembly.Memory({ initial: 65536, maximum: 65536 })); \
                      throw new RangeError('out of memory'); });";
        goes_on(page, script).await
    });
}

#[test]
fn three_failures_in_a_row_stop_and_leave_the_build_as_a_link_and_a_way_to_try_again() {
    browse("engine-stops", LAPTOP, async |page| {
        changed(&page, "worker.js", before_an_answer("if (ask) return post({ kind: 'trap', value: 'the drill' });"))?;
        // Else the site as it is served now would be kept, and nothing of the one that comes after it be seen.
        let forget = json!({ "source": "delete Navigator.prototype.serviceWorker;" });
        page.cdp("Page.addScriptToEvaluateOnNewDocument", forget).await?;
        let desk = desk();
        page.open(&fragment(&desk, &story(&desk, "listed"))).await?;
        page.value("document.querySelector('fit-up').setAttribute('lang', 'en')").await?;
        page.until(
            "the page to say that it stops",
            "widget.querySelector('.trouble h2')?.textContent.includes('three times')",
        )
        .await?;
        let link = page.value("widget.querySelector('.trouble a').href === location.href").await?;
        assert_eq!(link, json!(true), "the build is in the link");
        let port = page.site().port();
        page.site().stop();
        *page.site() = Site::serve_on(port)?;
        page.click(".trouble .button").await?;
        comes_to(&page, "Bolts up").await?;
        assert_eq!(page.count(".trouble").await?, 0);
        Ok(())
    });
}

/// What the page says when the engine cannot be had.
async fn says(page: &Page, what: &str) -> Outcome {
    page.open("").await?;
    page.value("document.querySelector('fit-up').setAttribute('lang', 'en')").await?;
    page.until(what, &format!("widget.querySelector('.trouble h2')?.textContent.includes({})", json!(what))).await?;
    assert!(page.text(".first-says").await?.contains("compact tractor"), "the first screen stands");
    Ok(())
}

#[test]
fn a_missing_a_cut_off_and_another_engine_are_told_apart() {
    browse("engine-missing", LAPTOP, async |page| {
        changed(&page, "fitup-engine_bg.wasm", |_| None)?;
        says(&page, "could not be loaded").await?;
        changed(&page, "fitup-engine.js", |_| None)?;
        says(&page, "could not be loaded").await?;
        changed(&page, "fitup-engine_bg.wasm", |bytes| Some(bytes[..bytes.len() / 2].to_vec()))?;
        says(&page, "damaged or cut off").await?;
        changed(&page, "worker.js", |bytes| {
            Some(String::from_utf8(bytes).ok()?.replace("Engine.version()", "'0.0.1'").into_bytes())
        })?;
        says(&page, "another version").await
    });
}

#[test]
fn where_workers_are_forbidden_the_engine_works_in_the_page_and_says_so_once() {
    browse("engine-here", LAPTOP, async |page| {
        let script =
            "window.Worker = class { constructor() { throw new DOMException('forbidden', 'SecurityError'); } };";
        page.cdp("Page.addScriptToEvaluateOnNewDocument", json!({ "source": script })).await?;
        let desk = desk();
        open(&page, &fragment(&desk, &story(&desk, "listed"))).await?;
        comes_to(&page, "Bolts up").await?;
        page.until("the page to say so", "widget.querySelector('.notice')?.textContent.includes('in the page itself')")
            .await?;
        page.click(".notice .button").await?;
        choose_another(&page).await?;
        assert_eq!(page.count(".notice").await?, 0, "once is enough");
        Ok(())
    });
}
