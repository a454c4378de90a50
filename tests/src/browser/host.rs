//! A dealer's site on the servers that dealers have, set up by the examples in `tests/hosting`.

use std::fs;
use std::net::TcpStream;
use std::path::Path;
use std::process::Command;
use std::time::{Duration, Instant};

use super::process::Process;
use super::site::{copy, root};
use super::{DEADLINE, Outcome, Site, trouble};

/// Who serves the site.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Host {
    /// nginx.
    Nginx,
    /// Apache.
    Apache,
    /// Plain object storage: the bytes of each object with the type that is stored with it, and nothing else.
    Objects,
}

impl Site {
    /// Serves a dealer's page with a catalogue of its own and the widget's folder beside it, from a host of its own process, on a
    /// given port.
    ///
    /// # Errors
    /// `dist/` is not built, the host is not installed, or it does not answer.
    pub fn hosted(host: Host, port: u16) -> Outcome<Self> {
        let folder = Self::folder();
        let site = folder.join("site");
        copy(&root().join("dist"), &site.join("fit-up"))?;
        fs::copy(root().join("tests/hosting/index.html"), site.join("index.html"))?;
        fs::copy(root().join("www/catalogue/demo.json"), site.join("catalogue.json"))?;
        let mut command = match host {
            Host::Nginx => nginx(&folder, &site, port)?,
            Host::Apache => apache(&folder, &site, port)?,
            Host::Objects => {
                return Self::serve_with(port, &site, Some(&root().join("tests/hosting/objects.csv")))
                    .map(|site| site.keeping(folder));
            }
        };
        let mut server = Process::start(&mut command)?;
        let started = Instant::now();
        while TcpStream::connect(("127.0.0.1", port)).is_err() {
            if server.has_ended() || started.elapsed() > DEADLINE {
                let log = fs::read_to_string(folder.join("error.log")).unwrap_or_default();
                return Err(trouble(format!("{host:?} does not answer on port {port}: {log}")));
            }
            std::thread::sleep(Duration::from_millis(20));
        }
        Ok(Self::of(format!("http://127.0.0.1:{port}/"), server).keeping(folder))
    }
}

/// The example, in a configuration of one process that keeps to its folder.
fn nginx(folder: &Path, site: &Path, port: u16) -> Outcome<Command> {
    let (own, site) = (folder.display(), site.display());
    let example = root().join("tests/hosting/nginx.conf");
    let temporary: String = ["client_body", "proxy", "fastcgi", "uwsgi", "scgi"]
        .map(|kind| format!("{kind}_temp_path {own}/{kind};\n"))
        .concat();
    let text = format!(
        "daemon off;\nmaster_process off;\npid {own}/pid;\nerror_log {own}/error.log;\nevents {{}}\nhttp {{\naccess_log off;\n{temporary}\
         server {{\nlisten 127.0.0.1:{port};\nroot {site};\ninclude {};\n}}\n}}\n",
        example.display()
    );
    let file = folder.join("nginx.conf");
    fs::write(&file, text)?;
    let mut command = Command::new("nginx");
    command.arg("-c").arg(&file).arg("-p").arg(folder).arg("-e").arg(folder.join("error.log"));
    command.env("PATH", beside_the_system());
    Ok(command)
}

/// The example, in a configuration of one process that keeps to its folder.
fn apache(folder: &Path, site: &Path, port: u16) -> Outcome<Command> {
    let (own, site) = (folder.display(), site.display());
    let example = root().join("tests/hosting/apache.conf");
    let modules: String = ["mpm_event", "authz_core", "dir", "headers", "mime", "rewrite"]
        .map(|name| format!("LoadModule {name}_module /usr/lib/apache2/modules/mod_{name}.so\n"))
        .concat();
    let text = format!(
        "{modules}ServerName localhost\nServerRoot {own}\nPidFile {own}/pid\nErrorLog {own}/error.log\nListen 127.0.0.1:{port}\n\
         User www-data\nGroup www-data\nTypesConfig /etc/mime.types\nDocumentRoot {site}\nDirectoryIndex index.html\n\
         <Directory {site}>\nRequire all granted\nInclude {}\n</Directory>\n",
        example.display()
    );
    let file = folder.join("apache.conf");
    fs::write(&file, text)?;
    let mut command = Command::new("apache2");
    command.arg("-X").arg("-f").arg(&file).env("PATH", beside_the_system());
    Ok(command)
}

/// Servers are kept where only the administrator looks.
fn beside_the_system() -> String {
    format!("{}:/usr/sbin:/usr/local/sbin", std::env::var("PATH").unwrap_or_default())
}
