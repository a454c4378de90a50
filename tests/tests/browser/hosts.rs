//! A dealer's page with a catalogue of its own, on nginx, Apache and plain object storage.

use fitup_tests::browser::{Host, LAPTOP, Site, browse};

fn served(host: Host, name: &str) {
    browse(name, LAPTOP, async |page| {
        let port = page.site().port();
        page.site().stop();
        *page.site() = Site::hosted(host, port)?;
        page.open("").await?;
        page.until("the sheet", "widget.querySelector('.sheet') != null").await?;
        page.until("its catalogue", "widget.querySelector('.bar-catalogue').textContent !== ''").await?;
        page.click("#step-machine").await?;
        page.until("the options", "widget.querySelector('#options-machine .card .verdict') != null").await?;
        let headers = "(async () => { const told = {}; for (const name of ['fitup-engine_bg.wasm', 'fit-up.js', 'fitup-engine.d.ts', \
             'manifest.webmanifest', 'fonts/sheet-lettering.woff2', 'words/en.txt']) { const { headers } = await fetch('fit-up/' + name); \
             told[name] = ['content-type', 'content-encoding', 'cache-control', 'content-security-policy'].map((h) => headers.get(h)); } \
             window.told = told; })()";
        page.value(&format!("void {headers}")).await?;
        page.until("the headers", "window.told").await?;
        let told = page.value("window.told").await?;
        let of = |file: &str, at: usize| told[file][at].as_str().unwrap_or_default().to_owned();
        for (file, kind) in [
            ("fitup-engine_bg.wasm", "application/wasm"),
            ("fit-up.js", "text/javascript"),
            ("fitup-engine.d.ts", "text/plain"),
            ("manifest.webmanifest", "application/manifest+json"),
            ("fonts/sheet-lettering.woff2", "font/woff2"),
            ("words/en.txt", "text/plain"),
        ] {
            assert!(of(file, 0).starts_with(kind), "{host:?}: {file} is {}", of(file, 0));
        }
        if host != Host::Objects {
            assert!(["br", "gzip"].contains(&of("fitup-engine_bg.wasm", 1).as_str()), "{told}");
            assert_eq!(of("fit-up.js", 2), "no-cache");
            assert!(of("fit-up.js", 3).contains("script-src 'self' 'wasm-unsafe-eval'"), "{told}");
        }
        // What is held and still fresh is not sent again.
        let again = "(async () => { const first = await fetch('fit-up/fit-up.js', { cache: 'no-store' }); const tag = first.headers.get('etag'); \
             const second = await fetch('fit-up/fit-up.js', { cache: 'no-store', headers: { 'If-None-Match': tag } }); window.again = [tag, second.status]; })()";
        page.value(&format!("void {again}")).await?;
        page.until("the second answer", "window.again").await?;
        let again = page.value("window.again").await?;
        assert!(again[0].is_string() && again[1] == 304, "{host:?}: {again}");
        assert_eq!(page.errors().await?, Vec::<String>::new());
        Ok(())
    });
}

#[test]
fn nginx_serves_it_by_the_example() {
    served(Host::Nginx, "host-nginx");
}

#[test]
fn apache_serves_it_by_the_example() {
    served(Host::Apache, "host-apache");
}

#[test]
fn plain_object_storage_serves_it_with_the_types_of_the_example() {
    served(Host::Objects, "host-objects");
}
