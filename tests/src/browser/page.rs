//! The page under test: what a person sees of the widget and does to it.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use thirtyfour::prelude::*;

use super::site::root;
use super::{Outcome, Screen, Site, trouble};

/// How long a look at the page is repeated before it counts as failed.
pub const DEADLINE: Duration = Duration::from_secs(20);
/// Pause between two looks.
const PAUSE: Duration = Duration::from_millis(25);

/// The shadow root of the page's first widget, `null` before the element is defined.
const WIDGET: &str = "(document.querySelector('fit-up')?.shadowRoot ?? null)";

/// A browser's page showing the site. Clones are the same page.
#[derive(Debug, Clone)]
pub struct Page {
    browser: WebDriver,
    site: Arc<Mutex<Site>>,
    base: Arc<str>,
    log: Arc<Mutex<Vec<String>>>,
}

impl Page {
    pub(super) fn new(browser: WebDriver, site: Site) -> Self {
        let base = site.address.as_str().into();
        Self { browser, site: Arc::new(Mutex::new(site)), base, log: Arc::default() }
    }

    /// The browser itself, for what this page does not offer.
    pub fn browser(&self) -> &WebDriver {
        &self.browser
    }

    /// The server, to stop it.
    pub fn site(&self) -> MutexGuard<'_, Site> {
        self.site.lock().unwrap_or_else(PoisonError::into_inner)
    }

    /// Makes the window such a screen, with a finger or a mouse.
    ///
    /// # Errors
    /// The browser refuses.
    pub async fn show_on(&self, screen: Screen) -> Outcome {
        let Screen { width, height, scale, touch, .. } = screen;
        self.cdp(
            "Emulation.setDeviceMetricsOverride",
            json!({ "width": width, "height": height, "deviceScaleFactor": scale, "mobile": touch }),
        )
        .await?;
        let points = if touch { 5 } else { 1 };
        self.cdp("Emulation.setTouchEmulationEnabled", json!({ "enabled": touch, "maxTouchPoints": points })).await?;
        Ok(())
    }

    /// Opens an address of the site, such as `""`, `"#b=…"` or `"kiosk.html"`, and waits until the
    /// widget stands in its shadow root.
    ///
    /// # Errors
    /// The page does not load or the widget does not appear.
    pub async fn open(&self, address: &str) -> Outcome {
        let target = format!("{}{address}", self.base);
        if address.starts_with('#') {
            // A change of the fragment alone would not load the page.
            self.browser.goto("about:blank").await?;
        }
        self.browser.goto(&target).await?;
        self.standing(&target).await
    }

    /// Loads the page again.
    ///
    /// # Errors
    /// As [`Page::open`].
    pub async fn reload(&self) -> Outcome {
        self.browser.refresh().await?;
        self.standing("the reloaded page").await
    }

    async fn standing(&self, what: &str) -> Outcome {
        self.until(&format!("the widget of {what}"), &format!("{WIDGET}?.querySelector('[part=root] *') != null")).await
    }

    /// The page's address.
    ///
    /// # Errors
    /// The browser does not answer.
    pub async fn address(&self) -> Outcome<String> {
        Ok(self.browser.current_url().await?.to_string())
    }

    /// Goes back in the history.
    ///
    /// # Errors
    /// The browser does not answer.
    pub async fn back(&self) -> Outcome {
        Ok(self.browser.back().await?)
    }

    /// Goes forward in the history.
    ///
    /// # Errors
    /// The browser does not answer.
    pub async fn forward(&self) -> Outcome {
        Ok(self.browser.forward().await?)
    }

    /// The value of an expression; in it `widget` is the widget's shadow root.
    ///
    /// # Errors
    /// The expression throws.
    pub async fn value(&self, expression: &str) -> Outcome<Value> {
        let script = format!("const widget = {WIDGET}; return ({expression});");
        Ok(self.browser.execute(script, Vec::new()).await?.json().clone())
    }

    /// What comes of a promise; in the expression `widget` is the widget's shadow root.
    ///
    /// # Errors
    /// It is refused.
    pub async fn promised(&self, expression: &str) -> Outcome<Value> {
        let script = format!(
            "const widget = {WIDGET}, done = arguments[arguments.length - 1]; \
             ({expression}).then((it) => done([it]), (error) => done(String(error)));"
        );
        match self.browser.execute_async(script, Vec::new()).await?.json() {
            Value::Array(kept) => Ok(kept.first().cloned().unwrap_or_default()),
            refused => Err(trouble(format!("{expression}: {refused}"))),
        }
    }

    /// Waits until an expression is true; in it `widget` is the widget's shadow root.
    ///
    /// # Errors
    /// It is not true within the deadline.
    pub async fn until(&self, what: &str, expression: &str) -> Outcome {
        let started = Instant::now();
        loop {
            let last = self.value(&format!("!!({expression})")).await;
            if matches!(last, Ok(Value::Bool(true))) {
                return Ok(());
            }
            if started.elapsed() > DEADLINE {
                let why = last.err().map(|error| format!(" ({error})")).unwrap_or_default();
                return Err(trouble(format!("waited {DEADLINE:?} in vain for {what}{why}")));
            }
            tokio::time::sleep(PAUSE).await;
        }
    }

    /// The first element inside the widget that the selector names, as soon as it is there.
    ///
    /// # Errors
    /// It is not there within the deadline.
    pub async fn find(&self, selector: &str) -> Outcome<WebElement> {
        let script = format!("return {WIDGET}?.querySelector(arguments[0]) ?? null;");
        let started = Instant::now();
        loop {
            let found = self.browser.execute(script.as_str(), vec![json!(selector)]).await?;
            if !found.json().is_null() {
                return Ok(found.element()?);
            }
            if started.elapsed() > DEADLINE {
                return Err(trouble(format!("nothing matches {selector}")));
            }
            tokio::time::sleep(PAUSE).await;
        }
    }

    /// How many elements inside the widget the selector names now.
    ///
    /// # Errors
    /// The selector is not one.
    pub async fn count(&self, selector: &str) -> Outcome<u64> {
        let count = self.value(&format!("widget?.querySelectorAll({}).length ?? 0", json!(selector))).await?;
        Ok(count.as_u64().unwrap_or_default())
    }

    /// The text a person sees in an element.
    ///
    /// # Errors
    /// As [`Page::find`].
    pub async fn text(&self, selector: &str) -> Outcome<String> {
        self.find(selector).await?;
        let text = self.value(&format!("widget.querySelector({}).innerText", json!(selector))).await?;
        Ok(text.as_str().unwrap_or_default().to_owned())
    }

    /// The texts of all elements that the selector names now.
    ///
    /// # Errors
    /// The selector is not one.
    pub async fn texts(&self, selector: &str) -> Outcome<Vec<String>> {
        let script = format!("[...(widget?.querySelectorAll({}) ?? [])].map((e) => e.innerText)", json!(selector));
        Ok(serde_json::from_value(self.value(&script).await?)?)
    }

    /// Clicks an element, once it is there and nothing covers it.
    ///
    /// # Errors
    /// It cannot be clicked within the deadline.
    pub async fn click(&self, selector: &str) -> Outcome {
        let started = Instant::now();
        loop {
            let element = self.find(selector).await?;
            // Scrolling can meet an element that is being replaced: the click says so then.
            let _ = element.scroll_into_view().await;
            match element.click().await {
                Ok(()) => return Ok(()),
                Err(error) if started.elapsed() > DEADLINE => {
                    return Err(trouble(format!("{selector} cannot be clicked: {error}")));
                }
                Err(_) => tokio::time::sleep(PAUSE).await,
            }
        }
    }

    /// Taps an element with a finger.
    ///
    /// # Errors
    /// It is not there, or the browser refuses.
    pub async fn tap(&self, selector: &str) -> Outcome {
        self.find(selector).await?;
        let middle = self
            .value(&format!(
                "(() => {{ const e = widget.querySelector({}); e.scrollIntoView({{ block: 'center' }}); \
                 const r = e.getBoundingClientRect(); return {{ x: r.x + r.width / 2, y: r.y + r.height / 2 }}; }})()",
                json!(selector)
            ))
            .await?;
        self.cdp("Input.dispatchTouchEvent", json!({ "type": "touchStart", "touchPoints": [middle] })).await?;
        self.cdp("Input.dispatchTouchEvent", json!({ "type": "touchEnd", "touchPoints": [] })).await?;
        Ok(())
    }

    /// Presses keys where the focus is.
    ///
    /// # Errors
    /// The browser does not answer.
    pub async fn keys(&self, keys: impl AsRef<str>) -> Outcome {
        Ok(self.browser.action_chain().send_keys(keys.as_ref()).perform().await?)
    }

    /// Writes a text into a field, in place of what stood there.
    ///
    /// # Errors
    /// The field is not there or takes no text.
    pub async fn write(&self, selector: &str, text: &str) -> Outcome {
        let field = self.find(selector).await?;
        field.clear().await?;
        Ok(field.send_keys(text).await?)
    }

    /// The element that has the focus inside the widget, as `tag#id.class`; empty if none has.
    ///
    /// # Errors
    /// The browser does not answer.
    pub async fn focused(&self) -> Outcome<String> {
        let described = "((e) => e ? e.tagName.toLowerCase() + (e.id ? '#' + e.id : '') \
                         + [...e.classList].map((c) => '.' + c).join('') : '')(widget?.activeElement)";
        Ok(self.value(described).await?.as_str().unwrap_or_default().to_owned())
    }

    /// Sends a command of Chromium's own protocol.
    ///
    /// # Errors
    /// Chromium refuses it.
    pub async fn cdp(&self, method: &str, parameters: Value) -> Outcome<Value> {
        Ok(self.browser.cdp().send_raw(method, parameters).await?)
    }

    /// Keeps a picture of the window as `target/screens/NAME.png`.
    ///
    /// # Errors
    /// The browser does not answer or the folder cannot be written.
    pub async fn screenshot(&self, name: &str) -> Outcome<PathBuf> {
        let folder = screens();
        std::fs::create_dir_all(&folder)?;
        let path = folder.join(format!("{name}.png"));
        std::fs::write(&path, self.browser.screenshot_as_png().await?)?;
        Ok(path)
    }

    /// Waits until fonts are loaded and no animation of the widget runs.
    ///
    /// # Errors
    /// It does not come to rest within the deadline.
    pub async fn settled(&self) -> Outcome {
        let rest = "document.fonts.status === 'loaded' && \
                    [...document.getAnimations(), ...(widget?.getAnimations() ?? [])].every((a) => a.playState !== 'running' || \
                    a.effect?.getComputedTiming().iterations === Infinity)";
        self.until("the page to come to rest", rest).await
    }

    /// The browser's log since the page was made, level first.
    ///
    /// # Errors
    /// The browser does not answer.
    pub async fn log(&self) -> Outcome<Vec<String>> {
        let fresh = self.browser.browser_log().await?;
        let mut log = self.log.lock().unwrap_or_else(PoisonError::into_inner);
        log.extend(fresh.into_iter().map(|entry| format!("{} {}", entry.level, entry.message)));
        Ok(log.clone())
    }

    /// The errors of the log: exceptions, refused resources, breaches of the policy.
    ///
    /// # Errors
    /// The browser does not answer.
    pub async fn errors(&self) -> Outcome<Vec<String>> {
        Ok(self.log().await?.into_iter().filter(|line| line.starts_with("SEVERE")).collect())
    }
}

/// Where pictures are kept.
fn screens() -> PathBuf {
    std::env::var_os("FITUP_SCREENS").map_or_else(|| root().join("target/screens"), |folder| Path::new(&folder).into())
}
