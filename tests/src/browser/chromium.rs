//! A Chromium with its driver, quit whatever happens.

use std::any::Any;
use std::future::poll_fn;
use std::net::{TcpListener, TcpStream};
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::pin::pin;
use std::process::Command;
use std::task::Poll;
use std::time::{Duration, Instant};

use thirtyfour::prelude::*;
use thirtyfour::{ChromiumLikeCapabilities, DesiredCapabilities, LoggingPrefsLogLevel};

use super::process::Process;
use super::{DEADLINE, Outcome, Page, Screen, Site, trouble};

const FLAGS: [&str; 9] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-dev-shm-usage",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--hide-scrollbars",
];

/// Serves the site, opens a browser with this screen, and runs `visit`.
///
/// `name` names what is kept when it fails.
///
/// # Panics
/// With everything known about it, if the visit fails or the browser does not start.
pub fn browse<V>(name: &str, screen: Screen, visit: V)
where
    V: AsyncFnOnce(Page) -> Outcome,
{
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime starts");
    if let Err(trouble) = runtime.block_on(session(name, screen, visit)) {
        panic!("{name}: {trouble}");
    }
}

async fn session<V>(name: &str, screen: Screen, visit: V) -> Outcome
where
    V: AsyncFnOnce(Page) -> Outcome,
{
    let site = Site::serve()?;
    let port = TcpListener::bind("127.0.0.1:0")?.local_addr()?.port();
    let mut driver = Process::start(Command::new("chromedriver").arg(format!("--port={port}")))?;
    answering(&mut driver, port).await?;
    let mut wishes = DesiredCapabilities::chrome();
    for flag in FLAGS {
        wishes.add_arg(flag)?;
    }
    if let Some(binary) = std::env::var("FITUP_CHROMIUM").ok().filter(|path| !path.is_empty()) {
        wishes.set_binary(&binary)?;
    }
    wishes.set_browser_log_level(LoggingPrefsLogLevel::All)?;
    let browser = WebDriver::new(format!("http://127.0.0.1:{port}"), wishes).await?;
    let page = Page::new(browser.clone(), site);
    let visited = caught(async {
        page.show_on(screen).await?;
        visit(page.clone()).await
    })
    .await;
    let failed = !matches!(visited, Ok(Ok(())));
    let told = if failed { last_words(&page, name).await } else { String::new() };
    browser.quit().await?;
    match visited {
        Ok(visited) => visited.map_err(|error| trouble(format!("{error}{told}"))),
        Err(panic) => {
            eprintln!("{name}:{told}");
            resume_unwind(panic)
        }
    }
}

/// A visit's end, be it a failed assertion: the browser is quit all the same.
async fn caught(visit: impl Future<Output = Outcome>) -> Result<Outcome, Box<dyn Any + Send>> {
    let mut visit = pin!(visit);
    poll_fn(|context| match catch_unwind(AssertUnwindSafe(|| visit.as_mut().poll(context))) {
        Ok(polled) => polled.map(Ok),
        Err(panic) => Poll::Ready(Err(panic)),
    })
    .await
}

/// What is known when a visit fails: where the picture is, and the browser's log.
async fn last_words(page: &Page, name: &str) -> String {
    let picture = match page.screenshot(&format!("failed-{name}")).await {
        Ok(path) => path.display().to_string(),
        Err(error) => format!("none ({error})"),
    };
    let log = page.log().await.unwrap_or_default().join("\n  ");
    format!("\n  picture: {picture}\n  browser log:\n  {log}")
}

async fn answering(driver: &mut Process, port: u16) -> Outcome {
    let started = Instant::now();
    while TcpStream::connect(("127.0.0.1", port)).is_err() {
        if driver.has_ended() || started.elapsed() > DEADLINE {
            return Err(trouble(format!("chromedriver does not answer on port {port}: cargo xtask tools")));
        }
        tokio::time::sleep(Duration::from_millis(20)).await;
    }
    Ok(())
}
