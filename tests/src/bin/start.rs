//! Times the start page as a visitor meets it, on slower and slower machines: a table for `crates/bench/RESULTS.md`.

use std::process::ExitCode;
use std::time::Duration;

use fitup_tests::browser::{LAPTOP, Outcome, Page, browse};
use serde_json::{Value, json};

/// How much slower the page's processor is made. Chromium slows the page alone: a worker stays at full speed.
const SLOWER: [u32; 3] = [1, 4, 6];
/// The network of the cold start: 1.6 Mbit/s and 150 ms there and back.
const BYTES_A_SECOND: f64 = 1.6e6 / 8.0;
const ROUND_TRIP_MS: u32 = 150;
/// Choices that are timed.
const CHOICES: usize = 20;

/// Notes when something is first to be seen, and how long the page is blocked.
const WATCH: &str = "window.seen = {}; window.blocked = []; \
    new PerformanceObserver((list) => { for (const e of list.getEntries()) window.blocked.push(e.duration); }) \
      .observe({ type: 'longtask', buffered: true }); \
    const note = (name, is) => { if (!(name in window.seen) && is) window.seen[name] = performance.now(); }; \
    const look = () => { const host = document.querySelector('fit-up'); const root = host?.shadowRoot; \
      note('words', host && (root ? root.textContent : host.textContent).trim() !== ''); \
      note('options', root?.querySelector('.sheet #step-machine')); \
      if (!('options' in window.seen)) requestAnimationFrame(look); }; \
    requestAnimationFrame(look);";

fn main() -> ExitCode {
    println!(
        "| processor | first words | options ready | choose → painted, p50 / p95 | longest block | blocked beyond 50 ms |"
    );
    println!("| --- | --- | --- | --- | --- | --- |");
    for slower in SLOWER {
        browse("start", LAPTOP, async |page| {
            let row = measured(&page, slower).await?;
            println!("| {slower}× | {row} |");
            Ok(())
        });
    }
    ExitCode::SUCCESS
}

async fn measured(page: &Page, slower: u32) -> Outcome<String> {
    page.browser().set_script_timeout(Duration::from_mins(2)).await?;
    page.cdp("Page.addScriptToEvaluateOnNewDocument", json!({ "source": WATCH })).await?;
    page.cdp("Network.enable", json!({})).await?;
    let network = json!({
        "offline": false, "latency": ROUND_TRIP_MS, "downloadThroughput": BYTES_A_SECOND, "uploadThroughput": BYTES_A_SECOND
    });
    page.cdp("Network.emulateNetworkConditions", network).await?;
    page.cdp("Emulation.setCPUThrottlingRate", json!({ "rate": slower })).await?;
    page.open("").await?;
    page.until("the options", "'options' in window.seen").await?;
    let seen = |name: &str| format!("Math.round(window.seen.{name})");
    let (words, options) = (page.value(&seen("words")).await?, page.value(&seen("options")).await?);
    let block = "[Math.round(Math.max(0, ...window.blocked)), Math.round(window.blocked.reduce((sum, ms) => sum + ms - 50, 0))]";
    let blocked = page.value(block).await?;
    let [half, most] = choices(page).await?;
    Ok(format!("{words} ms | {options} ms | {half} / {most} ms | {} ms | {} ms", blocked[0], blocked[1]))
}

/// Milliseconds from a click on an option until the frame in which its label stands in the step: half of them, and all but one
/// in twenty, are quicker.
async fn choices(page: &Page) -> Outcome<[Value; 2]> {
    let script = "const done = arguments[1]; (async () => {
        const root = document.querySelector('fit-up').shadowRoot;
        const frame = () => new Promise((next) => requestAnimationFrame(next));
        const until = async (is) => { while (!is()) await frame(); };
        root.querySelector('#step-implement').click();
        await until(() => root.querySelectorAll('#options-implement .card').length > 1);
        const times = [];
        for (let at = 0; at < arguments[0]; at += 1) {
            const cards = [...root.querySelectorAll('#options-implement .card')];
            const card = cards.find((c) => c.getAttribute('aria-selected') !== 'true' && c.querySelector('.card-name').textContent
                !== root.querySelector('#step-implement .step-choice').textContent);
            const name = card.querySelector('.card-name').textContent;
            const begun = performance.now();
            card.click();
            await until(() => root.querySelector('#step-implement .step-choice').textContent === name);
            times.push(performance.now() - begun);
            await new Promise((next) => setTimeout(next, 300));
        }
        times.sort((a, b) => a - b);
        done([times[Math.floor(times.length / 2)], times[Math.ceil(times.length * 0.95) - 1]].map(Math.round));
    })();";
    let times = page.browser().execute_async(script, vec![CHOICES.into()]).await?.json().clone();
    Ok([times[0].clone(), times[1].clone()])
}
