//! A small server for the built site, strict as a dealer's would be.

use std::error::Error;
use std::fs;
use std::net::{SocketAddr, TcpListener};
use std::path::{Component, Path, PathBuf};

use tiny_http::{Header, Request, Response, Server, StatusCode};

use crate::build::{dist, release};
use crate::failure::{Failure, failure};
use crate::flag_value;
use crate::site::{FINGERPRINT_OF_NOTHING, fingerprint};

/// What the pages are allowed: nothing but their own files.
pub const POLICY: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; connect-src 'self'; \
     img-src 'self' data:; font-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; \
     frame-ancestors 'self'";

/// Builds the release site and serves it until stopped; `--from FOLDER` serves another folder. `--types TABLE` serves as plain object
/// storage does: each file with the type that the table (CSV: ending, content type) has for it, and nothing else.
pub fn command(arguments: &[String]) -> Result<(), Failure> {
    let port: u16 = match flag_value(arguments, "--port")? {
        None => 8080,
        Some(text) => text.parse().map_err(|_| {
            failure("reading --port", format!("{text:?} is not a port"), "give a number from 0 to 65535")
        })?,
    };
    if !arguments.iter().any(|argument| argument == "--no-build") {
        release()?;
    }
    let site = flag_value(arguments, "--from")?.map_or_else(dist, PathBuf::from);
    let types = flag_value(arguments, "--types")?.map(|file| read_types(Path::new(&file))).transpose()?;
    let (address, servers) = listen(port).map_err(|error| {
        failure(format!("listening on 127.0.0.1:{port}"), error.to_string(), "choose another with --port N")
    })?;
    println!("http://{address}/");
    eprintln!("serving {} (stop with Ctrl-C)", site.display());
    std::thread::scope(|scope| {
        for server in &servers {
            for _ in 0..WORKERS {
                scope.spawn(|| {
                    for request in server.incoming_requests() {
                        // A visitor who hangs up is no failure of the server.
                        let _ = match &types {
                            Some(types) => answer_plainly(request, &site, types),
                            None => answer(request, &site),
                        };
                    }
                });
            }
        }
    });
    Ok(())
}

/// Listeners on the one port, as many as a browser opens connections: six for a page and as many for its workers. A server reads
/// from four connections at a time; one that is kept open holds its reader until the browser lets it go.
const SERVERS: usize = 12;
/// Requests each listener answers at the same time: one slow visitor does not hold up the rest.
const WORKERS: usize = 4;

fn listen(port: u16) -> Result<(SocketAddr, Vec<Server>), Box<dyn Error + Send + Sync>> {
    let listener = TcpListener::bind(("127.0.0.1", port))?;
    let servers = (0..SERVERS).map(|_| Server::from_listener(listener.try_clone()?, None)).collect::<Result<_, _>>()?;
    Ok((listener.local_addr()?, servers))
}

fn answer(request: Request, site: &Path) -> std::io::Result<()> {
    let path = request.url().split(['?', '#']).next().unwrap_or_default().to_owned();
    let Some(file) = resolve(site, &path).filter(|file| file.is_file()) else {
        return request.respond(Response::from_string("not found\n").with_status_code(StatusCode(404)));
    };
    let accepts = |coding: &str| {
        request
            .headers()
            .iter()
            .any(|header| header.field.equiv("Accept-Encoding") && header.value.as_str().contains(coding))
    };
    let coded = [("br", "br"), ("gzip", "gz")].into_iter().find_map(|(coding, suffix)| {
        let beside = PathBuf::from(format!("{}.{suffix}", file.display()));
        (accepts(coding) && beside.is_file()).then_some((coding, beside))
    });
    let body = fs::read(coded.as_ref().map_or(&file, |(_, beside)| beside))?;
    let tag = tag_of(&body);
    let known = holds(&request, &tag);
    // Names do not change with their contents, so every visit asks whether what it holds is fresh.
    let (status, body) = if known { (StatusCode(304), Vec::new()) } else { (StatusCode(200), body) };
    let mut response = Response::from_data(body)
        .with_status_code(status)
        .with_header(header("ETag", &tag))
        .with_header(header("Content-Type", content_type(&file)))
        .with_header(header("Content-Security-Policy", POLICY))
        .with_header(header("X-Content-Type-Options", "nosniff"))
        .with_header(header("Referrer-Policy", "no-referrer"))
        .with_header(header("Vary", "Accept-Encoding"))
        .with_header(header("Cache-Control", "no-cache"));
    if let Some((coding, _)) = coded {
        response = response.with_header(header("Content-Encoding", coding));
    }
    request.respond(response)
}

/// Endings and content types.
type Types = Vec<(String, String)>;

fn read_types(file: &Path) -> Result<Types, Failure> {
    let told =
        |error: String| failure(format!("reading {}", file.display()), error, "give a table: ending, content type");
    let text = fs::read_to_string(file).map_err(|error| told(error.to_string()))?;
    let row = |line: &str| line.split_once(',').map(|(ending, kind)| (ending.to_owned(), kind.to_owned()));
    text.lines().skip(1).map(|line| row(line).ok_or_else(|| told(format!("no comma in {line:?}")))).collect()
}

fn answer_plainly(request: Request, site: &Path, types: &Types) -> std::io::Result<()> {
    let path = request.url().split(['?', '#']).next().unwrap_or_default().to_owned();
    let Some(file) = resolve(site, &path).filter(|file| file.is_file()) else {
        return request.respond(Response::from_string("not found\n").with_status_code(StatusCode(404)));
    };
    let body = fs::read(&file)?;
    let tag = tag_of(&body);
    let ending = file.extension().and_then(|ending| ending.to_str()).unwrap_or_default();
    let kind = types.iter().find(|(known, _)| known == ending).map_or("application/octet-stream", |(_, kind)| kind);
    let (status, body) = if holds(&request, &tag) { (304, Vec::new()) } else { (200, body) };
    let response = Response::from_data(body).with_status_code(StatusCode(status));
    request.respond(response.with_header(header("ETag", &tag)).with_header(header("Content-Type", kind)))
}

fn tag_of(body: &[u8]) -> String {
    format!("\"{:016x}\"", fingerprint(FINGERPRINT_OF_NOTHING, body))
}

/// Whether the visitor holds what has this tag.
fn holds(request: &Request, tag: &str) -> bool {
    request.headers().iter().any(|header| {
        header.field.equiv("If-None-Match") && header.value.as_str().split(',').any(|held| held.trim() == tag)
    })
}

/// The file a path names, if it stays inside the site.
fn resolve(site: &Path, path: &str) -> Option<PathBuf> {
    let relative = Path::new(path.trim_start_matches('/'));
    if relative.components().any(|component| !matches!(component, Component::Normal(_))) {
        return path.chars().all(|c| c == '/').then(|| site.join("index.html"));
    }
    let file = site.join(relative);
    Some(if file.is_dir() || relative.as_os_str().is_empty() { file.join("index.html") } else { file })
}

fn header(name: &str, value: &str) -> Header {
    Header::from_bytes(name, value).expect("names and values here are plain ASCII")
}

fn content_type(file: &Path) -> &'static str {
    match file.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("json") => "application/json",
        Some("wasm") => "application/wasm",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("woff2") => "font/woff2",
        Some("webmanifest") => "application/manifest+json",
        _ => "text/plain; charset=utf-8",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn paths_stay_inside_the_site() {
        let site = Path::new("/site");
        assert_eq!(resolve(site, "/"), Some("/site/index.html".into()));
        assert_eq!(resolve(site, "/a/b.js"), Some("/site/a/b.js".into()));
        assert_eq!(resolve(site, "/../etc/passwd"), None);
        assert_eq!(resolve(site, "/a/../../etc/passwd"), None);
    }
}
