//! Running commands: progress while they run, their last words when they fail.

use std::io::{BufRead, BufReader, IsTerminal, Read};
use std::process::{Command, Stdio};
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

use crate::failure::{Failure, failure};

/// Lines of a failed command's output that are shown.
const LAST_WORDS: usize = 60;

/// Runs a command to its end, showing how long it has been running.
///
/// Its output is kept back and shown only if it fails.
pub fn quietly(what: &str, command: &mut Command, mend: &str) -> Result<String, Failure> {
    let started = Instant::now();
    let shown = shown(command);
    command.stdin(Stdio::null()).stdout(Stdio::piped()).stderr(Stdio::piped());
    let mut child = command.spawn().map_err(|error| failure(&shown, error.to_string(), mend))?;
    let lines = Arc::new(Mutex::new(Vec::new()));
    let out = child.stdout.take().expect("piped above");
    let err = child.stderr.take().expect("piped above");
    let readers = [keep(Box::new(out), Arc::clone(&lines)), keep(Box::new(err), Arc::clone(&lines))];
    let mut told = Instant::now();
    let status = loop {
        if let Some(status) = child.try_wait().map_err(|error| failure(&shown, error.to_string(), mend))? {
            break status;
        }
        if told.elapsed() >= pause() {
            told = Instant::now();
            let last = lines.lock().expect("no reader panics").last().cloned().unwrap_or_default();
            let last: String = last.trim().chars().take(90).collect();
            eprintln!("  … {what} ({:.0} s) {last}", started.elapsed().as_secs_f64());
        }
        std::thread::sleep(Duration::from_millis(50));
    };
    for reader in readers {
        // A reader that died lost output, which the status does not depend on.
        let _ = reader.join();
    }
    let lines = lines.lock().expect("no reader panics");
    if status.success() {
        eprintln!("  ✓ {what} ({:.1} s)", started.elapsed().as_secs_f64());
        return Ok(lines.join("\n"));
    }
    let from = lines.len().saturating_sub(LAST_WORDS);
    Err(failure(shown, format!("{status}\n{}", lines[from..].join("\n")), mend))
}

/// The command as one would type it, without the environment it is given.
fn shown(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    words.map(|word| word.to_string_lossy().into_owned()).collect::<Vec<_>>().join(" ")
}

/// How often progress is told: often to a person, seldom to a log.
fn pause() -> Duration {
    Duration::from_secs(if std::io::stderr().is_terminal() { 3 } else { 20 })
}

fn keep(stream: Box<dyn Read + Send>, lines: Arc<Mutex<Vec<String>>>) -> std::thread::JoinHandle<()> {
    std::thread::spawn(move || {
        for line in BufReader::new(stream).split(b'\n').map_while(Result::ok) {
            let line = String::from_utf8_lossy(&line).into_owned();
            lines.lock().expect("no reader panics").push(line);
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_command_prints_comes_back() {
        let printed = quietly("echo", Command::new("echo").arg("fits"), "none").expect("echo works");
        assert_eq!(printed, "fits");
    }

    #[test]
    fn a_failure_says_command_cause_and_mend() {
        let failed = quietly("sh", Command::new("sh").args(["-c", "echo too narrow >&2; exit 3"]), "widen it");
        let told = failed.expect_err("exit 3").to_string();
        for part in ["sh -c", "exit status: 3", "too narrow", "widen it"] {
            assert!(told.contains(part), "{part} in {told}");
        }
        assert!(quietly("none", &mut Command::new("no-such-program-anywhere"), "install it").is_err());
    }
}
