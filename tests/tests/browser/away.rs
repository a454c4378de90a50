//! The end of the way: what is taken along, and what the page is told of it.

use fitup_catalogue::{BuildFile, link};
use fitup_tests::browser::{LAPTOP, Outcome, PHONE, Page, Saved, browse};
use serde_json::json;

use crate::widget::{desk, fragment, open, story};

/// Opens a story and what is taken along of it.
async fn take_away(page: &Page, name: &str) -> Outcome {
    let desk = desk();
    open(page, &fragment(&desk, &story(&desk, name))).await?;
    page.value(
        "(() => { window.shared = []; document.addEventListener('fitup-share', (e) => shared.push(e.detail)); })()",
    )
    .await?;
    page.click(".bar-tools [aria-label='Take it with you']").await?;
    page.find(".away[open] .qr").await.map(drop)
}

/// Clicks the way with this name.
async fn go(page: &Page, name: &str) -> Outcome {
    page.value(&format!(
        "(() => {{ for (const e of widget.querySelectorAll('.away-buttons .button')) \
         e.toggleAttribute('data-wanted', e.textContent === {}); }})()",
        json!(name)
    ))
    .await?;
    page.click(".away-buttons [data-wanted]").await
}

#[test]
fn the_code_on_the_screen_is_the_link_and_the_link_opens_the_build() {
    browse("away-code", PHONE, async |page| {
        for scheme in ["light", "dark"] {
            page.cdp(
                "Emulation.setEmulatedMedia",
                json!({ "features": [{ "name": "prefers-color-scheme", "value": scheme }] }),
            )
            .await?;
            take_away(&page, "measured").await?;
            page.settled().await?;
            let shown = page.value("widget.querySelector('.away-link input').value").await?;
            let code = page.find(".qr").await?;
            code.scroll_into_view().await?;
            let read = fitup_tests::browser::read_code(&code.screenshot_as_png().await?)?;
            assert_eq!(json!(read), shown, "{scheme}");
            let desk = desk();
            let text = link::write(&BuildFile::of(desk.catalogue(), &story(&desk, "measured")));
            assert!(read.ends_with(&format!("#fit-up={text}")), "{read}");
        }
        Ok(())
    });
}

#[test]
fn link_and_text_are_copied_and_the_page_is_told() {
    browse("away-copy", LAPTOP, async |page| {
        let permissions = ["clipboardReadWrite", "clipboardSanitizedWrite"];
        page.cdp("Browser.grantPermissions", json!({ "permissions": permissions })).await?;
        take_away(&page, "two-holes").await?;
        go(&page, "Copy the link").await?;
        page.until("the copy", "widget.querySelector('.away-told').textContent === 'Copied.'").await?;
        let link = page.value("widget.querySelector('.away-link input').value").await?;
        assert_eq!(page.promised("navigator.clipboard.readText()").await?, link);
        go(&page, "Copy as text").await?;
        page.until("the event", "shared.length === 2").await?;
        let text = page.promised("navigator.clipboard.readText()").await?;
        let text = text.as_str().unwrap_or_default();
        assert!(text.starts_with("Wren, open + ") && !text.contains("Still to be checked"), "{text}");
        assert!(text.contains(link.as_str().unwrap_or_default()), "{text}");
        let told = page.value("shared").await?;
        assert_eq!((&told[0]["kind"], &told[1]["kind"]), (&json!("link"), &json!("text")));
        let desk = desk();
        let file = BuildFile::read(&told[0]["build"].to_string()).expect("a build file");
        assert_eq!(file, BuildFile::of(desk.catalogue(), &story(&desk, "two-holes")));
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn where_copying_and_sharing_are_refused_the_text_stands_there_to_be_copied_by_hand() {
    browse("away-refused", LAPTOP, async |page| {
        take_away(&page, "listed").await?;
        page.value("void Object.defineProperty(navigator, 'clipboard', { value: undefined, configurable: true })")
            .await?;
        go(&page, "Copy as text").await?;
        assert!(page.text(".away-refused p").await?.contains("by hand"));
        page.until("the text", "widget.querySelector('.away-refused textarea').value.startsWith('Wren, open + ')")
            .await?;
        assert_eq!(page.value("shared.length").await?, 0);
        // A device that shares: it is asked; one that is left off says nothing.
        page.keys("\u{e00c}").await?;
        page.until("it to close", "widget.querySelector('.away') == null").await?;
        page.value(
            "(() => { navigator.share = (it) => { window.asked = it; return window.answer ?? Promise.reject(new DOMException('', 'AbortError')); }; })()",
        )
        .await?;
        page.click(".title-on .button").await?;
        page.find(".away[open] .qr").await?;
        go(&page, "Share").await?;
        page.until("the device to be asked", "asked?.url.includes('#fit-up=1.')").await?;
        assert_eq!(page.count(".away-refused").await?, 0);
        page.value("(() => { window.answer = Promise.resolve(); })()").await?;
        go(&page, "Share").await?;
        page.until("the event", "shared.at(-1)?.kind === 'share'").await
    });
}

#[test]
fn table_and_file_are_saved_under_the_strict_policy_and_the_dealer_is_written_to() {
    browse("away-files", LAPTOP, async |page| {
        let saved = Saved::by(&page).await?;
        page.value("document.querySelector('fit-up').setAttribute('contact', 'dealer@example.com')").await.ok();
        take_away(&page, "sleeve").await?;
        page.value("document.querySelector('fit-up').setAttribute('contact', 'dealer@example.com')").await?;
        go(&page, "Parts as a table (CSV)").await?;
        let (name, table) = saved.next("csv").await?;
        assert!(name.starts_with("heron_crane-frame-pinned"), "{name}");
        assert!(table.starts_with("\u{feff}\"Item\",\"Name\"") && table.contains("\"Crane frame"), "{table}");
        go(&page, "Build as a file (JSON)").await?;
        let (_, file) = saved.next("json").await?;
        let desk = desk();
        assert_eq!(
            BuildFile::read(&file).expect("a build file"),
            BuildFile::of(desk.catalogue(), &story(&desk, "sleeve"))
        );
        let href = "[...widget.querySelectorAll('.away-buttons a')].find((a) => a.href.startsWith('mailto:')).href";
        let mail = page.value(href).await?;
        assert!(mail.as_str().is_some_and(|it| it.starts_with("mailto:dealer@example.com?subject=Heron")), "{mail}");
        page.value("document.querySelector('fit-up').setAttribute('contact', 'x@y?bcc=z@z')").await?;
        page.until("no address", &format!("({href}).startsWith('mailto:?subject=')")).await?;
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn escape_closes_it_and_the_focus_is_where_it_was() {
    browse("away-focus", LAPTOP, async |page| {
        take_away(&page, "listed").await?;
        let inside = "widget.querySelector('.away').contains(widget.activeElement)";
        page.until("the focus inside", inside).await?;
        for _ in 0..12 {
            page.keys("\u{e004}").await?;
            assert_ne!(
                page.value("widget.activeElement?.closest('.sheet') != null").await?,
                true,
                "it left the dialog"
            );
        }
        page.keys("\u{e00c}").await?;
        page.until("it to close", "widget.querySelector('.away') == null").await?;
        assert_eq!(page.value("widget.activeElement?.getAttribute('aria-label')").await?, "Take it with you");
        Ok(())
    });
}

#[test]
fn at_a_counter_the_code_is_the_only_way_out() {
    browse("away-kiosk", LAPTOP, async |page| {
        let desk = desk();
        page.open(&format!("kiosk.html{}", fragment(&desk, &story(&desk, "listed")))).await?;
        page.click(".title-on .button").await?;
        let code = page.find(".away[open] .qr").await?;
        assert_eq!(page.count(".away-ways, .away a").await?, 0);
        page.settled().await?;
        let read = fitup_tests::browser::read_code(&code.screenshot_as_png().await?)?;
        assert!(!read.contains("kiosk.html") && read.contains("/#fit-up=1."), "it leads to the start page: {read}");
        Ok(())
    });
}
