//! The site without a network.

use fitup_tests::browser::{LAPTOP, Site, browse};

#[test]
fn after_one_visit_the_site_works_with_its_server_gone() {
    browse("offline", LAPTOP, async |page| {
        page.open("").await?;
        page.until("the service worker to be in charge", "navigator.serviceWorker.controller !== null").await?;
        page.until(
            "the catalogue to be kept",
            "window.kept || void caches.match('catalogue/demo.json').then((kept) => window.kept = kept !== undefined)",
        )
        .await?;
        let port = page.site().port();
        page.site().stop();
        assert!(std::net::TcpStream::connect(("127.0.0.1", port)).is_err(), "the server still answers");
        page.reload().await?;
        page.open("kiosk.html").await?;
        page.value("document.querySelector('fit-up').setAttribute('lang', 'fr')").await?;
        page.until("another language", "widget.querySelector('.fitup').lang === 'fr'").await?;
        let fetched =
            "fetch('catalogue/demo.json').then((r) => r.json()).then((c) => window.machines = c.machines.length)";
        page.value(&format!("void {fetched}")).await?;
        page.until("the catalogue without a server", "window.machines > 0").await?;
        page.value("void fetch('not-there.json').catch((error) => window.refused = error.name)").await?;
        page.until("what was never kept to be refused", "window.refused === 'TypeError'").await?;
        Ok(())
    });
}

#[test]
fn server_that_comes_back_is_found_again() {
    browse("offline-back", LAPTOP, async |page| {
        page.open("").await?;
        page.until("the sheet", "widget.querySelector('.sheet') != null").await?;
        let port = page.site().port();
        page.site().stop();
        *page.site() = Site::serve_on(port)?;
        page.reload().await?;
        Ok(())
    });
}
