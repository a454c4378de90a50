//! What is new arrives: catalogues at once, the program when the reader says so.

use fitup_tests::browser::{Change, LAPTOP, Outcome, Page, Site, browse};

/// Serves the site with files of it changed, in place of the site as it is.
fn changed(page: &Page, changes: &[(&str, &Change<'_>)]) -> Outcome {
    let port = page.site().port();
    page.site().stop();
    *page.site() = Site::serve_changed(port, changes)?;
    Ok(())
}

fn replaced(bytes: Vec<u8>, what: &str, with: &str) -> Vec<u8> {
    let text = String::from_utf8(bytes).expect("it is text");
    assert!(text.contains(what), "{what} stands elsewhere");
    text.replace(what, with).into_bytes()
}

/// The catalogue with another name.
fn renamed(bytes: Vec<u8>) -> Vec<u8> {
    replaced(bytes, "Fit-up demonstration yard", "Another edition")
}

/// A service worker that is of another version.
fn newer(bytes: Vec<u8>) -> Vec<u8> {
    replaced(bytes, "const VERSION = \"", "const VERSION = \"newer-")
}

const CATALOGUE: &str = "catalogue/demo.json";
const NAME: &str = "widget.querySelector('.bar-catalogue')?.textContent";

async fn in_charge(page: &Page) -> Outcome {
    page.until("the service worker to be in charge", "navigator.serviceWorker.controller !== null").await?;
    page.until("the catalogue's copy", "(window.kept ??= setInterval(async () => { window.copies = await caches.has('fit-up kept') && (await (await caches.open('fit-up kept')).keys()).filter((r) => r.url.endsWith('.json')).length; }, 100), window.copies > 0)").await
}

#[test]
fn another_edition_of_the_catalogue_is_shown_at_the_next_visit_and_kept_for_use_without_a_network() {
    browse("updates-catalogue", LAPTOP, async |page| {
        page.open("").await?;
        in_charge(&page).await?;
        changed(&page, &[(CATALOGUE, &|bytes| Some(renamed(bytes)))])?;
        page.reload().await?;
        page.until("the other edition", &format!("{NAME} === 'Another edition'")).await?;
        assert_eq!(page.count("time").await?, 0, "it came over the network");
        page.value("clearInterval(window.kept)").await?;
        page.site().stop();
        page.reload().await?;
        page.until("its copy", &format!("{NAME} === 'Another edition'")).await?;
        page.until("a word on its age", "widget.querySelector('.notice time')?.dateTime.startsWith('20')").await?;
        Ok(())
    });
}

#[test]
fn a_page_and_catalogue_of_ones_own_beside_the_program_are_kept_though_no_build_knew_of_them() {
    browse("updates-own", LAPTOP, async |page| {
        let demo = std::fs::read(fitup_tests::browser::root().join("www").join(CATALOGUE))?;
        let index = std::fs::read_to_string(fitup_tests::browser::root().join("www/kiosk.html"))?;
        let own = index.replace(CATALOGUE, "own.json").replace("mode=\"kiosk\"", "");
        changed(
            &page,
            &[("own.html", &|_| Some(own.clone().into_bytes())), ("own.json", &|_| Some(renamed(demo.clone())))],
        )?;
        page.open("own.html").await?;
        in_charge(&page).await?;
        page.until("its page's copy", "(window.pages ??= setInterval(async () => { window.page = await caches.match(location.href); }, 100), window.page)").await?;
        page.site().stop();
        page.reload().await?;
        page.until("the catalogue of its own", &format!("{NAME} === 'Another edition'")).await?;
        Ok(())
    });
}

#[test]
fn a_new_version_is_announced_and_taken_when_the_reader_says_so() {
    browse("updates-program", LAPTOP, async |page| {
        page.open("").await?;
        in_charge(&page).await?;
        changed(
            &page,
            &[
                ("sw.js", &|bytes| Some(newer(bytes))),
                ("words/en.page.txt", &|bytes| Some(replaced(bytes, "Fit-up shows", "Newly, Fit-up shows"))),
            ],
        )?;
        page.reload().await?;
        page.until("the announcement", "widget.querySelector('.notice .button') != null").await?;
        page.value("window.before = true").await?;
        page.click(".notice .button").await?;
        page.until(
            "the page to be loaded again",
            "window.before === undefined && widget?.querySelector('.sheet') != null",
        )
        .await?;
        let newest = "(window.seen ??= setInterval(async () => { window.programs = (await caches.keys()).filter((n) => n.startsWith('fit-up program')).join(); }, 100), /^fit-up program newer-[^,]*$/.test(window.programs))";
        page.until("the version before to be gone", newest).await?;
        assert_eq!(page.count(".notice").await?, 0);
        Ok(())
    });
}

#[test]
fn a_version_that_does_not_start_gives_way_to_the_one_before() {
    browse("updates-broken", LAPTOP, async |page| {
        page.open("").await?;
        in_charge(&page).await?;
        changed(
            &page,
            &[("sw.js", &|bytes| Some(newer(bytes))), ("element.js", &|_| Some(b"this is no script".to_vec()))],
        )?;
        page.reload().await?;
        page.until("the announcement", "widget.querySelector('.notice .button') != null").await?;
        page.value("window.before = true").await?;
        page.click(".notice .button").await?;
        page.until("the page to be loaded again", "window.before === undefined").await?;
        for _ in 0..3 {
            page.value("location.reload()").await?;
            page.settled().await?;
        }
        page.until(
            "the version before",
            "document.querySelector('fit-up')?.shadowRoot?.querySelector('.sheet') != null",
        )
        .await?;
        Ok(())
    });
}
