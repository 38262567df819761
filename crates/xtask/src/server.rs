//! Serves the built app on this machine.

use crate::http::{self, Request};
use crate::outcome::{Failure, Outcome};
use std::io::{BufReader, ErrorKind};
use std::net::{Ipv4Addr, Ipv6Addr, TcpListener, TcpStream};
use std::path::Path;
use std::sync::Arc;
use std::thread;
use std::time::Duration;

/// A browser that says nothing for this long has gone.
const PATIENCE: Duration = Duration::from_secs(10);

/// Serves `folder` until the program is stopped. Only this machine can reach it.
pub fn serve(folder: &Path, port: u16) -> Outcome {
    let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port)).map_err(|e| cannot_listen(port, &e))?;
    let port = listener.local_addr().map_or(port, |address| address.port());
    let folder: Arc<Path> = Arc::from(folder);
    // Some browsers try the newer address family first; without it they fall back by themselves.
    if let Ok(second) = TcpListener::bind((Ipv6Addr::LOCALHOST, port)) {
        let folder = Arc::clone(&folder);
        thread::spawn(move || accept(&second, &folder));
    }
    println!("\nGaleframe is at http://localhost:{port}/   (Ctrl+C stops it)");
    accept(&listener, &folder);
    Ok(())
}

fn cannot_listen(port: u16, error: &std::io::Error) -> Failure {
    Failure::new(match error.kind() {
        ErrorKind::AddrInUse => format!("port {port} is taken by another program; choose one with --port"),
        ErrorKind::PermissionDenied => format!("port {port} is not open to you; choose one above 1023 with --port"),
        _ => format!("port {port} cannot be used: {error}"),
    })
}

fn accept(listener: &TcpListener, folder: &Arc<Path>) {
    for stream in listener.incoming().flatten() {
        let folder = Arc::clone(folder);
        thread::spawn(move || {
            // A browser that hangs up early is everyday.
            let _ = reply(&stream, &folder);
        });
    }
}

fn reply(stream: &TcpStream, folder: &Path) -> std::io::Result<()> {
    stream.set_read_timeout(Some(PATIENCE))?;
    stream.set_write_timeout(Some(PATIENCE))?;
    match Request::read(BufReader::new(stream)) {
        Some(request) => http::answer(folder, &request).send(stream, request.method != "HEAD"),
        None => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::{Read as _, Write as _};

    #[test]
    fn a_browser_is_answered_over_the_network() {
        let folder = std::env::temp_dir().join(format!("galeframe-server-{}", std::process::id()));
        crate::place::write(&folder.join("index.html"), "page").unwrap();
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).unwrap();
        let address = listener.local_addr().unwrap();
        let shared: Arc<Path> = Arc::from(folder.as_path());
        thread::spawn(move || accept(&listener, &shared));
        let mut stream = TcpStream::connect(address).unwrap();
        stream.write_all(b"GET /members HTTP/1.1\r\nHost: localhost\r\n\r\n").unwrap();
        let mut answer = String::new();
        stream.read_to_string(&mut answer).unwrap();
        std::fs::remove_dir_all(&folder).unwrap();
        assert!(answer.starts_with("HTTP/1.1 200 OK\r\n"), "{answer}");
        assert!(answer.ends_with("page"), "{answer}");
    }
}
