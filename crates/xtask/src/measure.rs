//! The start page timed on slower and slower machines, and Lighthouse on the served site.

use std::io::{BufRead, BufReader};
use std::process::{Child, Command, Stdio};

use serde_json::Value;

use crate::build::release;
use crate::failure::{Failure, failure};
use crate::run::quietly;
use crate::test::in_browser;
use crate::tools::{chromium, ensure_browser, ensure_lighthouse, tooled};

/// What has to be reached on the mobile preset, percent.
const LEAST: [(&str, f64); 3] = [("performance", 95.0), ("accessibility", 100.0), ("best-practices", 100.0)];

/// Measures the start page as a phone and as a desk computer would meet it.
pub fn command(_: &[String]) -> Result<(), Failure> {
    release()?;
    ensure_browser()?;
    let mut cargo = in_browser("run")?;
    cargo.args(["--quiet", "--bin", "start"]);
    println!("{}", quietly("start page", &mut cargo, "see that Chromium starts")?);
    ensure_lighthouse()?;
    let site = Served::start()?;
    let mut short = Vec::new();
    for preset in ["mobile", "desktop"] {
        let report = report(&site.address, preset)?;
        println!("{preset}:");
        for (category, least) in LEAST {
            let score = report["categories"][category]["score"].as_f64().unwrap_or_default() * 100.0;
            println!("  {category:<15} {score:>4.0}");
            if preset == "mobile" && score < least {
                short.push(format!("{category} {score:.0} < {least:.0}"));
            }
        }
        for audit in ["first-contentful-paint", "largest-contentful-paint", "total-blocking-time", "total-byte-weight"]
        {
            println!("  {audit:<26} {}", report["audits"][audit]["displayValue"].as_str().unwrap_or("-"));
        }
    }
    if short.is_empty() {
        return Ok(());
    }
    Err(failure("measure", short.join(", "), "look into target/lighthouse-mobile.json"))
}

fn report(address: &str, preset: &str) -> Result<Value, Failure> {
    let path = crate::root().join(format!("target/lighthouse-{preset}.json"));
    let mut lighthouse = tooled("lighthouse");
    lighthouse.args([address, "--quiet", "--output=json", "--chrome-flags=--headless --no-sandbox --disable-gpu"]);
    lighthouse.arg(format!("--output-path={}", path.display()));
    if preset == "desktop" {
        lighthouse.arg("--preset=desktop");
    }
    if let Some(chromium) = chromium() {
        lighthouse.env("CHROME_PATH", chromium);
    }
    quietly(&format!("lighthouse, {preset}"), &mut lighthouse, "see that Chromium starts")?;
    let wrong = |cause: String| failure(format!("reading {}", path.display()), cause, "run the command again");
    let text = std::fs::read_to_string(&path).map_err(|error| wrong(error.to_string()))?;
    serde_json::from_str(&text).map_err(|error| wrong(error.to_string()))
}

/// The site, served by another run of this program as long as this stands.
struct Served {
    address: String,
    server: Child,
}

impl Served {
    fn start() -> Result<Self, Failure> {
        let wrong = |cause: String| failure("starting the server", cause, "run cargo xtask serve --no-build");
        let program = std::env::current_exe().map_err(|error| wrong(error.to_string()))?;
        let mut command = Command::new(program);
        command.args(["serve", "--no-build", "--port", "0"]).stdout(Stdio::piped()).stderr(Stdio::null());
        let mut server = command.spawn().map_err(|error| wrong(error.to_string()))?;
        let mut address = String::new();
        if let Some(output) = server.stdout.take() {
            BufReader::new(output).read_line(&mut address).map_err(|error| wrong(error.to_string()))?;
        }
        Ok(Self { address: address.trim().to_owned(), server })
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        // One that has ended by itself cannot be ended again.
        let _ = self.server.kill();
        let _ = self.server.wait();
    }
}
